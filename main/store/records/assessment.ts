import { z } from 'zod'
import { assessmentSchema, emptyAssessment, type Assessment } from '../../../app/assessment/assessment.ts'
import { row, run, type ReadDb } from '../database.ts'
import { fromJson } from '../json-column.ts'
import type { RecordTable } from './record-table.ts'

/** What is stated for a job's assessment; its identity is the job's. */
export const assessmentTable: RecordTable<Assessment> = {
  get: (db, { jobId }) => {
    const found = row(db, 'select data from assessments where job_id = :jobId', { jobId })
    return found === null
      ? null
      : fromJson(assessmentSchema, z.object({ data: z.string() }).parse(found).data, 'assessment')
  },
  put: (db, { jobId }, value) => {
    if (value === null) {
      run(db, 'delete from assessments where job_id = :jobId', { jobId })
      return
    }
    run(
      db,
      `insert into assessments (job_id, data) values (:jobId, :data)
       on conflict (job_id) do update set data = :data`,
      { jobId, data: JSON.stringify(value) },
    )
  },
  parse: (value) => assessmentSchema.parse(value),
}

/** The assessment of a job; an empty one where nothing is stated yet. */
export function assessmentOf(db: ReadDb, jobId: string): Assessment {
  return assessmentTable.get(db, { jobId, id: jobId }) ?? emptyAssessment()
}
