import { groupedNumber } from '../evidence/catalog/grouped-number.ts'
import type { WorkShareRule } from '../rules/rule.ts'
import type { Range } from './repair/course-grid.ts'
import type { ExceptionState, SectionShare } from './work-share.ts'

/** Printed with every share of work. */
export const OFFICIAL_DECIDES = 'The decision belongs to the building official.'

/** A share to hundredths of a percent, so that 24.99 and 25.01 do not read as 25. */
export function sharePercent(percent: Range): string {
  return `${within(percent, (value) => value.toFixed(2))} %`
}

/** Square feet to tenths, or from and to. */
export function workArea(sqFt: Range): string {
  return within(sqFt, (value) => groupedNumber(value, 1))
}

function within({ least, most }: Range, written: (value: number) => string): string {
  const [from, to] = [written(least), written(most)]
  return from === to ? from : `${from} to ${to}`
}

/** What the share says against the rule's bound. */
export function shareSentence({ section, percent, verdict }: SectionShare, { data }: WorkShareRule): string {
  const bound = `${data.morePercent} % within ${data.withinMonths} months`
  switch (verdict) {
    case 'above':
      return `${section.name}: ${sharePercent(percent)} of its area is more than ${bound}.`
    case 'at':
      return `${section.name}: exactly ${data.morePercent} % of its area, which is not more than ${bound}.`
    case 'below':
      return `${section.name}: ${sharePercent(percent)} of its area is not more than ${bound}.`
    case 'not-known':
      return `${section.name}: not known yet. What is stated comes to ${sharePercent(percent)} of its area.`
  }
}

/** Formula and figures of a share. */
export function shareWorking({ section, plannedSqFt, earlierSqFt, earlier, percent }: SectionShare): string {
  const area = (sqFt: number) => groupedNumber(sqFt, 1)
  const works = earlier.map(
    ({ date, areaSqFt, permit }) =>
      `${area(areaSqFt ?? 0)} on ${date ?? ''}${permit.trim() === '' ? '' : ` (${permit})`}`,
  )
  const before = works.length === 0 ? 'no earlier work' : `earlier work ${works.join(' + ')}`
  return `Work ${workArea(plannedSqFt)} sq ft, ${before}; (${workArea(plannedSqFt)} + ${area(earlierSqFt)}) / ${area(section.areaSqFt)} sq ft = ${sharePercent(percent)}.`
}

/** What the rule's exception means for a section; null where there is nothing to say. */
export function exceptionSentence(state: ExceptionState, { data }: WorkShareRule): string | null {
  const from = data.exception?.permitFrom ?? ''
  switch (state) {
    case 'none':
    case 'share-too-small':
      return null
    case 'may-hold':
      return `The exception may hold: its permit is of ${from} or later, and the share is ${data.exception?.atLeastPercent ?? ''} % or more.`
    case 'permit-too-old':
      return `The exception does not hold by the permit date entered, which is before ${from}.`
    case 'permit-not-known':
      return `Whether the exception holds hangs on the day of the permit under which this section was built or last replaced, which is not entered.`
  }
}
