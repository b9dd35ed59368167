import { z } from 'zod'
import { pictureLookSchema, type PictureLook } from '../../../app/evidence/near-doubles/picture-look.ts'
import { rows, run, type ReadDb, type WriteDb } from '../database.ts'
import { fromJson } from '../json-column.ts'

const lookRowSchema = z.object({ id: z.string(), look: z.string() })

/** What is known of how the photos of a job look, by identity. It is worked out from pixels and no part of the record. */
export function listLooks(db: ReadDb, jobId: string): ReadonlyMap<string, PictureLook> {
  const found = rows(db, 'select id, look from photos where job_id = :jobId and look is not null', { jobId })
  return new Map(
    found.map((one) => {
      const { id, look } = lookRowSchema.parse(one)
      return [id, fromJson(pictureLookSchema, look, 'look of a photo')]
    }),
  )
}

/** Keeps how a photo looks. */
export function putLook(db: WriteDb, id: string, look: PictureLook): void {
  run(db, 'update photos set look = :look where id = :id', { id, look: JSON.stringify(look) })
}
