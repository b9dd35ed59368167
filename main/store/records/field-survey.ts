import { z } from 'zod'
import { emptySurvey, fieldSurveySchema, type FieldSurvey } from '../../../app/fieldtest/survey.ts'
import { row, run, type ReadDb } from '../database.ts'
import { fromJson } from '../json-column.ts'
import type { RecordTable } from './record-table.ts'

/** A job's field survey; its identity is the job's. */
export const fieldSurveyTable: RecordTable<FieldSurvey> = {
  get: (db, { jobId }) => {
    const found = row(db, 'select data from field_surveys where job_id = :jobId', { jobId })
    return found === null
      ? null
      : fromJson(fieldSurveySchema, z.object({ data: z.string() }).parse(found).data, 'field survey')
  },
  put: (db, { jobId }, value) => {
    if (value === null) {
      run(db, 'delete from field_surveys where job_id = :jobId', { jobId })
      return
    }
    run(
      db,
      `insert into field_surveys (job_id, data) values (:jobId, :data)
       on conflict (job_id) do update set data = :data`,
      { jobId, data: JSON.stringify(value) },
    )
  },
  parse: (value) => fieldSurveySchema.parse(value),
}

/** The field survey of a job; an empty one where nothing is recorded yet. */
export function fieldSurveyOf(db: ReadDb, jobId: string): FieldSurvey {
  return fieldSurveyTable.get(db, { jobId, id: jobId }) ?? emptySurvey()
}
