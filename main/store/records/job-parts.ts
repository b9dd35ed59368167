import { z } from 'zod'
import { refuse } from '../../../app/contract/app-error.ts'
import { planFrameSchema, type PlanFrame } from '../../../app/job/places.ts'
import { jobSheetSchema, type JobSheet } from '../../../app/job/sheet.ts'
import { row, run, type ReadDb } from '../database.ts'
import { fromJson } from '../json-column.ts'
import type { RecordTable } from './record-table.ts'

/** The job sheet, a column of its job. */
export const sheetTable: RecordTable<JobSheet> = {
  get: (db, { jobId }) => {
    const text = column(db, jobId, 'select sheet as text from jobs where id = :jobId')
    return text === null ? null : fromJson(jobSheetSchema, text, 'job sheet')
  },
  put: (db, { jobId }, sheet) => {
    if (sheet === null) refuse('invalid', 'A job always has a sheet.')
    run(db, 'update jobs set sheet = :sheet where id = :jobId', { jobId, sheet: JSON.stringify(sheet) })
  },
  parse: (value) => jobSheetSchema.parse(value),
}

/** How the plan lies on the earth, a column of its job. */
export const frameTable: RecordTable<PlanFrame> = {
  get: (db, { jobId }) => {
    const text = column(db, jobId, 'select frame as text from jobs where id = :jobId')
    return text === null ? null : fromJson(planFrameSchema, text, 'plan frame')
  },
  put: (db, { jobId }, frame) => {
    if (frame === null) refuse('invalid', 'A plan always has a frame.')
    run(db, 'update jobs set frame = :frame where id = :jobId', { jobId, frame: JSON.stringify(frame) })
  },
  parse: (value) => planFrameSchema.parse(value),
}

function column(db: ReadDb, jobId: string, sql: string): string | null {
  const found = row(db, sql, { jobId })
  return found === null ? null : z.object({ text: z.string() }).parse(found).text
}
