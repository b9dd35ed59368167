import type { JobSheet } from '../job/sheet.ts'
import type { PieceSize } from '../roof/quantities.ts'

/** Size of a tile as the job sheet states it; null while exposure or cover width is missing. */
export function pieceSizeOf({ exposureIn, coverWidthIn }: JobSheet['covering']): PieceSize | null {
  return exposureIn === null || coverWidthIn === null ? null : { exposureIn, coverWidthIn }
}
