import type { PlanPoint } from '../../job/places.ts'
import type { EdgePlace } from './roof-outline.ts'

/** A corner as people count it; ring 0 is the outside, courtyards and corners count from 1. */
export interface CornerPlace {
  readonly ring: number
  readonly corner: number
}

/** A part of the roof with gables alone around it. */
export interface NoSlopeFault {
  readonly kind: 'no-slope'
  readonly edges: readonly EdgePlace[]
  readonly at: PlanPoint
}

/** A roof that was found but did not stand up to its checks. */
export interface UnsolvedFault {
  readonly kind: 'unsolved'
  readonly check: string
  readonly at: PlanPoint
}

/** Why an outline has no roof, and where. `other` is the number of another outline, from 1. */
export type RoofFault =
  | { readonly kind: 'too-few-corners'; readonly ring: number }
  | { readonly kind: 'too-small'; readonly ring: number }
  | { readonly kind: 'edge-count'; readonly ring: number; readonly corners: number; readonly edges: number }
  | { readonly kind: 'not-a-number'; readonly corner: CornerPlace }
  | { readonly kind: 'short-edge'; readonly edge: EdgePlace; readonly at: PlanPoint }
  | { readonly kind: 'edges-touch'; readonly edge: EdgePlace; readonly other: EdgePlace; readonly at: PlanPoint }
  | { readonly kind: 'courtyard-outside'; readonly ring: number; readonly at: PlanPoint }
  | { readonly kind: 'bad-pitch'; readonly edge: EdgePlace; readonly pitchRise: number; readonly at: PlanPoint }
  | { readonly kind: 'no-eave' }
  | NoSlopeFault
  | UnsolvedFault
  | { readonly kind: 'roofs-overlap'; readonly other: number; readonly at: PlanPoint }

/** A fault as a sentence that says where and what to do. */
export function roofFaultSentence(fault: RoofFault): string {
  switch (fault.kind) {
    case 'too-few-corners':
      return `${ringName(fault.ring)} needs at least three corners. Add corners before closing it.`
    case 'too-small':
      return `${ringName(fault.ring)} covers less than half a square foot. Draw it in feet, or remove it.`
    case 'edge-count':
      return `${ringName(fault.ring)} has ${fault.corners} corners but ${fault.edges} edges. Say of every edge whether it is an eave or a gable.`
    case 'not-a-number':
      return `Corner ${fault.corner.corner} of ${inRing(fault.corner.ring)} has no place. Enter its position in feet.`
    case 'short-edge':
      return `${edgeName(fault.edge)} is shorter than an eighth of an inch: it starts at corner ${fault.edge.edge}, ${placeName(fault.at)}, and the next corner is at the same place. Remove one of the two.`
    case 'edges-touch':
      return `${edgeName(fault.edge)} meets ${edgeName(fault.other, true)} at ${placeName(fault.at)}. Move one of their corners.`
    case 'courtyard-outside':
      return `${ringName(fault.ring)} does not lie in the roof, at ${placeName(fault.at)}. Move it inside the outline and clear of other courtyards.`
    case 'bad-pitch':
      return `${edgeName(fault.edge)} has a pitch of ${fault.pitchRise}:12. Enter a pitch above 0 and up to 36, or make the edge a gable.`
    case 'no-eave':
      return 'Every edge is a gable, so no slope rises from any. Make at least one edge an eave.'
    case 'no-slope':
      return `No slope reaches the part of the roof at ${placeName(fault.at)}, which has only gables around it. Make one of them an eave: ${fault.edges.map((edge) => edgeName(edge, true)).join(', ')}.`
    case 'unsolved':
      return `No sound roof was found over this outline: ${fault.check}, at ${placeName(fault.at)}. Move a corner near there by an inch, or draw the facets by hand.`
    case 'roofs-overlap':
      return overlapSentence(`This outline and outline ${fault.other}`, fault.at)
  }
}

/** What is wrong where two outlines, named as a sentence begins, cover the same place. */
export function overlapSentence(both: string, at: PlanPoint): string {
  return `${both} cover the same place, at ${placeName(at)}. Draw the lower roof only up to the wall of the higher one.`
}

function ringName(ring: number): string {
  return ring === 0 ? 'The outline' : `Courtyard ${ring}`
}

function inRing(ring: number): string {
  return ring === 0 ? 'the outline' : `courtyard ${ring}`
}

function edgeName({ ring, edge }: EdgePlace, inSentence = false): string {
  const name = `${inSentence ? 'edge' : 'Edge'} ${edge}`
  return ring === 0 ? name : `${name} of courtyard ${ring}`
}

function placeName({ xFt, yFt }: PlanPoint): string {
  return `${xFt.toFixed(1)} ft across, ${yFt.toFixed(1)} ft up`
}
