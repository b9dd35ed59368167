import type { SheetPoint } from './marks.ts'

/** A pin's marker before and after it is given a place. */
export interface PinToPlace {
  readonly target: SheetPoint
  readonly halfWidthPt: number
  readonly halfHeightPt: number
}

/** A box that markers should rather not cover: a facet's letter, an edge's tag. */
export interface SoftBox {
  readonly at: SheetPoint
  readonly halfWidthPt: number
  readonly halfHeightPt: number
}

const GAP_PT = 1.5
const RING_STEP_PT = 6
const RINGS = 60
const DIRECTIONS = 16
const COVERS_LABEL_COST = 30
const COVERS_TARGET_COST = 24
const CROSSES_LEADER_COST = 60
const PASSES_TARGET_COST = 20
const PASSES_WITHIN_PT = 3
/** No ring farther out than this beyond the best found so far is worth a look. */
const GIVE_UP_BEYOND_PT = 60

interface Leader {
  readonly from: SheetPoint
  readonly to: SheetPoint
}

interface Sheet {
  readonly widthPt: number
  readonly heightPt: number
  readonly soft: readonly SoftBox[]
}

/**
 * Places for pin markers, in the order given. A marker stands on its own point where it can; where markers would overlap
 * or cover the points of others it moves out in rings to the cheapest free place (short leaders, no covered labels, no crossed leaders). The answer is
 * the same for the same input. Only when the whole sheet is full do markers overlap.
 */
export function placePins(pins: readonly PinToPlace[], sheet: Sheet): readonly SheetPoint[] {
  const placed: SoftBox[] = []
  const places = new Map<number, SheetPoint>()
  pins.forEach((pin, i) => {
    const own = boxAt(pin, pin.target)
    // In a crowd nobody may stand on the points of the others.
    const coversOthers = pins.some((other, j) => j !== i && covers(own, other.target))
    if (coversOthers || !isFree(own, placed)) return
    placed.push(own)
    places.set(i, pin.target)
  })
  const leaders: Leader[] = []
  return pins.map((pin, i) => {
    const own = places.get(i)
    if (own !== undefined) return own
    const at = cheapestPlace(pin, { sheet, placed, leaders, targets: pins.map((p) => p.target) })
    placed.push(boxAt(pin, at))
    leaders.push({ from: pin.target, to: at })
    return at
  })
}

interface Crowd {
  readonly sheet: Sheet
  readonly placed: readonly SoftBox[]
  readonly leaders: readonly Leader[]
  readonly targets: readonly SheetPoint[]
}

function cheapestPlace(pin: PinToPlace, crowd: Crowd): SheetPoint {
  let best = { at: pin.target, cost: Number.POSITIVE_INFINITY }
  for (let ring = 1; ring <= RINGS; ring += 1) {
    const radius = 12 + ring * RING_STEP_PT
    if (radius > best.cost + GIVE_UP_BEYOND_PT) break
    for (let turn = 0; turn < DIRECTIONS; turn += 1) {
      const angle = (turn / DIRECTIONS) * 2 * Math.PI
      const at = { xPt: pin.target.xPt + radius * Math.cos(angle), yPt: pin.target.yPt + radius * Math.sin(angle) }
      if (!isOnSheet(boxAt(pin, at), crowd.sheet) || !isFree(boxAt(pin, at), crowd.placed)) continue
      const cost = radius + placeCost(pin, at, crowd)
      if (cost < best.cost - 1e-9) best = { at, cost }
    }
  }
  return best.at
}

function placeCost(pin: PinToPlace, at: SheetPoint, crowd: Crowd): number {
  const box = boxAt(pin, at)
  const leader = { from: pin.target, to: at }
  const labels = crowd.sheet.soft.filter((soft) => overlaps(box, soft)).length
  const targets = crowd.targets.filter((target) => covers(box, target)).length
  const crossed = crowd.leaders.filter((other) => cross(leader, other)).length
  const through = crowd.placed.filter((other) => runsThrough(leader, other)).length
  const passed = crowd.targets.filter((target) => runsThrough(leader, dotAt(target))).length
  return (
    labels * COVERS_LABEL_COST +
    targets * COVERS_TARGET_COST +
    passed * PASSES_TARGET_COST +
    (crossed + through) * CROSSES_LEADER_COST
  )
}

function dotAt(at: SheetPoint): SoftBox {
  return { at, halfWidthPt: PASSES_WITHIN_PT, halfHeightPt: PASSES_WITHIN_PT }
}

function boxAt(pin: PinToPlace, at: SheetPoint): SoftBox {
  return { at, halfWidthPt: pin.halfWidthPt, halfHeightPt: pin.halfHeightPt }
}

/** Whether two boxes touch or come closer than a gap. */
export function overlaps(a: SoftBox, b: SoftBox): boolean {
  return (
    Math.abs(a.at.xPt - b.at.xPt) < a.halfWidthPt + b.halfWidthPt + GAP_PT &&
    Math.abs(a.at.yPt - b.at.yPt) < a.halfHeightPt + b.halfHeightPt + GAP_PT
  )
}

function isFree(box: SoftBox, placed: readonly SoftBox[]): boolean {
  return placed.every((other) => !overlaps(box, other))
}

function isOnSheet(box: SoftBox, sheet: Sheet): boolean {
  const { xPt, yPt } = box.at
  return (
    xPt >= box.halfWidthPt &&
    xPt <= sheet.widthPt - box.halfWidthPt &&
    yPt >= box.halfHeightPt &&
    yPt <= sheet.heightPt - box.halfHeightPt
  )
}

function covers(box: SoftBox, point: SheetPoint): boolean {
  return Math.abs(box.at.xPt - point.xPt) < box.halfWidthPt && Math.abs(box.at.yPt - point.yPt) < box.halfHeightPt
}

/** Whether a leader passes over another marker: sampled, since markers are small. The leader's own ends don't count. */
function runsThrough(leader: Leader, box: SoftBox): boolean {
  if (covers(box, leader.from)) return false
  for (let step = 1; step < 12; step += 1) {
    const t = step / 12
    const at = {
      xPt: leader.from.xPt + t * (leader.to.xPt - leader.from.xPt),
      yPt: leader.from.yPt + t * (leader.to.yPt - leader.from.yPt),
    }
    if (covers(box, at)) return true
  }
  return false
}

function cross(a: Leader, b: Leader): boolean {
  return side(a, b.from) * side(a, b.to) < 0 && side(b, a.from) * side(b, a.to) < 0
}

function side(leader: Leader, point: SheetPoint): number {
  const { from, to } = leader
  return (to.xPt - from.xPt) * (point.yPt - from.yPt) - (to.yPt - from.yPt) * (point.xPt - from.xPt)
}
