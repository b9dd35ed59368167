import type { EdgeKind, PlanDrawing } from '../plan-drawing.ts'
import { BY_HAND, EDGE_LOOKS, INK, PAPER, QUIET_INK } from './inks.ts'
import { centredText, line, plainText, type PlanMark, type SheetPoint, solidPen } from './marks.ts'
import { doorSign } from './door-mark.ts'
import { marker } from './pin-marks.ts'
import { cameraMarks } from './roof-marks.ts'
import { type PlanScale, scaleBarFt } from './scale.ts'
import { zoneLegend } from './zone-marks.ts'

/** Height of the strip under the drawing that explains it. */
export const LEGEND_HEIGHT_PT = 78

const TEXT_PT = 8
const ROW_PT = 15
/** Rows of edge kinds in a column. */
const ROWS = 4
const BAR_WIDEST_PT = 150
const EDGE_ORDER: readonly EdgeKind[] = ['ridge', 'hip', 'valley', 'eave', 'rake', 'pitch-break', 'top-edge', 'step']

interface Strip {
  readonly scale: PlanScale
  readonly topPt: number
  readonly widthPt: number
}

/** Scale in words and as a bar, the kinds of edge that occur, and what the other marks mean. */
export function legendMarks(drawing: PlanDrawing, strip: Strip): readonly PlanMark[] {
  const top = strip.topPt
  const columns = { edges: strip.widthPt * 0.37, signs: strip.widthPt * 0.71 }
  return [
    line({ xPt: 0, yPt: top }, { xPt: strip.widthPt, yPt: top }, solidPen('#BDBDBD', 0.5)),
    ...scaleBar(strip),
    ...edgeLegend(drawing, { xPt: columns.edges, yPt: top + 16 }, (columns.signs - columns.edges) / 2),
    ...signLegend(drawing, { xPt: columns.signs, yPt: top + 16 }),
    ...(drawing.zones === undefined
      ? []
      : zoneLegend(drawing.zones, { xPt: 2, yPt: top + LEGEND_HEIGHT_PT }, strip.widthPt)),
  ]
}

function scaleBar(strip: Strip): readonly PlanMark[] {
  const top = strip.topPt
  const totalFt = scaleBarFt(strip.scale, BAR_WIDEST_PT)
  const ptPerFt = strip.scale.ptPerFt
  const parts = [0, 1, 2, 3].map((i): PlanMark => {
    const from = 3 + (i / 4) * totalFt * ptPerFt
    const to = 3 + ((i + 1) / 4) * totalFt * ptPerFt
    return {
      kind: 'path',
      points: bar(from, to, top + 28),
      closed: true,
      pen: solidPen(INK, 0.6),
      fill: i % 2 === 0 ? INK : PAPER,
    }
  })
  const numbers = [0, 0.5, 1].map((share) => {
    const feet = share * totalFt
    const at = { xPt: 3 + feet * ptPerFt, yPt: top + 41 }
    const words = share === 1 ? `${feet} ft` : `${feet}`
    return centredText(words, at, { sizePt: TEXT_PT, colour: INK, strong: false, onWhite: false })
  })
  const look = { sizePt: TEXT_PT, colour: QUIET_INK, strong: false }
  return [
    plainText(`Scale ${strip.scale.name}`, { xPt: 2, yPt: top + 19 }, { sizePt: 9, colour: INK, strong: true }),
    ...parts,
    ...numbers,
    plainText('True when printed at 100 %.', { xPt: 2, yPt: top + 57 }, look),
    plainText('Lengths are seen from above.', { xPt: 2, yPt: top + 68 }, look),
  ]
}

function bar(from: number, to: number, y: number): readonly SheetPoint[] {
  return [
    { xPt: from, yPt: y },
    { xPt: to, yPt: y },
    { xPt: to, yPt: y + 5 },
    { xPt: from, yPt: y + 5 },
  ]
}

function edgeLegend(drawing: PlanDrawing, at: SheetPoint, columnPt: number): readonly PlanMark[] {
  const kinds = EDGE_ORDER.filter((kind) => drawing.edges.some((edge) => edge.kind === kind))
  const placeOf = (i: number) => ({
    x: at.xPt + Math.floor(i / ROWS) * columnPt,
    y: at.yPt + (i % ROWS) * ROW_PT,
  })
  const last = placeOf(Math.min(kinds.length, 2 * ROWS - 1))
  const under = kinds.length === 2 * ROWS ? ROW_PT * 0.6 : 0
  const byHand = plainText(
    `${BY_HAND} stated by hand`,
    { xPt: last.x + 31, yPt: last.y + under + 2.6 },
    { sizePt: TEXT_PT, colour: INK, strong: false },
  )
  const rows = kinds.flatMap((kind, i) => {
    const look = EDGE_LOOKS[kind]
    const { x, y } = placeOf(i)
    return [
      line({ xPt: x, yPt: y }, { xPt: x + 26, yPt: y }, look.pen),
      plainText(look.tag, { xPt: x + 31, yPt: y + 2.6 }, { sizePt: TEXT_PT, colour: QUIET_INK, strong: false }),
      plainText(look.name, { xPt: x + 45, yPt: y + 2.6 }, { sizePt: TEXT_PT, colour: INK, strong: false }),
    ]
  })
  return drawing.edges.some((edge) => edge.byHand === true) ? [...rows, byHand] : rows
}

function signLegend(drawing: PlanDrawing, at: SheetPoint): readonly PlanMark[] {
  const rows: readonly {
    readonly shown: boolean
    readonly sign: (at: SheetPoint) => readonly PlanMark[]
    readonly words: string
  }[] = [
    { shown: drawing.facets.length > 0, sign: facetSign, words: 'facet, rise in 12, downhill' },
    {
      shown: drawing.pins.some((pin) => pin.filled),
      sign: (p) => marker({ label: '1', filled: true }, p),
      words: 'finding: damage',
    },
    {
      shown: drawing.pins.some((pin) => !pin.filled),
      sign: (p) => marker({ label: '2', filled: false }, p),
      words: 'finding: other condition',
    },
    { shown: drawing.cameras.length > 0, sign: cameraSign, words: 'camera, looking' },
    {
      shown: (drawing.doorAt ?? null) !== null,
      sign: (p) => doorSign({ xPt: p.xPt, yPt: p.yPt + 3 }, { x: 0, y: -1 }),
      words: 'front door',
    },
  ]
  const shown = rows.filter((row) => row.shown)
  const rowPt = shown.length > ROWS ? (ROW_PT * ROWS) / shown.length : ROW_PT
  return shown.flatMap((row, i) => {
    const y = at.yPt + i * rowPt
    const words = plainText(
      row.words,
      { xPt: at.xPt + 28, yPt: y + 2.6 },
      { sizePt: TEXT_PT, colour: INK, strong: false },
    )
    return [...row.sign({ xPt: at.xPt + 12, yPt: y }), words]
  })
}

function facetSign(at: SheetPoint): readonly PlanMark[] {
  const x = at.xPt + 11
  return [
    centredText('A', { xPt: at.xPt - 8, yPt: at.yPt }, { sizePt: 9, colour: INK, strong: true, onWhite: false }),
    line({ xPt: at.xPt - 1, yPt: at.yPt }, { xPt: x - 5, yPt: at.yPt }, solidPen(QUIET_INK, 0.9)),
    {
      kind: 'path',
      points: [
        { xPt: x, yPt: at.yPt },
        { xPt: x - 5.5, yPt: at.yPt + 2.3 },
        { xPt: x - 5.5, yPt: at.yPt - 2.3 },
      ],
      closed: true,
      pen: null,
      fill: QUIET_INK,
    },
  ]
}

function cameraSign(at: SheetPoint): readonly PlanMark[] {
  const camera = { photoId: '', label: '', at: { xFt: 0, yFt: 0 }, looking: { x: 1, y: 0 } }
  return cameraMarks([camera], () => ({ xPt: at.xPt - 7, yPt: at.yPt }))
}
