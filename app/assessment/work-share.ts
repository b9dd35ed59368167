import { Temporal } from 'temporal-polyfill'
import type { FacetId } from '../job/ids.ts'
import { facetGeometry } from '../roof/facet-geometry.ts'
import type { Facet } from '../roof/facet.ts'
import type { WorkShareRule } from '../rules/rule.ts'
import type { EarlierWork, PlannedWork } from './assessment.ts'
import type { Range } from './repair/course-grid.ts'
import type { JudgedSection } from './roof-sections.ts'

/** How a share of work stands to a rule's bound. */
export type ShareVerdict = 'above' | 'at' | 'below'

/** Whether the rule's exception may hold for a section. */
export type ExceptionState = 'none' | 'may-hold' | 'share-too-small' | 'permit-too-old' | 'permit-not-known'

/** Area of work over area of a section within the months of a rule. */
export interface SectionShare {
  readonly section: JudgedSection
  /** A range where work is counted by tiles whose places nobody wrote down. */
  readonly plannedSqFt: Range
  /** Earlier work that counts, and its sum. */
  readonly earlier: readonly EarlierWork[]
  readonly earlierSqFt: number
  /** What is missing before the share is known; with anything here the share is a lower bound. */
  readonly lacks: readonly string[]
  readonly percent: Range
  readonly verdict: ShareVerdict | 'not-known'
  readonly exception: ExceptionState
}

/** Areas are sums of products of feet: closer than this to the bound, in percent, is the bound. */
const SAME_PERCENT = 1e-9

export interface WorkShareSource {
  readonly rule: WorkShareRule
  readonly sections: readonly JudgedSection[]
  readonly facets: readonly Facet[]
  readonly planned: readonly PlannedWork[]
  readonly earlier: readonly EarlierWork[]
  /** Day on which the work would be done; the months are counted back from it. */
  readonly workDate: string | null
  /** Area that a repair by tiles takes on a facet, square feet; null where it can't be told. */
  readonly repairSqFt: (facetId: FacetId) => Range | null
}

/** First day that still counts: a period of so many months that ends on the day of the work begins on the day after. */
export function windowStart(workDate: string, months: number): string {
  return Temporal.PlainDate.from(workDate).subtract({ months }).add({ days: 1 }).toString()
}

/** The share of work on every section. The decision on what follows belongs to the building official. */
export function workShares(source: WorkShareSource): readonly SectionShare[] {
  return source.sections.map((section) => sectionShare(section, source))
}

function sectionShare(section: JudgedSection, source: WorkShareSource): SectionShare {
  const { morePercent, withinMonths } = source.rule.data
  const planned = section.facetIds.map((id) => plannedOn(id, source))
  const earlier = earlierWork(section, source, withinMonths)
  const plannedSqFt = {
    least: planned.reduce((sum, { sqFt }) => sum + sqFt.least, 0),
    most: planned.reduce((sum, { sqFt }) => sum + sqFt.most, 0),
  }
  const earlierSqFt = earlier.counted.reduce((sum, { areaSqFt }) => sum + (areaSqFt ?? 0), 0)
  const percentOf = (sqFt: number) => (section.areaSqFt > 0 ? (100 * (sqFt + earlierSqFt)) / section.areaSqFt : 0)
  const percent = { least: percentOf(plannedSqFt.least), most: percentOf(plannedSqFt.most) }
  const lacks = [...planned.flatMap(({ lack }) => lack ?? []), ...earlier.lacks]
  return {
    section,
    plannedSqFt,
    earlier: earlier.counted,
    earlierSqFt,
    lacks,
    percent,
    verdict: verdictWithin(percent, morePercent, lacks),
    exception: exceptionOf(section, percent.least, source.rule),
  }
}

function verdictWithin(percent: Range, morePercent: number, lacks: readonly string[]): SectionShare['verdict'] {
  const [low, high] = [verdictOf(percent.least, morePercent), verdictOf(percent.most, morePercent)]
  // What is missing can only add to the share: what is above already stays above.
  if (low === 'above') return 'above'
  if (lacks.length > 0 || high === 'above') return 'not-known'
  return low
}

/** Exactly at the bound is not more than it. */
export function verdictOf(percent: number, morePercent: number): ShareVerdict {
  if (Math.abs(percent - morePercent) <= SAME_PERCENT) return 'at'
  return percent > morePercent ? 'above' : 'below'
}

function exceptionOf(
  { permitDate }: JudgedSection,
  percent: number,
  { data: { exception } }: WorkShareRule,
): ExceptionState {
  if (exception === null) return 'none'
  if (percent < exception.atLeastPercent - SAME_PERCENT) return 'share-too-small'
  if (permitDate === null) return 'permit-not-known'
  return permitDate >= exception.permitFrom ? 'may-hold' : 'permit-too-old'
}

function plannedOn(facetId: FacetId, { facets, planned, repairSqFt }: WorkShareSource): { sqFt: Range; lack?: string } {
  const facet = facets.find(({ id }) => id === facetId)
  if (facet === undefined) return { sqFt: exactly(0) }
  const { areaSqFt } = facetGeometry(facet)
  const extent = planned.find((one) => one.facetId === facetId)?.extent ?? null
  switch (extent?.kind) {
    case undefined:
      return { sqFt: exactly(0), lack: `The work on facet ${facet.letter} is not stated.` }
    case 'none':
      return { sqFt: exactly(0) }
    case 'whole':
      return { sqFt: exactly(areaSqFt) }
    case 'area':
      return extent.areaSqFt > areaSqFt
        ? {
            sqFt: exactly(0),
            lack: `The work stated on facet ${facet.letter}, ${extent.areaSqFt} sq ft, is more than the facet has, so it is not counted.`,
          }
        : { sqFt: exactly(extent.areaSqFt) }
    case 'tiles': {
      const sqFt = repairSqFt(facetId)
      return sqFt === null
        ? { sqFt: exactly(0), lack: `The tiles of the repair on facet ${facet.letter} can't be counted yet.` }
        : { sqFt: { least: Math.min(areaSqFt, sqFt.least), most: Math.min(areaSqFt, sqFt.most) } }
    }
  }
}

function exactly(sqFt: number): Range {
  return { least: sqFt, most: sqFt }
}

function earlierWork(
  section: JudgedSection,
  { earlier, workDate, sections }: WorkShareSource,
  months: number,
): { counted: readonly EarlierWork[]; lacks: readonly string[] } {
  const here = earlier.filter(({ facetId }) =>
    facetId === null ? sections.length === 1 : section.facetIds.includes(facetId),
  )
  const placeless = sections.length > 1 ? earlier.filter(({ facetId }) => facetId === null) : []
  const lacks = placeless.map(
    ({ permit }) => `Earlier work ${named(permit)} has no facet, so its section is not known.`,
  )
  if (here.length === 0) return { counted: [], lacks }
  if (workDate === null) return { counted: [], lacks: [...lacks, 'The day of the work is not stated.'] }
  const first = windowStart(workDate, months)
  const counted: EarlierWork[] = []
  for (const work of here) {
    if (work.date === null) lacks.push(`Earlier work ${named(work.permit)} has no date.`)
    else if (work.date < first || work.date > workDate) continue
    else if (work.areaSqFt === null) lacks.push(`Earlier work ${named(work.permit)} has no area.`)
    else counted.push(work)
  }
  return { counted, lacks }
}

function named(permit: string): string {
  return permit.trim() === '' ? 'without a permit number' : `under ${permit}`
}
