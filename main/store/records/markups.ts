import { z } from 'zod'
import { refuse } from '../../../app/contract/app-error.ts'
import { markupSchema, type Markup } from '../../../app/evidence/markup.ts'
import { row, rows, run, type ReadDb } from '../database.ts'
import { fromJson } from '../json-column.ts'
import type { RecordTable } from './record-table.ts'

const dataRowSchema = z.object({ data: z.string() })

/** The marks over a photo, under the photo's identity. */
export const markupTable: RecordTable<Markup> & { readonly list: (db: ReadDb, jobId: string) => Markup[] } = {
  get: (db, { jobId, id }) => {
    const found = row(db, 'select data from markups where photo_id = :id and job_id = :jobId', { id, jobId })
    return found === null ? null : toMarkup(found)
  },
  put: (db, { jobId, id }, markup) => {
    if (markup === null) {
      run(db, 'delete from markups where photo_id = :id and job_id = :jobId', { id, jobId })
      return
    }
    if (markup.photoId !== id) refuse('invalid', 'These marks are for another photo.')
    const written = run(
      db,
      `insert into markups (photo_id, job_id, data)
       select id, job_id, :data from photos where id = :id and job_id = :jobId
       on conflict (photo_id) do update set data = :data`,
      { id, jobId, data: JSON.stringify(markup) },
    )
    if (written === 0) refuse('not-found', 'This photo is not in the job.')
  },
  parse: (value) => markupSchema.parse(value),
  list: (db, jobId) => rows(db, 'select data from markups where job_id = :jobId', { jobId }).map(toMarkup),
}

function toMarkup(found: unknown): Markup {
  return fromJson(markupSchema, dataRowSchema.parse(found).data, 'marks of a photo')
}
