import type { PlanPoint } from '../../app/job/places.ts'
import { containsPoint, lengthFt, signedAreaSqFt, sidesOf } from '../../app/roof/polygon.ts'
import type { Chance } from './chance.ts'
import type { SimulatedHouse } from './simulated-houses.ts'

/** What really happened when a photo was taken. The method under test never sees it. */
export interface TrueShot {
  readonly atMs: number
  /** Index of the facet that the inspector stands on; -1 on the ground. */
  readonly standsOn: number
  /** Index of the facet that a person would tag; -1 for a photo from the ground. */
  readonly shows: number
  readonly at: PlanPoint
  /** Where the camera points, on the sheet. */
  readonly towards: PlanPoint
  /** The inspector came to this facet or to the ground with this photo. */
  readonly arrives: boolean
}

const STRIDE_FT_PER_S = 1.6
/** Photos of a facet beside the one that the inspector stands on, and overviews of their own. */
const SHARES = { neighbour: 0.07, overview: 0.12, stepBack: 0.12, groundTrip: 0.12, single: 0.25 }
/** Seconds of handling the camera: for a photo of something else, and for one more of the same thing. */
const HANDLING_S = { other: { least: 4, mean: 9 }, same: { least: 2, mean: 3 } }
/** How far a thing is from where it is first photographed, and how near the camera comes to it. */
const THING_FT = { overview: [5, 14], mid: 5, close: 2.5 } as const

/**
 * How an inspector photographs: single photos of this and that, some 90 of a house, or things one after the other, each
 * with an overview, a mid and a close photo within seconds, some 300 of a house. The second is how findings are
 * documented (common practice, no source) and how a walk comes to a few hundred photos.
 */
export type Manner = 'singles' | 'things'

/**
 * One inspection: some photos from the ground, up a ladder, every facet once in an order that mostly keeps to neighbours,
 * 3 to 20 photos or things on each with small steps between them, some steps back, and often a few photos from the ground
 * at the end.
 */
export function simulatedWalk(house: SimulatedHouse, chance: Chance, manner: Manner): readonly TrueShot[] {
  const walk = new Walk(house, chance, manner)
  walk.aroundTheHouse(3 + Math.floor(chance.between(1, 5)))
  walk.wait(chance.between(60, 240))
  const left = new Set(house.facets.keys())
  let current = walk.nearest([...left])
  for (;;) {
    walk.workOn(current, walk.countFor(current))
    left.delete(current)
    if (left.size === 0) break
    if (chance.chance(SHARES.stepBack)) {
      const back = walk.touching(current).filter((facet) => !left.has(facet))
      if (back[0] !== undefined)
        walk.workOn(chance.pick([back[0], ...back.slice(1)]), 1 + Math.floor(chance.between(0, 3)))
    }
    if (chance.chance(SHARES.groundTrip / 4)) {
      walk.wait(chance.between(40, 120))
      walk.aroundTheHouse(2)
      walk.wait(chance.between(40, 120))
    }
    current = walk.next(current, [...left])
  }
  if (chance.chance(0.6)) {
    walk.wait(chance.between(40, 180))
    walk.aroundTheHouse(1 + Math.floor(chance.between(0, 4)))
  }
  return walk.shots
}

class Walk {
  readonly shots: TrueShot[] = []
  private clockMs = 1_773_500_000_000
  private at: PlanPoint
  private readonly house: SimulatedHouse
  private readonly chance: Chance
  private readonly middle: PlanPoint
  private readonly meanAreaSqFt: number
  private readonly manner: Manner

  constructor(house: SimulatedHouse, chance: Chance, manner: Manner) {
    this.manner = manner
    this.house = house
    this.chance = chance
    this.middle = middleOf(house.facets.flatMap(({ outline }) => outline))
    this.at = this.middle
    const areas = house.facets.map(({ outline }) => Math.abs(signedAreaSqFt(outline)))
    this.meanAreaSqFt = areas.reduce((sum, area) => sum + area, 0) / areas.length
  }

  wait(seconds: number): void {
    this.clockMs += Math.round(seconds * 1000)
  }

  /** Between 3 and 20 photos or things, more on larger facets. */
  countFor(facet: number): number {
    const mean = 3 + (6 * Math.abs(signedAreaSqFt(this.outline(facet)))) / this.meanAreaSqFt
    return Math.max(3, Math.min(20, Math.round(mean * this.chance.between(0.4, 1.7))))
  }

  aroundTheHouse(count: number): void {
    const corners = this.house.facets.flatMap(({ outline }) => outline)
    let turn = this.chance.between(0, 2 * Math.PI)
    for (let photo = 0; photo < count; photo++) {
      turn += this.chance.between(0.6, 1.6)
      const out = { x: Math.cos(turn), y: Math.sin(turn) }
      const reachFt = Math.max(
        ...corners.map(({ xFt, yFt }) => (xFt - this.middle.xFt) * out.x + (yFt - this.middle.yFt) * out.y),
      )
      const ft = reachFt + this.chance.between(6, 25)
      const at = { xFt: this.middle.xFt + out.x * ft, yFt: this.middle.yFt + out.y * ft }
      this.take({ standsOn: -1, shows: -1, at, towards: this.middle }, photo === 0)
    }
  }

  workOn(facet: number, count: number): void {
    const beside = this.touching(facet)
    for (let photo = 0; photo < count; photo++) {
      const at = photo === 0 ? this.entering(facet) : this.stepOn(facet)
      const [first, ...rest] = beside
      if (first !== undefined && this.chance.chance(SHARES.neighbour)) {
        this.lookAcross(facet, this.chance.pick([first, ...rest]), photo === 0)
      } else if (this.manner === 'things' && !this.chance.chance(SHARES.single)) {
        this.thing(facet, at, photo === 0)
      } else if (this.chance.chance(SHARES.overview)) {
        this.take({ standsOn: facet, shows: facet, at, towards: middleOf(this.outline(facet)) }, photo === 0)
      } else {
        this.take({ standsOn: facet, shows: facet, at, towards: this.inFront(facet, at) }, photo === 0)
      }
    }
  }

  touching(facet: number): number[] {
    return [...this.house.facets.keys()].filter(
      (other) => other !== facet && gapFt(this.outline(facet), this.outline(other)) < 0.5,
    )
  }

  nearest(of: readonly number[]): number {
    const away = (facet: number) => lengthFt(this.at, middleOf(this.outline(facet)))
    return of.reduce((best, facet) => (away(facet) < away(best) ? facet : best))
  }

  next(from: number, left: readonly number[]): number {
    const weights = left.map((facet) => {
      const touches = gapFt(this.outline(from), this.outline(facet)) < 0.5
      return Math.exp(-lengthFt(this.at, middleOf(this.outline(facet))) / 15) * (touches ? 4 : 1)
    })
    return left[this.chance.weighted(weights)] ?? from
  }

  /** An overview, a mid and a close photo on the way to a thing, half of the time one more close with a scale. */
  private thing(facet: number, from: PlanPoint, arrives: boolean): void {
    const thing = this.inFront(facet, from, THING_FT.overview)
    const shot = { standsOn: facet, shows: facet, towards: thing }
    this.take({ ...shot, at: from }, arrives)
    const nears = [THING_FT.mid, THING_FT.close, ...(this.chance.chance(0.5) ? [THING_FT.close] : [])]
    for (const ft of nears) this.take({ ...shot, at: this.nearer(facet, thing, ft) }, false, HANDLING_S.same)
  }

  /** A step towards a thing up to some feet from it, where that is on the facet. */
  private nearer(facet: number, thing: PlanPoint, ft: number): PlanPoint {
    const share = Math.max(0, 1 - ft / Math.max(0.1, lengthFt(this.at, thing)))
    const place = {
      xFt: this.at.xFt + (thing.xFt - this.at.xFt) * share,
      yFt: this.at.yFt + (thing.yFt - this.at.yFt) * share,
    }
    return this.isOn(facet, place) ? place : this.at
  }

  private take(shot: Omit<TrueShot, 'atMs' | 'arrives'>, arrives: boolean, handling = HANDLING_S.other): void {
    const handlingS = handling.least - handling.mean * Math.log(1 - this.chance.unit())
    this.wait(lengthFt(this.at, shot.at) / STRIDE_FT_PER_S + handlingS)
    this.at = shot.at
    this.shots.push({ ...shot, atMs: this.clockMs, arrives })
  }

  private lookAcross(from: number, to: number, arrives: boolean): void {
    const places = Array.from({ length: 6 }, () => this.someplaceOn(from))
    const away = (at: PlanPoint) => Math.min(...sidesOf(this.outline(to)).map((side) => offSideFt(at, side)))
    const at = places.reduce((best, place) => (away(place) < away(best) ? place : best))
    const shot = { standsOn: from, shows: to, at, towards: this.someplaceOn(to) }
    this.take(shot, arrives)
    if (this.manner === 'things') this.take(shot, false, HANDLING_S.same)
  }

  private entering(facet: number): PlanPoint {
    const places = Array.from({ length: 4 }, () => this.someplaceOn(facet))
    return places.reduce((best, place) => (lengthFt(place, this.at) < lengthFt(best, this.at) ? place : best))
  }

  private stepOn(facet: number): PlanPoint {
    for (let attempt = 0; attempt < 40; attempt++) {
      const { xFt, yFt } = this.at
      const place = { xFt: xFt + this.chance.normal(6), yFt: yFt + this.chance.normal(6) }
      if (this.isOn(facet, place)) return place
    }
    return this.someplaceOn(facet)
  }

  private someplaceOn(facet: number): PlanPoint {
    const outline = this.outline(facet)
    const xs = outline.map(({ xFt }) => xFt)
    const ys = outline.map(({ yFt }) => yFt)
    for (let attempt = 0; attempt < 400; attempt++) {
      const xFt = this.chance.between(Math.min(...xs), Math.max(...xs))
      const place = { xFt, yFt: this.chance.between(Math.min(...ys), Math.max(...ys)) }
      if (this.isOn(facet, place)) return place
    }
    return middleOf(outline)
  }

  /** Feet keep a foot clear of the facet's edges. */
  private isOn(facet: number, place: PlanPoint): boolean {
    const outline = this.outline(facet)
    return containsPoint(outline, place) && sidesOf(outline).every((side) => offSideFt(place, side) > 1)
  }

  /** Some feet ahead on the same facet, mostly looking up the slope. */
  private inFront(facet: number, at: PlanPoint, [least, most]: readonly [number, number] = [2, 6]): PlanPoint {
    const roof = this.house.facets[facet]
    const uphill = ((roof?.downslopeAzimuthDeg ?? 0) - this.house.frame.upAzimuthDeg + 180) * (Math.PI / 180)
    for (let attempt = 0; attempt < 20; attempt++) {
      const turn = uphill + this.chance.normal(1.1)
      const ft = this.chance.between(least, most)
      const place = { xFt: at.xFt + Math.sin(turn) * ft, yFt: at.yFt + Math.cos(turn) * ft }
      if (containsPoint(this.outline(facet), place)) return place
    }
    return middleOf(this.outline(facet))
  }

  private outline(facet: number): readonly PlanPoint[] {
    return this.house.facets[facet]?.outline ?? []
  }
}

function middleOf(points: readonly PlanPoint[]): PlanPoint {
  const mean = (pick: (point: PlanPoint) => number) => points.reduce((sum, p) => sum + pick(p), 0) / points.length
  return { xFt: mean(({ xFt }) => xFt), yFt: mean(({ yFt }) => yFt) }
}

function offSideFt(at: PlanPoint, { from, to }: { from: PlanPoint; to: PlanPoint }): number {
  const long = lengthFt(from, to)
  const along = ((at.xFt - from.xFt) * (to.xFt - from.xFt) + (at.yFt - from.yFt) * (to.yFt - from.yFt)) / long ** 2
  const share = Math.max(0, Math.min(1, along))
  const foot = { xFt: from.xFt + (to.xFt - from.xFt) * share, yFt: from.yFt + (to.yFt - from.yFt) * share }
  return lengthFt(at, foot)
}

function gapFt(a: readonly PlanPoint[], b: readonly PlanPoint[]): number {
  const oneWay = (p: readonly PlanPoint[], q: readonly PlanPoint[]) =>
    Math.min(...p.flatMap((corner) => sidesOf(q).map((side) => offSideFt(corner, side))))
  return Math.min(oneWay(a, b), oneWay(b, a))
}
