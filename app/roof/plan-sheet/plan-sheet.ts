import type { PlanBounds, PlanDrawing } from '../plan-drawing.ts'
import type { PlanPoint } from '../../job/places.ts'
import { dimensionMarks } from './dimension-marks.ts'
import { directionMarks } from './direction-marks.ts'
import { cameraMarks, edgeMarks, facetMarks } from './roof-marks.ts'
import { LEGEND_HEIGHT_PT, legendMarks } from './legend-marks.ts'
import { doorMarks } from './door-mark.ts'
import type { PlanMark, PlanTarget, SheetPoint } from './marks.ts'
import { outerRuns } from './outer-runs.ts'
import { extentMarks, pinBoxes, pinMarks } from './pin-marks.ts'
import { boundsOf, roofBounds } from './roof-bounds.ts'
import { largestScale, type PlanScale } from './scale.ts'
import { keyMarks, matchMarks } from './sheet-marks.ts'
import { ZONE_LEGEND_PT, zoneMarks } from './zone-marks.ts'

/** A plan drawn on a sheet: marks in the order to draw them, pins as link targets, and the scale it is true to. */
export interface PlanSheet {
  readonly widthPt: number
  readonly heightPt: number
  readonly scale: PlanScale
  readonly marks: readonly PlanMark[]
  readonly targets: readonly PlanTarget[]
}

/** From plan feet (y up) to sheet points (y down). */
export type ToSheet = (point: PlanPoint) => SheetPoint

/** Room round the roof for markers that had to move out, the front marker and the north arrow. */
const RIM_PT = 34
const INSET_RIM_PT = 5
/** How far a camera may stand off the roof and still widen an inset, in lengths of the roof. */
const INSET_REACH = 0.6

/** Draws a plan to the largest named scale that fits a sheet, with legend, scale bar, north and front, and pins that don't overlap. */
export function planSheet(
  drawing: PlanDrawing,
  sheet: { widthPt: number; heightPt: number; scales: 'us' | 'metric' },
): PlanSheet {
  const { widthPt, heightPt } = sheet
  const legendPt = legendHeightPt(drawing)
  const bounds = drawing.window?.bounds ?? roofBounds(drawing)
  const roomPt = { width: widthPt - 2 * RIM_PT, height: heightPt - legendPt - 2 * RIM_PT }
  const size = { width: bounds.maxXFt - bounds.minXFt, height: bounds.maxYFt - bounds.minYFt }
  const scale = drawing.window?.scale ?? largestScale(size, roomPt, sheet.scales)
  const drawingHeightPt = heightPt - legendPt
  const toSheet = mapping(bounds, scale.ptPerFt, { xPt: widthPt / 2, yPt: drawingHeightPt / 2 })
  const area = { widthPt, heightPt: drawingHeightPt }
  const drawn = drawnRoof(drawing, { toSheet, bounds, area })
  return {
    widthPt,
    heightPt,
    scale,
    marks: [...drawn.marks, ...legendMarks(drawing, { scale, topPt: drawingHeightPt, widthPt })],
    targets: drawn.targets,
  }
}

/** Height of the strip under the drawing. */
function legendHeightPt({ zones }: PlanDrawing): number {
  return LEGEND_HEIGHT_PT + (zones === undefined ? 0 : ZONE_LEGEND_PT)
}

/** Room for the drawing itself on a page that has so much room for a plan with its legend, points. */
export function roomForDrawing(pagePt: { readonly widthPt: number; readonly heightPt: number }, drawing: PlanDrawing) {
  return { widthPt: pagePt.widthPt - 2 * RIM_PT, heightPt: pagePt.heightPt - legendHeightPt(drawing) - 2 * RIM_PT }
}

interface Around {
  readonly toSheet: ToSheet
  readonly bounds: PlanBounds
  readonly area: { readonly widthPt: number; readonly heightPt: number }
}

function drawnRoof(drawing: PlanDrawing, around: Around): Pick<PlanSheet, 'marks' | 'targets'> {
  const { toSheet, area } = around
  const wanted = pinBoxes(drawing.pins, toSheet)
  const facets = facetMarks(drawing.facets, toSheet, wanted)
  const edges = edgeMarks(drawing.edges, toSheet, wanted)
  const directions = directionMarks(drawing, around)
  const door = doorMarks(drawing, toSheet)
  const matches = drawing.window === undefined ? NOTHING : matchMarks(drawing.window, toSheet)
  const dimensions = dimensionMarks(drawing.dimensions ?? outerRuns(drawing), {
    toSheet,
    facets: drawing.facets,
    area,
    taken: [...wanted, ...edges.labels, ...directions.boxes, ...door.boxes, ...matches.boxes],
  })
  const soft = [
    ...facets.labels,
    ...edges.labels,
    ...dimensions.boxes,
    ...matches.boxes,
    ...directions.boxes,
    ...door.boxes,
  ]
  const pins = pinMarks(drawing.pins, toSheet, { ...area, soft })
  const inView = drawing.cameras.filter((camera) => isInside(toSheet(camera.at), area))
  const hasZones = drawing.zones !== undefined
  return {
    marks: [
      ...facets.grounds,
      ...zoneMarks(drawing.zones ?? [], toSheet),
      ...extentMarks(drawing.window?.extents ?? [], toSheet),
      ...(hasZones ? pins.extents.map(emptied) : pins.extents),
      ...edges.marks,
      ...(hasZones ? facets.marks.map(onWhite) : facets.marks),
      ...cameraMarks(inView, toSheet),
      ...directions.marks,
      ...door.marks,
      ...dimensions.marks,
      ...matches.marks,
      ...keyMarks(drawing.sheets ?? [], toSheet),
      ...pins.marks,
    ],
    targets: pins.targets,
  }
}

/** An area without its ground, so that the zones under it stay in sight. */
function emptied(mark: PlanMark): PlanMark {
  return mark.kind === 'path' ? { ...mark, fill: null } : mark
}

/** Letters with a white ground, so that hatching does not run through them. */
function onWhite(mark: PlanMark): PlanMark {
  return mark.kind === 'text' ? { ...mark, onWhite: true } : mark
}

const NOTHING = { marks: [], boxes: [] } as const

/** The plan drawn small, to any scale that fills the box: facets with their letters, edges, and where the cameras stood. */
export function planInset(drawing: PlanDrawing, box: { widthPt: number; heightPt: number }): readonly PlanMark[] {
  const roof = roofBounds(drawing)
  const bounds = reachCameras(roof, drawing)
  const room = { width: box.widthPt - 2 * INSET_RIM_PT, height: box.heightPt - 2 * INSET_RIM_PT }
  const ptPerFt = Math.min(room.width / (bounds.maxXFt - bounds.minXFt), room.height / (bounds.maxYFt - bounds.minYFt))
  const toSheet = mapping(bounds, ptPerFt, { xPt: box.widthPt / 2, yPt: box.heightPt / 2 })
  const held = drawing.cameras.map((camera) => ({ ...camera, at: holdIn(camera.at, bounds) }))
  const facets = facetMarks(drawing.facets, toSheet, [])
  const edges = edgeMarks(drawing.edges, toSheet, [])
  const letters = facets.marks.filter((mark) => mark.kind === 'text' && /^\p{L}/u.test(mark.text))
  return [...facets.grounds, ...thin(edges.lines), ...letters, ...cameraMarks(held, toSheet)]
}

function thin(marks: readonly PlanMark[]): readonly PlanMark[] {
  return marks.map((mark) =>
    mark.kind === 'path' && mark.pen !== null
      ? { ...mark, pen: { ...mark.pen, widthPt: mark.pen.widthPt * 0.5, dashPt: [] } }
      : mark,
  )
}

function reachCameras(roof: PlanBounds, drawing: PlanDrawing): PlanBounds {
  const reach = INSET_REACH * Math.max(roof.maxXFt - roof.minXFt, roof.maxYFt - roof.minYFt)
  const held = drawing.cameras.map((camera) =>
    holdIn(camera.at, {
      minXFt: roof.minXFt - reach,
      minYFt: roof.minYFt - reach,
      maxXFt: roof.maxXFt + reach,
      maxYFt: roof.maxYFt + reach,
    }),
  )
  const corners = [
    { xFt: roof.minXFt, yFt: roof.minYFt },
    { xFt: roof.maxXFt, yFt: roof.maxYFt },
  ]
  return boundsOf([...corners, ...held])
}

function holdIn(point: PlanPoint, bounds: PlanBounds): PlanPoint {
  return {
    xFt: Math.min(Math.max(point.xFt, bounds.minXFt), bounds.maxXFt),
    yFt: Math.min(Math.max(point.yFt, bounds.minYFt), bounds.maxYFt),
  }
}

function mapping(bounds: PlanBounds, ptPerFt: number, middle: SheetPoint): ToSheet {
  const midX = (bounds.minXFt + bounds.maxXFt) / 2
  const midY = (bounds.minYFt + bounds.maxYFt) / 2
  return (p) => ({ xPt: middle.xPt + (p.xFt - midX) * ptPerFt, yPt: middle.yPt - (p.yFt - midY) * ptPerFt })
}

function isInside(point: SheetPoint, area: { widthPt: number; heightPt: number }): boolean {
  return point.xPt >= 0 && point.yPt >= 0 && point.xPt <= area.widthPt && point.yPt <= area.heightPt
}
