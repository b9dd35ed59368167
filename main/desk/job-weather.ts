import type { JobSnapshot } from '../../app/contract/jobs.ts'
import { weatherChoicesSchema } from '../../app/weather/weather-records.ts'
import type { ReadDb } from '../store/database.ts'
import { weatherChoicesTable, weatherSourceTable, weatherStationTable } from '../store/records/tables.ts'

/** The weather of a job as it is stored. */
export function jobWeather(db: ReadDb, jobId: string): JobSnapshot['weather'] {
  return {
    stations: weatherStationTable.list(db, jobId),
    sources: weatherSourceTable.list(db, jobId),
    choices: weatherChoicesTable.get(db, { jobId, id: jobId }) ?? weatherChoicesSchema.parse({}),
  }
}
