import polylabel from 'polylabel'
import type { PlanFrame, PlanPoint } from '../job/places.ts'
import { findingLabel, type Finding, type Pin } from '../evidence/finding.ts'
import { photoLabel, type Photo } from '../evidence/photo.ts'
import { roofEdges } from './edges.ts'
import type { Facet } from './facet.ts'
import type { CameraShape, EdgeShape, FacetShape, PinShape, PlanBounds, PlanDrawing } from './plan-drawing.ts'
import { geoToPlan, sheetDirection } from './plan-frame.ts'
import { containsPoint } from './polygon.ts'
import { pitchLabel } from './slope.ts'
import { zonePieces } from './zones/edge-zones.ts'
import type { JobZones } from './zones/job-zones.ts'

/** Room round the drawing, feet. */
const MARGIN_FT = 4
/** How often a label's place is looked for, each time ten times as closely. */
const LABEL_TRIES = 4
/** What an empty sheet covers, feet. */
const EMPTY_SHEET: PlanBounds = { minXFt: -30, minYFt: -30, maxXFt: 30, maxYFt: 30 }

/** Everything that is drawn on the plan, from the records of a job. Photos without a position are left off. */
export function drawPlan(input: {
  readonly facets: readonly Facet[]
  readonly findings: readonly Finding[]
  readonly photos: readonly Photo[]
  readonly frame: PlanFrame
  readonly frontAzimuthDeg: number | null
  /** The edge zones, where they are to be drawn. */
  readonly zones?: JobZones
  readonly doorAt?: PlanPoint | null
}): PlanDrawing {
  const { facets, frame, doorAt = null } = input
  const pins = input.findings.flatMap((finding) => (finding.pin === null ? [] : [pinShape(finding, finding.pin)]))
  return {
    bounds: boundsOf([
      ...facets.flatMap((facet) => facet.outline),
      ...pins.flatMap((pin) => pin.points),
      ...(doorAt === null ? [] : [doorAt]),
    ]),
    upAzimuthDeg: frame.upAzimuthDeg,
    frontAzimuthDeg: input.frontAzimuthDeg,
    doorAt,
    facets: facets.map((facet) => facetShape(facet, frame)),
    edges: edgeShapes(facets, frame.upAzimuthDeg),
    pins,
    cameras: cameraShapes(input.photos, frame),
    ...(input.zones?.kind === 'drawn' ? { zones: zonePieces(input.zones) } : {}),
  }
}

/** Where photos were taken and which way the cameras looked. Photos without a position are left off. */
export function cameraShapes(photos: readonly Photo[], frame: PlanFrame): readonly CameraShape[] {
  return photos.flatMap((photo) => cameraShape(photo, frame))
}

/** The point inside an outline that is farthest from its sides, for a label. */
export function labelPoint(outline: readonly PlanPoint[]): PlanPoint {
  const ring = [outline.map((p): [number, number] => [p.xFt, p.yFt])]
  const { minXFt, minYFt, maxXFt, maxYFt } = boxOf(outline)
  // The search stops within this of the best place. In a narrow outline a coarse stop can leave it outside.
  let withinFt = Math.min(0.1, Math.min(maxXFt - minXFt, maxYFt - minYFt) / 20)
  for (let tries = 1; ; tries++) {
    const [x = 0, y = 0] = polylabel(ring, withinFt)
    const point = { xFt: x, yFt: y }
    if (tries === LABEL_TRIES || containsPoint(outline, point)) return point
    withinFt /= 10
  }
}

/** The roof's edges as things to draw. */
export function edgeShapes(facets: readonly Facet[], upAzimuthDeg: number): readonly EdgeShape[] {
  return roofEdges(facets, upAzimuthDeg).map(({ kind, from, to, foundKind }) =>
    foundKind === undefined ? { kind, from, to } : { kind, from, to, byHand: true },
  )
}

/** One facet as a thing to draw. */
export function facetShape(facet: Facet, frame: PlanFrame): FacetShape {
  return {
    id: facet.id,
    letter: facet.letter,
    outline: facet.outline,
    labelAt: labelPoint(facet.outline),
    pitchLabel: pitchLabel(facet.pitchRise),
    downhill: sheetDirection(facet.downslopeAzimuthDeg, frame.upAzimuthDeg),
  }
}

function pinShape(finding: Finding, pin: Pin): PinShape {
  const points = pin.kind === 'point' ? [pin.at] : pin.points
  return {
    findingId: finding.id,
    label: findingLabel(finding.number).slice(2),
    kind: pin.kind,
    points,
    markerAt: markerPoint(pin),
    filled: finding.kind === 'damage',
  }
}

/** Where the marker of a pin stands: on its point, in the middle of its line, well inside its area. */
export function markerPoint(pin: Pin): PlanPoint {
  switch (pin.kind) {
    case 'point':
      return pin.at
    case 'line':
      return middleOfLine(pin.points)
    case 'area':
      return labelPoint(pin.points)
  }
}

function middleOfLine(points: readonly PlanPoint[]): PlanPoint {
  const steps = points.slice(1).map((to, i) => ({ from: points[i] ?? to, to }))
  const length = (s: { from: PlanPoint; to: PlanPoint }) => Math.hypot(s.to.xFt - s.from.xFt, s.to.yFt - s.from.yFt)
  let left = steps.reduce((sum, step) => sum + length(step), 0) / 2
  for (const step of steps) {
    const here = length(step)
    if (here >= left && here > 0) {
      const t = left / here
      return {
        xFt: step.from.xFt + t * (step.to.xFt - step.from.xFt),
        yFt: step.from.yFt + t * (step.to.yFt - step.from.yFt),
      }
    }
    left -= here
  }
  return points[0] ?? { xFt: 0, yFt: 0 }
}

function cameraShape(photo: Photo, frame: PlanFrame): readonly CameraShape[] {
  const at = photo.file.position === null ? null : geoToPlan(photo.file.position, frame)
  if (at === null) return []
  const { direction } = photo.file
  // Magnetic directions are drawn as they stand: the declination is not known here and is small beside a phone compass's error.
  const looking = direction === null ? null : sheetDirection(direction.azimuthDeg, frame.upAzimuthDeg)
  return [{ photoId: photo.id, label: photoLabel(photo.number), at, looking }]
}

function boundsOf(points: readonly PlanPoint[]): PlanBounds {
  if (points.length === 0) return EMPTY_SHEET
  const { minXFt, minYFt, maxXFt, maxYFt } = boxOf(points)
  return {
    minXFt: minXFt - MARGIN_FT,
    minYFt: minYFt - MARGIN_FT,
    maxXFt: maxXFt + MARGIN_FT,
    maxYFt: maxYFt + MARGIN_FT,
  }
}

function boxOf(points: readonly PlanPoint[]): PlanBounds {
  return points.reduce<PlanBounds>(
    (box, p) => ({
      minXFt: Math.min(box.minXFt, p.xFt),
      minYFt: Math.min(box.minYFt, p.yFt),
      maxXFt: Math.max(box.maxXFt, p.xFt),
      maxYFt: Math.max(box.maxYFt, p.yFt),
    }),
    { minXFt: Infinity, minYFt: Infinity, maxXFt: -Infinity, maxYFt: -Infinity },
  )
}
