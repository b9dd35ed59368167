import { components } from '../evidence/catalog/components.ts'
import type { ComponentKey } from '../evidence/catalog/keys.ts'
import { findingLabel, type Finding } from '../evidence/finding.ts'
import { facetGeometry } from '../roof/facet-geometry.ts'
import { countedTogether, sameFacetWords } from './counted-findings.ts'
import { decimalWords, printedDecimal } from './decimal.ts'
import { pieceOf, repairActions, type RepairAction } from './repair-actions.ts'
import type { ScopeFacts } from './scope-facts.ts'
import { joinedTraces, type RuledLine, type Traces } from './scope-line.ts'

/** Holds for every line that a finding makes. */
export const REPAIR_ASSUMPTION = 'That this work follows from the condition is common practice, no source.'

/** Findings that make one kind of work: the same action on the same part. */
interface Work {
  readonly action: RepairAction
  readonly piece: ComponentKey
  readonly findings: readonly Finding[]
}

/**
 * Lines of a repair that follow from findings of damage: exact counts are added; "at least" and "about" stand in a line of
 * their own; what was not counted has a line without a quantity; stated lengths and areas have theirs.
 */
export function repairLines(facts: ScopeFacts): readonly RuledLine[] {
  return worksOf(facts.findings).flatMap((work) => linesOf(work, facts))
}

/** Findings from which no work follows by rule, and why. */
export function withoutWork(
  findings: readonly Finding[],
): readonly { readonly finding: Finding; readonly why: string }[] {
  return findings.flatMap((finding) => {
    if (finding.kind === 'sound' || actionOf(finding) !== null) return []
    const why = finding.kind === 'damage' ? 'no work follows from this condition by rule' : 'not a finding of damage'
    return [{ finding, why }]
  })
}

function actionOf({ kind, condition }: Finding): RepairAction | null {
  return kind === 'damage' ? repairActions[condition] : null
}

function worksOf(findings: readonly Finding[]): readonly Work[] {
  const works = new Map<string, Work>()
  for (const finding of findings) {
    const action = actionOf(finding)
    if (action === null) continue
    const piece = pieceOf(finding.component)
    const key = `${action}-${piece}`
    works.set(key, { action, piece, findings: [...(works.get(key)?.findings ?? []), finding] })
  }
  return [...works.values()]
}

function linesOf(work: Work, facts: ScopeFacts): readonly RuledLine[] {
  const of = (...kinds: readonly Finding['extent']['kind'][]) =>
    work.findings.filter(({ extent }) => kinds.includes(extent.kind))
  const whole = of('whole-facet')
  const onFacet = whole.filter(({ facetId }) => facts.facets.some(({ id }) => id === facetId))
  return [
    ...exactLine(work, of('exactly')),
    ...statedLine(work, of('at-least', 'about')),
    ...lengthLine(work, of('length')),
    ...areaLine(work, [...of('area'), ...onFacet], facts),
    ...uncountedLine(work, [
      ...of('several', 'examples', 'not-stated'),
      ...whole.filter((finding) => !onFacet.includes(finding)),
    ]),
  ]
}

const actionWords = {
  replace: (what: string) => `Replace ${what}`,
  'set-again': (what: string) => `Set ${what} again`,
  clear: (what: string) => `Clear ${what}`,
} as const satisfies Record<RepairAction, (what: string) => string>

function lineOf(
  { action, piece }: Work,
  findings: readonly Finding[],
  more: Pick<RuledLine, 'unit' | 'quantity' | 'missing' | 'working'> & {
    readonly suffix: string
    readonly tail?: string
    readonly assumptions?: readonly string[]
    readonly notes?: readonly string[]
  },
): RuledLine {
  const { suffix, tail = '', assumptions = [], notes = [], ...rest } = more
  const parts = findings.filter(({ component }) => component !== piece)
  return {
    ...rest,
    key: `${action}-${piece}${suffix}`,
    group: 'pieces',
    words: `${actionWords[action](components[piece].many)}${tail}`,
    toOrder: null,
    notes,
    traces: joinedTraces(findings.map(traceOf)),
    assumptions: [
      REPAIR_ASSUMPTION,
      ...(parts.length === 0
        ? []
        : [`${labels(parts)}: the whole ${components[piece].one} is taken in hand for its part.`]),
      ...assumptions,
    ],
  }
}

function exactLine(work: Work, findings: readonly Finding[]): readonly RuledLine[] {
  if (findings.length === 0) return []
  const { exact, count } = countedTogether(findings)
  const sum = exact.map((one) => `${one.count} (${findingLabel(one.finding.number)})`).join(' + ')
  return [
    lineOf(work, findings, {
      suffix: '',
      unit: 'each',
      quantity: printedDecimal(count, 0),
      missing: null,
      working: `Exact counts: ${sum} = ${count}.`,
      assumptions: sameFacetWords(findings),
    }),
  ]
}

function statedLine(work: Work, findings: readonly Finding[]): readonly RuledLine[] {
  if (findings.length === 0) return []
  const counts = findings.flatMap(({ number, extent }) =>
    extent.kind === 'at-least' || extent.kind === 'about' ? [{ number, kind: extent.kind, count: extent.count }] : [],
  )
  const count = counts.reduce((sum, one) => sum + one.count, 0)
  const said = { 'at-least': 'at least', about: 'about' } as const
  return [
    lineOf(work, findings, {
      suffix: '-stated',
      tail: ', not counted exactly',
      unit: 'each',
      quantity: printedDecimal(count, 0),
      missing: null,
      working: `As said: ${counts.map((one) => `${said[one.kind]} ${one.count} (${findingLabel(one.number)})`).join(' + ')}; together ${count}.`,
      assumptions: [
        'The number said is taken as it is, neither more nor less: count before ordering.',
        ...sameFacetWords(findings),
      ],
    }),
  ]
}

function uncountedLine(work: Work, findings: readonly Finding[]): readonly RuledLine[] {
  if (findings.length === 0) return []
  return [
    lineOf(work, findings, {
      suffix: '-uncounted',
      tail: ', not counted',
      unit: 'each',
      quantity: null,
      missing: `Count first: ${labels(findings)} ${findings.length === 1 ? 'gives' : 'give'} no count.`,
      working: 'No quantity follows from words such as "several" or "examples".',
    }),
  ]
}

function lengthLine(work: Work, findings: readonly Finding[]): readonly RuledLine[] {
  if (findings.length === 0) return []
  const lengths = findings.flatMap(({ number, extent }) =>
    extent.kind === 'length' ? [{ number, value: extent.lengthFt }] : [],
  )
  return [
    lineOf(work, findings, { suffix: '-ft', tail: ', by length', unit: 'ft', missing: null, ...summed(lengths, 'ft') }),
  ]
}

function areaLine(work: Work, findings: readonly Finding[], facts: ScopeFacts): readonly RuledLine[] {
  if (findings.length === 0) return []
  const areas = findings.flatMap(({ number, extent, facetId }) => {
    if (extent.kind === 'area') return [{ number, value: extent.areaSqFt }]
    const facet = facts.facets.find(({ id }) => id === facetId)
    return facet === undefined ? [] : [{ number, value: facetGeometry(facet).areaSqFt }]
  })
  const whole = findings.filter(({ extent }) => extent.kind === 'whole-facet')
  return [
    lineOf(work, findings, {
      suffix: '-area',
      tail: ', by area',
      unit: 'sq-ft',
      missing: null,
      ...summed(areas, 'sq ft'),
      notes: whole.length === 0 ? [] : [`${labels(whole)}: the area of the whole facet, from the plan.`],
    }),
  ]
}

function summed(
  parts: readonly { readonly number: number; readonly value: number }[],
  unit: string,
): Pick<RuledLine, 'quantity' | 'working'> {
  const quantity = printedDecimal(
    parts.reduce((sum, { value }) => sum + value, 0),
    1,
  )
  const sum = parts.map(({ number, value }) => `${value.toFixed(1)} (${findingLabel(number)})`).join(' + ')
  return { quantity, working: `As stated: ${sum} = ${decimalWords(quantity)} ${unit}.` }
}

function traceOf({ id, facetId }: Finding): Traces {
  return { findingIds: [id], facetIds: facetId === null ? [] : [facetId], edges: [] }
}

function labels(findings: readonly Finding[]): string {
  return findings.map(({ number }) => findingLabel(number)).join(', ')
}
