import { coveringLabels } from '../../evidence/catalog/labels.ts'
import { facetGeometry, pieceCount, roofTotals } from '../../roof/facet-geometry.ts'
import type { EdgeKind } from '../../roof/plan-drawing.ts'
import { edgeKinds } from '../../roof/plan-drawing.ts'
import { roofEdges } from '../../roof/edges.ts'
import type { Facet } from '../../roof/facet.ts'
import { anchorOfFacet } from '../anchors.ts'
import type { Block, FactsBlock, Section, TableBlock, Text } from '../document.ts'
import { areaFigure, squaresFigure } from '../format/areas.ts'
import { directionWords } from '../format/directions.ts'
import { feetInches } from '../format/lengths.ts'
import { dateWords } from '../format/times.ts'
import type { PacketContext } from '../packet-context.ts'
import { plain, stated, statedRows } from '../text.ts'
import { column, heading, paragraph, titledSection } from './section.ts'

/** The house, the covering, its history, and the roof's facets and edges in figures. */
export function propertyAndRoofSection(context: PacketContext): Section {
  return titledSection('property-and-roof', 'Property and roof', [
    houseFacts(context),
    heading('Covering'),
    coveringFacts(context),
    ...history(context),
    ...facetBlocks(context),
    ...edgeBlocks(context),
  ])
}

function houseFacts({ sheet }: PacketContext): FactsBlock {
  const { property, loss } = sheet
  const front = property.frontAzimuthDeg === null ? '' : directionWords(property.frontAzimuthDeg)
  return {
    kind: 'facts',
    columns: 2,
    rows: statedRows([
      { label: 'Front faces', value: front },
      { label: 'Storeys', value: figure(property.storeys) },
      { label: 'Mean roof height', value: figure(property.meanRoofHeightFt, ' ft') },
      { label: 'Loss, as reported', value: loss.description },
    ]),
  }
}

function coveringFacts({ sheet }: PacketContext): FactsBlock {
  const { covering } = sheet
  return {
    kind: 'facts',
    columns: 2,
    rows: statedRows([
      { label: 'Class', value: covering.class === 'not-stated' ? '' : coveringLabels[covering.class] },
      { label: 'Profile', value: covering.profile },
      { label: 'Colour', value: covering.colour },
      { label: 'Laid in', value: figure(covering.installedYear) },
      { label: 'Exposure', value: figure(covering.exposureIn, ' in') },
      { label: 'Cover width', value: figure(covering.coverWidthIn, ' in') },
      { label: 'Headlap', value: figure(covering.headlapIn, ' in') },
      { label: 'Fastening', value: covering.fastening },
      { label: 'Underlayment', value: covering.underlayment },
      { label: 'Deck', value: covering.deck },
      { label: 'Matching stock', value: covering.stockNote },
    ]),
  }
}

function figure(value: number | null, unit = ''): string {
  return value === null ? '' : `${value}${unit}`
}

function history({ sheet }: PacketContext): readonly Block[] {
  const rows = [
    ...sheet.permits.map((note) => ({ what: 'Permit', note })),
    ...sheet.priorRepairs.map((note) => ({ what: 'Earlier repair', note })),
  ]
  if (rows.length === 0) return [paragraph('No permits or earlier repairs are on the job sheet.', 'small')]
  return [
    heading('Permits and earlier repairs'),
    {
      kind: 'table',
      summary: 'Permits and earlier repairs as far as known',
      columns: [column('What', 2), column('Date', 2), column('Reference', 2), column('Description', 6)],
      rows: rows.map(({ what, note }) => ({
        cells: [
          plain(what),
          stated(note.date === null ? '' : dateWords(note.date)),
          stated(note.reference),
          stated(note.description),
        ],
      })),
    },
  ]
}

function facetBlocks(context: PacketContext): readonly Block[] {
  const { facets, sheet } = context
  if (facets.length === 0) return [heading('Facets'), paragraph('No facets are drawn on the plan.')]
  const { exposureIn, coverWidthIn } = sheet.covering
  const pieces = exposureIn === null || coverWidthIn === null ? null : { exposureIn, coverWidthIn }
  const working = paragraph(
    `Area = plan area x slope factor; slope factor = square root of (1 + (rise / 12) squared). One square is 100 sq ft. ${
      pieces === null ? '' : `Pieces = area / (exposure x cover width). `
    }No allowance for waste is in these figures.`,
    'small',
  )
  return [{ kind: 'group', blocks: [heading('Facets'), facetTable(facets, pieces), working] }]
}

function facetTable(facets: readonly Facet[], pieces: { exposureIn: number; coverWidthIn: number } | null): TableBlock {
  const totals = roofTotals(facets)
  const piecesCell = (areaSqFt: number): readonly Text[] =>
    pieces === null ? [] : [plain(areaFigure(pieceCount(areaSqFt, pieces)))]
  return {
    kind: 'table',
    summary: 'Facets with pitch, direction and areas',
    columns: [
      column('Facet', 3),
      column('Pitch', 1),
      column('Faces', 2.2),
      column('Plan, sq ft', 1.3, 'end'),
      column('Slope factor', 1.2, 'end'),
      column('Area, sq ft', 1.3, 'end'),
      column('Squares', 1.1, 'end'),
      ...(pieces === null ? [] : [column('Pieces, about', 1.3, 'end')]),
    ],
    rows: [
      ...facets.map((facet) => {
        const g = facetGeometry(facet)
        return {
          anchor: anchorOfFacet(facet),
          cells: [
            [
              { text: facet.letter, style: 'strong' as const },
              ...plain(facet.name.trim() === '' ? '' : ` ${facet.name.trim()}`),
            ],
            plain(g.pitchLabel),
            plain(directionWords(facet.downslopeAzimuthDeg)),
            plain(areaFigure(g.planAreaSqFt)),
            plain(g.slopeFactor.toFixed(4)),
            plain(areaFigure(g.areaSqFt)),
            plain(squaresFigure(g.squares)),
            ...piecesCell(g.areaSqFt),
          ],
        }
      }),
      {
        total: true,
        cells: [
          plain('Roof'),
          plain(''),
          plain(''),
          plain(areaFigure(totals.planAreaSqFt)),
          plain(''),
          plain(areaFigure(totals.areaSqFt)),
          plain(squaresFigure(totals.squares)),
          ...piecesCell(totals.areaSqFt),
        ],
      },
    ],
  }
}

const edgeLabels = {
  ridge: 'Ridge',
  hip: 'Hip',
  valley: 'Valley',
  eave: 'Eave',
  rake: 'Rake',
  'pitch-break': 'Break between two pitches',
  step: 'Step in height',
  'top-edge': 'Top edge with no slope behind it',
} as const satisfies Record<EdgeKind, string>

function edgeBlocks({ facets, input }: PacketContext): readonly Block[] {
  const edges = roofEdges(facets, input.caseFile.job.frame.upAzimuthDeg)
  if (edges.length === 0) return []
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0)
  return [
    heading('Edges'),
    {
      kind: 'table',
      summary: 'Edges by kind, with their number and lengths',
      columns: [
        column('Edge', 4),
        column('Number', 1, 'end'),
        column('Plan length', 2, 'end'),
        column('True length', 2, 'end'),
      ],
      rows: edgeKinds.flatMap((kind) => {
        const these = edges.filter((edge) => edge.kind === kind)
        if (these.length === 0) return []
        return [
          {
            cells: [
              plain(edgeLabels[kind]),
              plain(String(these.length)),
              plain(feetInches(sum(these.map(({ planLengthFt }) => planLengthFt)))),
              plain(feetInches(sum(these.map(({ trueLengthFt }) => trueLengthFt)))),
            ],
          },
        ]
      }),
    },
    paragraph('True length is measured along the slope, from the plan and the facets’ pitches.', 'small'),
  ]
}
