import type { PlanPoint } from '../../../app/job/places.ts'
import type { HouseOutline } from '../../../app/roof/house-outline.ts'
import { commonPitch, eavesRing } from './outline-draft.ts'
import { draftOutlineId, newEdgeId } from './new-edge-id.ts'

/** Pitch that a roof is shown with until somebody states it: one pitch all round gives the same lines as any other. */
const SHOWN_PITCH = 5

const NAMES = ['Main roof', 'Garage', 'Porch'] as const

/** A name for the next outline that is not in use. */
export function proposedName(outlines: readonly HouseOutline[]): string {
  const used = new Set(outlines.map(({ name }) => name))
  const free = NAMES.find((name) => !used.has(name))
  if (free !== undefined) return free
  let number = outlines.length + 1
  while (used.has(`Roof ${number}`)) number += 1
  return `Roof ${number}`
}

/** The pitch of the roofs drawn before; null when there is none to go by. */
export function proposedPitch(outlines: readonly HouseOutline[]): number | null {
  const last = outlines.at(-1)
  return last === undefined ? null : commonPitch(last)
}

/** An outline that is not saved yet: one pitch on every edge. */
export function newOutline(
  corners: readonly PlanPoint[],
  given: { readonly name: string; readonly pitchRise: number | null; readonly eaveHeightFt: number },
): HouseOutline {
  return {
    id: draftOutlineId(),
    name: given.name,
    outer: eavesRing(corners, given.pitchRise ?? SHOWN_PITCH, newEdgeId),
    courtyards: [],
    eaveHeightFt: given.eaveHeightFt,
  }
}
