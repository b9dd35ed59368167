import { protocolSampling } from './criteria/florida-field-protocol.ts'
import { exactInterval, wilsonInterval, type Interval } from './intervals.ts'

/** How a share of loose tiles stands to the bound. */
export type LooseVerdict = 'above' | 'below' | 'at-limit' | 'too-small'

/** Loose tiles out of those checked, with what the sample can say. */
export type LooseShare =
  | { readonly kind: 'none-checked' }
  | {
      readonly kind: 'share'
      readonly loose: number
      readonly checked: number
      readonly share: number
      readonly wilson: Interval
      readonly exact: Interval
      readonly verdict: LooseVerdict
    }

const { loosePercent } = protocolSampling

/**
 * The share of loose tiles against 3 %. Exactly 3 % is "at the limit"; otherwise both intervals must lie on one side of it,
 * or the sample is too small to say.
 *
 * @param counts whole numbers, `loose` not above `checked`
 */
export function looseShare({ loose, checked }: { readonly loose: number; readonly checked: number }): LooseShare {
  if (checked === 0) return { kind: 'none-checked' }
  const wilson = wilsonInterval(loose, checked)
  const exact = exactInterval(loose, checked)
  return {
    kind: 'share',
    loose,
    checked,
    share: loose / checked,
    wilson,
    exact,
    verdict: verdictOf({ loose, checked }, [wilson, exact]),
  }
}

function verdictOf(
  { loose, checked }: { readonly loose: number; readonly checked: number },
  intervals: readonly Interval[],
): LooseVerdict {
  // In whole numbers, so that 3 of 100 is the limit and not a hair beside it.
  if (loose * 100 === loosePercent * checked) return 'at-limit'
  const bound = loosePercent / 100
  if (intervals.every(({ low }) => low > bound)) return 'above'
  return intervals.every(({ high }) => high < bound) ? 'below' : 'too-small'
}

/** The verdict in words for a table. */
export const looseVerdictWords = {
  above: 'above 3 %',
  below: 'below 3 %',
  'at-limit': 'at the limit: see the protocol',
  'too-small': 'sample too small to say',
} as const satisfies Record<LooseVerdict, string>

/** "3 of 100 = 3.0 %; Wilson 1.0 to 8.5 %; exact 0.6 to 8.5 %". */
export function looseWorking(share: LooseShare): string {
  if (share.kind === 'none-checked') return 'No tile was checked.'
  const { loose, checked, wilson, exact } = share
  return `${loose} of ${checked} = ${percent(share.share)} %; 95 % intervals: Wilson ${range(wilson)}, exact (Clopper and Pearson) ${range(exact)}; bound 3 %.`
}

/** "1.0 to 8.5 %". */
export function range({ low, high }: Interval): string {
  return `${percent(low)} to ${percent(high)} %`
}

/** A share as percent with one decimal, without the sign. */
export function percent(share: number): string {
  return (100 * share).toFixed(1)
}

/** What intervals assume and a roof walk is not; stands wherever they are shown. */
export const SYSTEMATIC_CAUTION =
  'The intervals assume tiles drawn at random. A walk that takes one tile in ten or five is systematic, and the person walking chooses where to step, so they say less than they seem to.'
