import { z } from 'zod'
import { refuse } from '../../../app/contract/app-error.ts'
import { row, rows, run, type ReadDb, type WriteDb } from '../database.ts'
import { fromJson } from '../json-column.ts'
import type { RecordAddress, RecordTable } from './record-table.ts'

const dataRowSchema = z.object({ data: z.string() })

/**
 * A record kept whole as JSON in the column `data`, beside one column that must be unique in its job.
 *
 * @param table `name`, the unique `column` and how to take its value from a record
 */
export function dataTable<Schema extends z.ZodType>(
  schema: Schema,
  table: {
    name:
      | 'diary_clocks'
      | 'diary_entries'
      | 'draft_decisions'
      | 'facets'
      | 'findings'
      | 'narrations'
      | 'outlines'
      | 'plan_images'
      | 'readings'
      | 'weather_stations'
      | 'weather_sources'
      | 'weather_choices'
    column: 'draft_key' | 'file_id' | 'letter' | 'name' | 'number'
    key: (value: z.output<Schema>) => string | number
  },
): RecordTable<z.output<Schema>> & { readonly list: (db: ReadDb, jobId: string) => z.output<Schema>[] } {
  const { name, column, key } = table
  const remove = (db: WriteDb, { jobId, id }: RecordAddress): void => {
    run(db, `delete from ${name} where id = :id and job_id = :jobId`, { id, jobId })
  }
  return {
    get: (db, { jobId, id }) => {
      const found = row(db, `select data from ${name} where id = :id and job_id = :jobId`, { id, jobId })
      return found === null ? null : fromJson(schema, dataRowSchema.parse(found).data, `record in ${name}`)
    },
    release: remove,
    put: (db, at, value) => {
      if (value === null) return remove(db, at)
      const written = run(
        db,
        `insert into ${name} (id, job_id, ${column}, data) values (:id, :jobId, :key, :data)
         on conflict (id) do update set ${column} = :key, data = :data where job_id = :jobId`,
        { ...at, key: key(value), data: JSON.stringify(value) },
      )
      if (written === 0) refuse('conflict', 'Another job has a record of this identity.')
    },
    parse: (value) => schema.parse(value),
    list: (db, jobId) =>
      rows(db, `select data from ${name} where job_id = :jobId order by ${column}`, { jobId }).map((found) =>
        fromJson(schema, dataRowSchema.parse(found).data, `record in ${name}`),
      ),
  }
}
