import type { PlanBounds, PlanDrawing, SheetSide } from '../plan-drawing.ts'
import { clippedDrawing, extentsFromElsewhere } from './clip-drawing.ts'
import { outerRuns } from './outer-runs.ts'
import { roofBounds } from './roof-bounds.ts'
import { largestScale, namedScales, type PlanScale } from './scale.ts'

/**
 * The smallest scale at which a plan is read with ease: 1 in = 20 ft, or 1 : 250 (common practice, no source). A plan that
 * fits no sheet at it goes over several.
 */
const LEGIBLE = { us: '1 in = 20 ft', metric: '1 : 250' } as const

/** More sheets than this are no help; the scale gets smaller instead. */
const MOST_SHEETS = 12

/** Room on a page for the drawing itself, points. */
interface SheetRoom {
  readonly widthPt: number
  readonly heightPt: number
  readonly scales: 'us' | 'metric'
}

/** A plan on one sheet, or on several with a key plan that shows which is where. */
export type PlanOnSheets =
  | { readonly kind: 'one'; readonly drawing: PlanDrawing }
  | { readonly kind: 'several'; readonly key: PlanDrawing; readonly sheets: readonly PlanDrawing[] }

/**
 * Divides a plan that is too large for one sheet at a legible scale. All sheets have one named scale, the largest that
 * takes no more of them; each goes on to its neighbours at match lines. Sheets with nothing on them are left out. Pins
 * stand on the sheet that their marker is on, and not on the key plan.
 */
export function planOnSheets(drawing: PlanDrawing, room: SheetRoom): PlanOnSheets {
  const bounds = roofBounds(drawing)
  const size = { width: bounds.maxXFt - bounds.minXFt, height: bounds.maxYFt - bounds.minYFt }
  const legible = namedScales(room.scales).findIndex(({ name }) => name === LEGIBLE[room.scales])
  const fitting = largestScale(size, { width: room.widthPt, height: room.heightPt }, room.scales)
  const scales = namedScales(room.scales)
  if (scales.findIndex(({ name }) => name === fitting.name) <= legible) return { kind: 'one', drawing }
  const counts = scales.map((scale) => gridFor(size, room, scale))
  const chosen = scales.find((_, i) => i >= legible && (counts[i]?.count ?? 0) <= MOST_SHEETS) ?? fitting
  const most = gridFor(size, room, chosen).count
  const scale = scales.find((_, i) => (counts[i]?.count ?? Infinity) <= most) ?? chosen
  return divided(drawing, { bounds, scale, ...gridFor(size, room, scale) })
}

interface Grid {
  readonly columns: number
  readonly rows: number
  readonly count: number
}

function gridFor(size: { width: number; height: number }, room: SheetRoom, { ptPerFt }: PlanScale): Grid {
  const columns = Math.max(1, Math.ceil((size.width * ptPerFt) / room.widthPt - 1e-9))
  const rows = Math.max(1, Math.ceil((size.height * ptPerFt) / room.heightPt - 1e-9))
  return { columns, rows, count: columns * rows }
}

interface Division extends Grid {
  readonly bounds: PlanBounds
  readonly scale: PlanScale
}

interface Cell {
  readonly column: number
  readonly row: number
  readonly bounds: PlanBounds
}

function divided(drawing: PlanDrawing, division: Division): PlanOnSheets {
  const whole = { ...drawing, dimensions: outerRuns(drawing) }
  const cells = cellsOf(division)
    .map((cell) => ({ ...cell, drawing: clippedDrawing(whole, cell.bounds) }))
    .filter(({ drawing: { facets, edges, pins } }) => facets.length + edges.length + pins.length > 0)
  const sheetAt = (column: number, row: number) =>
    cells.findIndex((cell) => cell.column === column && cell.row === row) + 1
  const matchesOf = ({ column, row }: Cell) => {
    const beside: readonly (readonly [SheetSide, number])[] = [
      ['left', sheetAt(column - 1, row)],
      ['right', sheetAt(column + 1, row)],
      ['top', sheetAt(column, row - 1)],
      ['bottom', sheetAt(column, row + 1)],
    ]
    return beside.filter(([, sheet]) => sheet > 0).map(([side, sheet]) => ({ side, sheet }))
  }
  const sheets = cells.map((cell, i): PlanDrawing => ({
    ...cell.drawing,
    window: {
      bounds: cell.bounds,
      scale: division.scale,
      sheet: i + 1,
      of: cells.length,
      matches: matchesOf(cell),
      extents: extentsFromElsewhere(drawing.pins, cell.bounds),
    },
  }))
  const key: PlanDrawing = {
    ...drawing,
    pins: [],
    cameras: [],
    dimensions: [],
    sheets: cells.map(({ bounds }, i) => ({ sheet: i + 1, bounds })),
  }
  return { kind: 'several', key, sheets }
}

/** Row by row from the top left, all of one size. */
function cellsOf({ bounds, columns, rows }: Division): readonly Cell[] {
  const width = (bounds.maxXFt - bounds.minXFt) / columns
  const height = (bounds.maxYFt - bounds.minYFt) / rows
  const edgeFt = 1e-6
  return Array.from({ length: rows * columns }, (_, i) => {
    const [column, row] = [i % columns, Math.floor(i / columns)]
    const minXFt = bounds.minXFt + column * width
    const maxYFt = bounds.maxYFt - row * height
    // The outermost sides take in what lies on them.
    const maxXFt = column === columns - 1 ? bounds.maxXFt + edgeFt : minXFt + width
    return {
      column,
      row,
      bounds: { minXFt, maxXFt, minYFt: maxYFt - height, maxYFt: row === 0 ? maxYFt + edgeFt : maxYFt },
    }
  })
}
