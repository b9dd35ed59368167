import { diaryEntrySchema } from '../../../app/diary/entry.ts'
import { jobClocksSchema, NO_CLOCKS, type JobClocks } from '../../../app/diary/job-clocks.ts'
import type { ReadDb } from '../database.ts'
import { dataTable } from './data-table.ts'

export const diaryEntryTable = dataTable(diaryEntrySchema, {
  name: 'diary_entries',
  column: 'number',
  key: (entry) => entry.number,
})

/** One record in a job, under the job's own identity. */
export const jobClocksTable = dataTable(jobClocksSchema, {
  name: 'diary_clocks',
  column: 'name',
  key: () => 'clocks',
})

/** What was asked for of statutory clocks in a job; nothing where nobody did. */
export function jobClocksOf(db: ReadDb, jobId: string): JobClocks {
  return jobClocksTable.get(db, { jobId, id: jobId }) ?? NO_CLOCKS
}
