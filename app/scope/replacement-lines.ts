import { components } from '../evidence/catalog/components.ts'
import type { ComponentKey } from '../evidence/catalog/keys.ts'
import { findingLabel } from '../evidence/finding.ts'
import { edgeKindWords } from '../roof/edge-by-hand.ts'
import { roofEdges, type RoofEdge } from '../roof/edges.ts'
import { facetGeometry } from '../roof/facet-geometry.ts'
import type { Facet } from '../roof/facet.ts'
import { edgeKinds, type EdgeKind } from '../roof/plan-drawing.ts'
import { wholePieces } from '../roof/quantities.ts'
import { decimalWords, printedDecimal } from './decimal.ts'
import { countedTogether, sameFacetWords } from './counted-findings.ts'
import { printedSquares, type ScopeFacts } from './scope-facts.ts'
import { NO_TRACES, type RuledLine } from './scope-line.ts'

/** Lines of a replacement that are measured on the plan or counted in findings: nothing that follows from other lines. */
export function replacementLines(facts: ScopeFacts, allFacets: readonly Facet[]): readonly RuledLine[] {
  if (facts.facets.length === 0) return []
  return [...surfaceLines(facts), ...edgeLines(facts, allFacets), ...openingLines(facts)]
}

function surfaceLines(facts: ScopeFacts): readonly RuledLine[] {
  const { facets, piecesPerSquare, pieceSizeWords, pieces } = facts
  const areas = facets.map((facet) => ({ facet, areaSqFt: facetGeometry(facet).areaSqFt }))
  const areaSqFt = areas.reduce((sum, one) => sum + one.areaSqFt, 0)
  const quantity = printedSquares(areaSqFt)
  const sum = areas.map((one) => `${one.areaSqFt.toFixed(0)} (${one.facet.letter})`).join(' + ')
  const base = {
    unit: 'square',
    quantity,
    missing: null,
    toOrder: null,
    working: `Plan area x slope factor, by facet: ${sum} = ${areaSqFt.toFixed(0)} sq ft; / 100 = ${decimalWords(quantity)} squares.`,
    traces: { ...NO_TRACES, facetIds: facets.map(({ id }) => id) },
    assumptions: [],
    notes: notWholeWords(facets),
  } as const
  const count = piecesPerSquare === null ? null : wholePieces((areaSqFt / 100) * piecesPerSquare)
  return [
    { ...base, key: 'tear-off', group: 'removal', words: 'Take off the covering' },
    { ...base, key: 'underlayment', group: 'covering', words: 'Underlayment' },
    {
      ...base,
      key: 'covering',
      group: 'covering',
      words: 'Covering',
      toOrder: count === null ? null : `${count.toLocaleString('en-US')} ${pieces}, without the allowance for waste`,
      working:
        piecesPerSquare === null
          ? base.working
          : `${base.working} ${pieceSizeWords} = ${piecesPerSquare.toFixed(2)} ${pieces} a square.`,
    },
  ]
}

/** Slopes that were not looked at in whole say so beside each quantity that rests on them. */
function notWholeWords(facets: readonly Facet[]): readonly string[] {
  const parts = facets.flatMap(({ letter, inspected: { percent } }) => {
    if (percent === null) return [`${letter} not stated`]
    return percent < 100 ? [`${letter} ${percent} %`] : []
  })
  return parts.length === 0 ? [] : [`Measured on the plan. Looked at less than whole: ${parts.join(', ')}.`]
}

const edgeWork = {
  ridge: 'Ridge caps',
  hip: 'Hip caps',
  valley: 'Valley metal',
  eave: 'Eave metal',
  rake: 'Rake metal',
  'pitch-break': 'Metal at changes of pitch',
  step: 'Wall and step flashing at steps in height',
  'top-edge': 'Flashing at top edges',
} as const satisfies Record<EdgeKind, string>

function edgeLines(facts: ScopeFacts, allFacets: readonly Facet[]): readonly RuledLine[] {
  const own = new Set(facts.facets.map(({ id }) => id))
  const letters = new Map(allFacets.map(({ id, letter }) => [id, letter]))
  const edges = roofEdges(allFacets, facts.upAzimuthDeg).filter(({ facetIds }) => facetIds.some((id) => own.has(id)))
  return edgeKinds.flatMap((kind): RuledLine[] => {
    const these = edges.filter((edge) => edge.kind === kind)
    if (these.length === 0) return []
    const lengthFt = these.reduce((sum, { trueLengthFt }) => sum + trueLengthFt, 0)
    const quantity = printedDecimal(lengthFt, 1)
    const named = ({ facetIds, trueLengthFt }: RoofEdge) =>
      `${trueLengthFt.toFixed(1)} (${facetIds.map((id) => letters.get(id) ?? '').join('/')})`
    const isShared = these.some(({ facetIds }) => facetIds.some((id) => !own.has(id)))
    const byHand = these.filter(({ foundKind }) => foundKind !== undefined).length
    return [
      {
        key: kind,
        group: 'edges',
        words: edgeWork[kind],
        unit: 'ft',
        quantity,
        missing: null,
        toOrder: null,
        working: `True lengths of ${edgeKindWords[kind]} on the plan: ${these.map(named).join(' + ')} = ${decimalWords(quantity)} ft.`,
        traces: {
          findingIds: [],
          facetIds: [...new Set(these.flatMap(({ facetIds }) => facetIds))],
          edges: these.map(({ facetIds, trueLengthFt }) => ({ kind, facetIds, trueLengthFt })),
        },
        assumptions:
          kind === 'pitch-break' || kind === 'top-edge' || kind === 'step'
            ? ['That metal stands along the whole of it: common practice, no source.']
            : [],
        notes: [
          ...(isShared ? ['Edges shared with a facet outside this bid are in it whole.'] : []),
          ...(byHand > 0 ? [`The kind of ${byHand} of them was stated by hand.`] : []),
        ],
      },
    ]
  })
}

/** Openings whose flashings a new covering needs; they are known as far as a finding names them. */
const openings: readonly ComponentKey[] = ['pipe-penetration', 'vent', 'skylight', 'chimney', 'cricket']

function openingLines(facts: ScopeFacts): readonly RuledLine[] {
  return openings.flatMap((component): RuledLine[] => {
    const these = facts.findings.filter((finding) => finding.component === component)
    if (these.length === 0) return []
    const { exact, rest, count } = countedTogether(these)
    const isKnown = rest.length === 0
    const { many } = components[component]
    return [
      {
        key: `flash-${component}`,
        group: 'openings',
        words: `Flashings of ${many}`,
        unit: 'each',
        quantity: isKnown ? printedDecimal(count, 0) : null,
        missing: isKnown
          ? null
          : `Count first: ${rest.map(({ number }) => findingLabel(number)).join(', ')} gives no exact count.`,
        toOrder: null,
        working: `Exact counts of ${many} in findings: ${exact.map((one) => `${one.count} (${findingLabel(one.finding.number)})`).join(' + ')}${isKnown ? ` = ${count}` : ''}.`,
        traces: {
          findingIds: these.map(({ id }) => id),
          facetIds: these.flatMap(({ facetId }) => (facetId === null ? [] : [facetId])),
          edges: [],
        },
        assumptions: sameFacetWords(exact.map(({ finding }) => finding)),
        notes: [`Only ${many} that a finding names are counted; there may be others.`],
      },
    ]
  })
}
