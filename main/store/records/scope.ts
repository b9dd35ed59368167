import { z } from 'zod'
import { priceBookSchema } from '../../../app/scope/price-book.ts'
import { emptyScope, scopeSchema, type JobScope } from '../../../app/scope/scope-record.ts'
import { row, run, type ReadDb } from '../database.ts'
import { fromJson } from '../json-column.ts'
import type { RecordTable } from './record-table.ts'

/** What is chosen for a job's scope; its identity is the job's. */
export const scopeTable = oneOfAJob(scopeSchema, 'scopes')

/** A job's price book; its identity is the job's. */
export const priceBookTable = oneOfAJob(priceBookSchema, 'price_books')

/** The scope of a job with its prices; an empty one where nothing is chosen yet. */
export function scopeOf(db: ReadDb, jobId: string): JobScope {
  const at = { jobId, id: jobId }
  return { choices: scopeTable.get(db, at) ?? emptyScope(), book: priceBookTable.get(db, at) }
}

function oneOfAJob<Schema extends z.ZodType>(
  schema: Schema,
  table: 'scopes' | 'price_books',
): RecordTable<z.output<Schema>> {
  return {
    get: (db, { jobId }) => {
      const found = row(db, `select data from ${table} where job_id = :jobId`, { jobId })
      return found === null
        ? null
        : fromJson(schema, z.object({ data: z.string() }).parse(found).data, `record in ${table}`)
    },
    put: (db, { jobId }, value) => {
      if (value === null) {
        run(db, `delete from ${table} where job_id = :jobId`, { jobId })
        return
      }
      run(
        db,
        `insert into ${table} (job_id, data) values (:jobId, :data) on conflict (job_id) do update set data = :data`,
        { jobId, data: JSON.stringify(value) },
      )
    },
    parse: (value) => schema.parse(value),
  }
}
