import type { PlanPoint } from '../../job/places.ts'
import { pitchRiseSchema } from '../facet.ts'
import { containsPoint, lengthFt, sidesOf, signedAreaSqFt } from '../polygon.ts'
import type { RoofFault } from './roof-faults.ts'
import { ringsOf, type OutlineRing, type RoofOutline } from './roof-outline.ts'
import { LEAST_AREA_SQFT, LEAST_EDGE_FT, LEAST_GAP_FT } from './tolerances.ts'
import { touchesBetween } from './touches.ts'

/** Everything wrong with an outline as it is drawn; an empty list means that a roof can be sought over it. */
export function checkRoofOutline(outline: RoofOutline): readonly RoofFault[] {
  const rings = ringsOf(outline)
  const badRings = rings.flatMap(ringFaults)
  if (badRings.length > 0) return badRings
  const lines = rings.map((ring) => ring.corners)
  const faults: RoofFault[] = touchesBetween(lines, LEAST_GAP_FT).map(({ a, b, at }) => ({
    kind: 'edges-touch',
    edge: { ring: a.ring, edge: a.side + 1 },
    other: { ring: b.ring, edge: b.side + 1 },
    at,
  }))
  if (faults.length === 0) faults.push(...courtyardFaults(lines), ...lines.flatMap(sizeFaults))
  faults.push(...rings.flatMap(pitchFaults))
  if (!rings.some((ring) => ring.edges.some((edge) => edge.kind === 'eave'))) faults.push({ kind: 'no-eave' })
  return faults
}

function ringFaults({ corners, edges }: OutlineRing, ring: number): readonly RoofFault[] {
  if (corners.length < 3) return [{ kind: 'too-few-corners', ring }]
  if (corners.length !== edges.length)
    return [{ kind: 'edge-count', ring, corners: corners.length, edges: edges.length }]
  const placeless = corners.findIndex(({ xFt, yFt }) => !Number.isFinite(xFt) || !Number.isFinite(yFt))
  if (placeless >= 0) return [{ kind: 'not-a-number', corner: { ring, corner: placeless + 1 } }]
  return sidesOf(corners).flatMap(({ from, to, index }): readonly RoofFault[] =>
    lengthFt(from, to) < LEAST_EDGE_FT ? [{ kind: 'short-edge', edge: { ring, edge: index + 1 }, at: from }] : [],
  )
}

/** Rings that do not touch are apart or one inside the other, so that any corner tells. */
function courtyardFaults([outer = [], ...courtyards]: readonly (readonly PlanPoint[])[]): readonly RoofFault[] {
  return courtyards.flatMap((courtyard, index): readonly RoofFault[] => {
    const [at] = courtyard
    if (at === undefined) return []
    const isInAnother = courtyards.some((other) => other !== courtyard && containsPoint(other, at))
    return isInAnother || !containsPoint(outer, at) ? [{ kind: 'courtyard-outside', ring: index + 1, at }] : []
  })
}

function sizeFaults(line: readonly PlanPoint[], ring: number): readonly RoofFault[] {
  return Math.abs(signedAreaSqFt(line)) < LEAST_AREA_SQFT ? [{ kind: 'too-small', ring }] : []
}

function pitchFaults({ corners, edges }: OutlineRing, ring: number): readonly RoofFault[] {
  return edges.flatMap((edge, index): readonly RoofFault[] => {
    const at = corners[index]
    if (at === undefined || edge.kind === 'gable') return []
    const { pitchRise } = edge
    const isSlope = pitchRise > 0 && pitchRiseSchema.safeParse(pitchRise).success
    return isSlope ? [] : [{ kind: 'bad-pitch', edge: { ring, edge: index + 1 }, pitchRise, at }]
  })
}
