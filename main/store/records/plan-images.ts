import { z } from 'zod'
import type { PhotoFile } from '../../../app/evidence/photo.ts'
import { planImageSchema } from '../../../app/roof/plan-image.ts'
import { row, type ReadDb } from '../database.ts'
import { fromJson } from '../json-column.ts'
import { findAttachment } from './attachments.ts'
import { findPhoto } from './photos.ts'

/** Where the bytes of an image under the plan are kept. */
interface PlanImageOriginal {
  readonly jobId: string
  readonly folder: 'originals' | 'attachments'
  readonly storedName: string
  readonly file: PhotoFile
}

/** The original of an image under the plan, in whichever job it is; null when there is no such image. */
export function planImageOriginal(db: ReadDb, id: string): PlanImageOriginal | null {
  const found = row(db, 'select data from plan_images where id = :id', { id })
  if (found === null) return null
  const { file } = fromJson(planImageSchema, z.object({ data: z.string() }).parse(found).data, 'image under the plan')
  if (file.kind === 'photo') {
    const photo = findPhoto(db, file.id)
    return photo === null ? null : { ...photo, folder: 'originals' }
  }
  const kept = findAttachment(db, file.id)
  return kept === null ? null : { ...kept, file: kept.attachment.file, folder: 'attachments' }
}
