import { type EdgeId, edgeIdSchema, type OutlineId, outlineIdSchema } from '../../../app/job/ids.ts'

/** An identity for an edge drawn just now. */
export function newEdgeId(): EdgeId {
  return edgeIdSchema.parse(crypto.randomUUID())
}

/** An identity for an outline that is not saved yet; the desk gives it its own. */
export function draftOutlineId(): OutlineId {
  return outlineIdSchema.parse('draft')
}
