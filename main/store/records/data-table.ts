import { z } from 'zod'
import { row, rows, run, type ReadDb } from '../database.ts'
import { fromJson } from '../json-column.ts'
import type { RecordTable } from './record-table.ts'

const dataRowSchema = z.object({ data: z.string() })

/**
 * A record kept whole as JSON in the column `data`, beside one column that must be unique in its job.
 *
 * @param table `name`, the unique `column` and how to take its value from a record
 */
export function dataTable<Schema extends z.ZodType>(
  schema: Schema,
  table: {
    name: 'facets' | 'findings' | 'readings'
    column: 'letter' | 'number'
    key: (value: z.output<Schema>) => string | number
  },
): RecordTable<z.output<Schema>> & { readonly list: (db: ReadDb, jobId: string) => z.output<Schema>[] } {
  const { name, column, key } = table
  return {
    get: (db, { jobId, id }) => {
      const found = row(db, `select data from ${name} where id = :id and job_id = :jobId`, { id, jobId })
      return found === null ? null : fromJson(schema, dataRowSchema.parse(found).data, `record in ${name}`)
    },
    put: (db, { jobId, id }, value) => {
      if (value === null) {
        run(db, `delete from ${name} where id = :id and job_id = :jobId`, { id, jobId })
        return
      }
      run(
        db,
        `insert into ${name} (id, job_id, ${column}, data) values (:id, :jobId, :key, :data)
         on conflict (id) do update set ${column} = :key, data = :data`,
        { id, jobId, key: key(value), data: JSON.stringify(value) },
      )
    },
    parse: (value) => schema.parse(value),
    list: (db, jobId) =>
      rows(db, `select data from ${name} where job_id = :jobId order by ${column}`, { jobId }).map((found) =>
        fromJson(schema, dataRowSchema.parse(found).data, `record in ${name}`),
      ),
  }
}
