import { decimalWords } from './decimal.ts'
import type { ScopeLine } from './scope-line.ts'

/** Stands over every scope, on screens and on paper. */
export const bidCaution =
  'The contractor’s own bid for the work listed, made from the plan and the findings. It is not a figure of any claim. The owner chooses who receives it.'

/** A quantity as it is printed, the computed one beside one that was set by hand; why there is none where it can't be known. */
export function quantityWords({ quantity, byHand, computed, missing }: ScopeLine): string {
  if (quantity === null) return missing === null ? 'not known' : 'count first'
  if (byHand === null) return decimalWords(quantity)
  return `${decimalWords(quantity)} by hand (computed ${computed === null ? 'none' : decimalWords(computed)})`
}
