import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { refuse } from '../../app/contract/app-error.ts'
import type { DescribedJob } from '../../app/job/described-job.ts'
import { readStationFile, type UnderstoodFile } from '../../app/weather/read-station-file.ts'
import { sourceOfFile, stationsAfter } from '../../app/weather/taken-file.ts'
import { weatherStationSchema } from '../../app/weather/weather-records.ts'
import { withFileWords } from '../library/file-failure.ts'
import type { Waiting } from '../library/intake/find-files.ts'
import { stationFileOf } from '../library/reading/station-file.ts'
import type { ReadDb } from '../store/database.ts'
import type { Write } from '../store/record-edits.ts'
import { listAttachments } from '../store/records/attachments.ts'

/** A station file of a described job, read by the choices that stand with it. */
export interface DescribedStationFile {
  readonly waiting: Waiting
  readonly understood: UnderstoodFile
}

/**
 * Reads the station files that a described job names in its folder `weather/`.
 *
 * @throws AppFailure `invalid` naming the field when one can't be read whole, or `missing-folder` when it is not there
 */
export async function readDescribedWeather(
  folder: string,
  { weather }: DescribedJob,
): Promise<readonly DescribedStationFile[]> {
  const read: DescribedStationFile[] = []
  for (const [index, { file, choices }] of weather.files.entries()) {
    const path = join(folder, 'weather', file)
    const bytes = await withFileWords(path, () => readFile(path))
    const understood = readStationFile(stationFileOf(bytes), choices)
    const [problem] = understood.problems
    const fault = understood.lacks[0] ?? (problem === undefined ? null : `line ${problem.line}: ${problem.sentence}`)
    const field = `weather.files.${index}`
    if (fault !== null) refuse('invalid', `job.json, ${field}.file: ${file}: ${fault}`, { about: field })
    read.push({ waiting: { path, fileName: file }, understood })
  }
  return read
}

/** The records of a described job's weather, when its files have been taken in. */
export function describedWeatherWrites(
  db: ReadDb,
  jobId: string,
  given: { described: DescribedJob; files: readonly DescribedStationFile[]; newId: () => string },
): readonly Write[] {
  const { described, files, newId } = given
  const { weather } = described
  const kept = new Map(listAttachments(db, jobId).map(({ attachment }) => [attachment.file.fileName, attachment]))
  const sources = weather.files.flatMap(({ file, choices, provenance }): Write[] => {
    const attachment = kept.get(file)
    const read = files.find(({ waiting }) => waiting.fileName === file)
    if (attachment === undefined || read === undefined) return []
    const after = sourceOfFile(read.understood, { id: newId(), attachment, choices, provenance })
    return [{ record: 'weather-source', id: after.id, after }]
  })
  const named = weather.stations.map((station) => weatherStationSchema.parse({ ...station, id: newId() }))
  const notes = files.flatMap(({ understood }) => understood.stations)
  const filled = stationsAfter(named, notes, newId)
  const stations = new Map([...named, ...filled].map((station) => [station.code, station]))
  return [
    ...[...stations.values()].map((after): Write => ({ record: 'weather-station', id: after.id, after })),
    ...sources,
    ...(sources.length === 0 && named.length === 0
      ? []
      : [{ record: 'weather-choices', id: jobId, after: weather.choices } as const]),
  ]
}
