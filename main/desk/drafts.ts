import { join } from 'node:path'
import type { DeskWorld } from './desk-world.ts'

/** Drafts of packets stand among the incoming files, which a start of the program empties. */
export function draftPath(world: DeskWorld, draftId: string): string {
  return join(world.library.layout.incoming, `draft-${draftId}.pdf`)
}
