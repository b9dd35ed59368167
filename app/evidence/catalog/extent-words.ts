import type { Extent } from '../finding.ts'
import { groupedNumber } from './grouped-number.ts'

/** What is counted: "field tile", "field tiles". */
export interface Counted {
  readonly one: string
  readonly many: string
}

/** An extent as honestly as it was seen: "exactly 3 field tiles", "at least 3 field tiles", "several, not counted". */
export function extentWords(extent: Extent, counted: Counted): string {
  const counting = (count: number) => `${groupedNumber(count)} ${count === 1 ? counted.one : counted.many}`
  switch (extent.kind) {
    case 'exactly':
      return `exactly ${counting(extent.count)}`
    case 'at-least':
      return `at least ${counting(extent.count)}`
    case 'about':
      return `about ${counting(extent.count)}`
    case 'several':
      return `several ${counted.many}, not counted`
    case 'examples':
      return 'examples of a wider condition'
    case 'whole-facet':
      return 'whole facet'
    case 'length':
      return `${groupedNumber(extent.lengthFt)} ft`
    case 'area':
      return `${groupedNumber(extent.areaSqFt)} sq ft`
    case 'not-stated':
      return 'not stated'
  }
}
