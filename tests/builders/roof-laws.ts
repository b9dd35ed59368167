import type { PlanPoint } from '../../app/job/places.ts'
import type { BuiltFacet, BuiltRoof, RoofVertex } from '../../app/roof/skeleton/built-roof.ts'
import type { EdgePlace, OutlineRing, RoofOutline } from '../../app/roof/skeleton/roof-outline.ts'

/**
 * What any roof over an outline must obey, found from the roof itself and the outline, without the wavefront. Each law
 * gives the places where it is broken, as text.
 */
export function brokenLaws(outline: RoofOutline, roof: BuiltRoof): readonly string[] {
  return [
    ...fillsOutline(outline, roof),
    ...roof.facets.flatMap((facet) => [
      ...holdsItsEaves(outline, facet),
      ...liesInItsPlane(outline, roof, facet),
      ...crossesItself(roof, facet),
      ...startsElsewhere(outline, roof, facet),
    ]),
    ...everyEaveOnce(outline, roof),
    ...edgesMeetFacets(roof),
  ]
}

const NEAR_FT = 2e-3

/** Twice the signed area of a closed line. */
function twiceArea(line: readonly PlanPoint[]): number {
  return line.reduce((sum, p, i) => {
    const q = line[(i + 1) % line.length] ?? p
    return sum + p.xFt * q.yFt - q.xFt * p.yFt
  }, 0)
}

export function outlineSqFt({ outer, courtyards }: RoofOutline): number {
  const area = (ring: OutlineRing) => Math.abs(twiceArea(ring.corners)) / 2
  return area(outer) - courtyards.reduce((sum, ring) => sum + area(ring), 0)
}

function loopsOf(roof: BuiltRoof, facet: BuiltFacet): RoofVertex[][] {
  const vertex = (position: number) => roof.vertices[position] ?? { xFt: NaN, yFt: NaN, heightFt: NaN }
  return [facet.corners, ...facet.holes].map((loop) => loop.map(vertex))
}

function fillsOutline(outline: RoofOutline, roof: BuiltRoof): string[] {
  const whole = outlineSqFt(outline)
  const sum = roof.facets.reduce(
    (total, facet) => total + loopsOf(roof, facet).reduce((area, loop) => area + twiceArea(loop) / 2, 0),
    0,
  )
  return Math.abs(sum - whole) <= 1e-6 * whole ? [] : [`facets sum to ${sum}, the outline is ${whole}`]
}

/** The ends of an outline's edge and its inward unit normal. */
function edgeAt(outline: RoofOutline, { ring, edge }: EdgePlace) {
  const { corners } = [outline.outer, ...outline.courtyards][ring] ?? outline.outer
  const from = corners[edge - 1] ?? { xFt: NaN, yFt: NaN }
  const to = corners[edge % corners.length] ?? { xFt: NaN, yFt: NaN }
  const inOnLeft = twiceArea(corners) > 0 === (ring === 0) ? 1 : -1
  const lengthFt = Math.hypot(to.xFt - from.xFt, to.yFt - from.yFt)
  const inward = { x: (-(to.yFt - from.yFt) * inOnLeft) / lengthFt, y: ((to.xFt - from.xFt) * inOnLeft) / lengthFt }
  return inOnLeft === 1 ? { from, to, inward } : { from: to, to: from, inward }
}

const same = (a: PlanPoint, b: PlanPoint) => Math.hypot(a.xFt - b.xFt, a.yFt - b.yFt) < NEAR_FT

function holdsItsEaves(outline: RoofOutline, facet: BuiltFacet): string[] {
  return facet.eaves.flatMap((eave) => {
    const { from, to } = edgeAt(outline, eave)
    const sides = facet.outline.map((corner, i) => [corner, facet.outline[(i + 1) % facet.outline.length] ?? corner])
    const holds = sides.some(([a, b]) => a !== undefined && b !== undefined && same(a, from) && same(b, to))
    return holds ? [] : [`the facet of edge ${eave.ring}.${eave.edge} does not run along it`]
  })
}

/** Height over a point as the handbooks have it: run from the eave times rise over run. */
function heightAt(outline: RoofOutline, facet: BuiltFacet, point: PlanPoint): number {
  const [eave] = facet.eaves
  if (eave === undefined) return NaN
  const { from, inward } = edgeAt(outline, eave)
  const runFt = (point.xFt - from.xFt) * inward.x + (point.yFt - from.yFt) * inward.y
  return (runFt * facet.pitchRise) / 12 + (outline.eaveHeightFt ?? 0)
}

function liesInItsPlane(outline: RoofOutline, roof: BuiltRoof, facet: BuiltFacet): string[] {
  return loopsOf(roof, facet)
    .flat()
    .filter((corner) => !(Math.abs(heightAt(outline, facet, corner) - corner.heightFt) < NEAR_FT))
    .map(({ xFt, yFt }) => `a corner at ${xFt}, ${yFt} is off its facet's plane`)
}

function crossesItself(roof: BuiltRoof, facet: BuiltFacet): string[] {
  const sides = loopsOf(roof, facet).flatMap((loop) =>
    loop.map((from, i) => ({ from, to: loop[(i + 1) % loop.length] ?? from })),
  )
  const off = (p: PlanPoint, q: PlanPoint, r: PlanPoint) => {
    const cross = (q.xFt - p.xFt) * (r.yFt - p.yFt) - (q.yFt - p.yFt) * (r.xFt - p.xFt)
    const distance = cross / Math.hypot(q.xFt - p.xFt, q.yFt - p.yFt)
    return Math.abs(distance) < 1e-5 ? 0 : Math.sign(distance)
  }
  return sides.flatMap((a, i) =>
    sides
      .slice(i + 1)
      .filter(
        (b) =>
          off(a.from, a.to, b.from) * off(a.from, a.to, b.to) < 0 &&
          off(b.from, b.to, a.from) * off(b.from, b.to, a.to) < 0,
      )
      .map(() => `the facet of edge ${facet.eaves[0]?.edge} crosses itself`),
  )
}

/**
 * The law that makes a roof the straight skeleton's among all roofs with these planes: a slope has no lowest place but its
 * own eave (Aichholzer, Aurenhammer, Alberts and Gaertner 1995). A level pitch break is the one other place to start from.
 */
function startsElsewhere(outline: RoofOutline, roof: BuiltRoof, facet: BuiltFacet): string[] {
  const eaves = facet.eaves.map((eave) => edgeAt(outline, eave))
  const isOnEave = (point: PlanPoint) => eaves.some(({ from, to }) => same(from, point) || same(to, point))
  const breaks = roof.edges
    .filter(({ kind }) => kind === 'pitch-break')
    .flatMap(({ from, to }) => [roof.vertices[from], roof.vertices[to]])
  return loopsOf(roof, facet).flatMap((loop) =>
    loop.flatMap((corner, i) => {
      const [before, after] = [loop.at(i - 1) ?? corner, loop[(i + 1) % loop.length] ?? corner]
      const turn =
        (corner.xFt - before.xFt) * (after.yFt - corner.yFt) - (corner.yFt - before.yFt) * (after.xFt - corner.xFt)
      const isLowest =
        before.heightFt > corner.heightFt + 1e-6 && after.heightFt > corner.heightFt + 1e-6 && turn > 1e-6
      return !isLowest || isOnEave(corner) || breaks.includes(corner)
        ? []
        : [`the facet of edge ${facet.eaves[0]?.edge} has a lowest place at ${corner.xFt}, ${corner.yFt}`]
    }),
  )
}

function everyEaveOnce(outline: RoofOutline, roof: BuiltRoof): string[] {
  const name = ({ ring, edge }: EdgePlace) => `${ring}.${edge}`
  const wanted = [outline.outer, ...outline.courtyards].flatMap(({ edges }, ring) =>
    edges.flatMap(({ kind }, index) => (kind === 'eave' ? [name({ ring, edge: index + 1 })] : [])),
  )
  const found = roof.facets.flatMap((facet) => facet.eaves.map(name))
  return found.toSorted().join() === wanted.toSorted().join()
    ? []
    : [`eaves ${found.join()} instead of ${wanted.join()}`]
}

/** Every line between slopes is a side of both its facets, and every side of a facet is a line of the roof. */
function edgesMeetFacets(roof: BuiltRoof): string[] {
  const sideNames = roof.facets.map((facet) =>
    [facet.corners, ...facet.holes].flatMap((loop) =>
      loop.map((from, i) => sideName(from, loop[(i + 1) % loop.length] ?? from)),
    ),
  )
  const missing = roof.edges.flatMap(({ kind, from, to, facets }) =>
    facets.every((facet) => sideNames[facet]?.includes(sideName(from, to)))
      ? []
      : [`a ${kind} from ${from} to ${to} is no side of its facets`],
  )
  const sides = sideNames.reduce((sum, names) => sum + names.length, 0)
  const ends = roof.edges.reduce((sum, { facets }) => sum + facets.length, 0)
  return sides === ends ? missing : [...missing, `${sides} sides of facets, ${ends} ends of edges`]
}

function sideName(from: number, to: number): string {
  return from < to ? `${from}-${to}` : `${to}-${from}`
}
