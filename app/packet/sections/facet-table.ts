import { handSetWords } from '../../roof/hand-set-words.ts'
import {
  facetQuantities,
  type FacetTable,
  type PieceSize,
  piecesWord,
  summedColumns,
  wasteAllowance,
  wholePieces,
} from '../../roof/quantities.ts'
import { slopeFactor } from '../../roof/slope.ts'
import { anchorOfFacet } from '../anchors.ts'
import type { Block, TableBlock, Text } from '../document.ts'
import { areaFigure, squaresFigure } from '../format/areas.ts'
import { shortDirection } from '../format/directions.ts'
import { feetFigure } from '../format/lengths.ts'
import { roundingNote } from '../format/rounding.ts'
import type { PacketContext } from '../packet-context.ts'
import { plain } from '../text.ts'
import { column, heading, paragraph } from './section.ts'

/** Facets line by line with their totals, how the figures are worked out, and the allowance for waste apart from them. */
export function facetBlocks(context: PacketContext): readonly Block[] {
  const { facets, sheet, input } = context
  if (facets.length === 0) return [heading('Facets'), paragraph('No facets are drawn on the plan.')]
  const { exposureIn, coverWidthIn } = sheet.covering
  const piece = exposureIn === null || coverWidthIn === null ? null : { exposureIn, coverWidthIn }
  const { upAzimuthDeg } = input.caseFile.job.frame
  const quantities = facetQuantities(facets, { upAzimuthDeg, piece })
  const pieces = piecesWord(sheet.covering.class)
  const waste = wasteBlocks(quantities, sheet.covering.wastePercent, pieces)
  return [
    {
      kind: 'group',
      blocks: [
        heading('Facets'),
        facetTable(quantities, context),
        paragraph(`${workingWords(context, piece)} ${roundingNote(summedColumns(quantities, pieces))}`, 'small'),
      ],
    },
    { kind: 'group', blocks: waste },
  ]
}

function facetTable(quantities: FacetTable, context: PacketContext): TableBlock {
  const { rows, totals } = quantities
  const pieces = piecesWord(context.sheet.covering.class)
  const hasPieces = totals.pieces !== null
  const pieceCell = (value: number | null): readonly Text[] => (value === null ? [] : [plain(areaFigure(value))])
  return {
    kind: 'table',
    summary: 'Facets with pitch, direction, areas, slope length, courses and pieces',
    columns: [
      column('Facet', 3.4),
      column('Pitch', 1),
      column('Faces', 1.5),
      column('Plan, sq ft', 1.1, 'end'),
      column('Area, sq ft', 1.1, 'end'),
      column('Squares', 1.1, 'end'),
      column('Slope, ft', 1.1, 'end'),
      ...(hasPieces ? [column('Courses', 1.1, 'end'), column(pieces, 1, 'end')] : []),
    ],
    rows: [
      ...rows.map((row) => {
        const facet = context.facetById.get(row.facetId)
        return {
          ...(facet === undefined ? {} : { anchor: anchorOfFacet(facet) }),
          cells: [
            [
              { text: row.letter, style: 'strong' as const },
              ...plain(facet === undefined || facet.name.trim() === '' ? '' : ` ${facet.name.trim()}`),
              ...(facet === undefined || handSetWords(facet) === ''
                ? []
                : [{ text: `, ${handSetWords(facet)}`, style: 'emphasis' as const }]),
            ],
            plain(row.pitchLabel),
            plain(facet === undefined ? '' : shortDirection(facet.downslopeAzimuthDeg)),
            plain(areaFigure(row.planAreaSqFt)),
            plain(areaFigure(row.areaSqFt)),
            plain(squaresFigure(row.squares)),
            plain(feetFigure(row.slopeLengthFt)),
            ...(row.courses === null ? [] : [plain(String(row.courses))]),
            ...pieceCell(row.pieces),
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
          plain(areaFigure(totals.areaSqFt)),
          plain(squaresFigure(totals.squares)),
          plain(''),
          ...(hasPieces ? [plain('')] : []),
          ...pieceCell(totals.pieces),
        ],
      },
    ],
  }
}

function workingWords({ facets }: PacketContext, piece: PieceSize | null): string {
  const pitches = [...new Set(facets.map(({ pitchRise }) => pitchRise))].toSorted((a, b) => a - b)
  const factors = pitches.map((rise) => `${slopeFactor(rise).toFixed(4)} at ${Number(rise.toFixed(3))} in 12`)
  const pieces =
    piece === null
      ? ''
      : ` Courses = slope / exposure of ${piece.exposureIn} in, up to whole ones; pieces = area / (exposure × cover width of ${piece.coverWidthIn} in).`
  return `Area = plan area × slope factor, the square root of (1 + (rise / 12) squared): ${factors.join(', ')}. One square is 100 sq ft. Slope is from the lowest to the highest point.${pieces} No waste is in these figures.`
}

function wasteBlocks({ totals }: FacetTable, percent: number | null, pieces: string) {
  if (percent === null) {
    return [heading('Allowance for waste'), paragraph('None is chosen for this job, so none is shown.')]
  }
  const waste = wasteAllowance(totals, percent)
  const hasPieces = totals.pieces !== null
  const line = (label: string, areaSqFt: number, count: number | null) => ({
    cells: [
      plain(label),
      plain(areaFigure(areaSqFt)),
      plain(squaresFigure(areaSqFt / 100)),
      ...(count === null ? [] : [plain(areaFigure(count))]),
    ],
  })
  const order =
    waste.piecesToOrder === null || totals.pieces === null
      ? ''
      : ` With it ${areaFigure(waste.piecesToOrder)} ${pieces.toLowerCase()} are to be ordered, without it ${areaFigure(wholePieces(totals.pieces))}, both up to whole ones.`
  return [
    heading('Allowance for waste'),
    {
      kind: 'table',
      summary: 'The measured roof and, apart from it, the allowance for waste',
      columns: [
        column('', 5),
        column('Area, sq ft', 1.4, 'end'),
        column('Squares', 1.4, 'end'),
        ...(hasPieces ? [column(pieces, 1.4, 'end')] : []),
      ],
      rows: [
        line('Measured, as in the table of facets', totals.areaSqFt, totals.pieces),
        line(`Allowance of ${percent} %, chosen by the contractor`, waste.areaSqFt, waste.pieces),
      ],
    } as const satisfies TableBlock,
    paragraph(`The allowance is in no other figure.${order}`, 'small'),
  ]
}
