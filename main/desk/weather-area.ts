import { refuse } from '../../app/contract/app-error.ts'
import type { ParsedInput } from '../../app/contract/contract.ts'
import type { JobId } from '../../app/job/ids.ts'
import { compareRows } from '../../app/weather/compare-rows.ts'
import { sourceOfFile, stationsAfter } from '../../app/weather/taken-file.ts'
import {
  weatherSourceIdSchema,
  weatherSourceSchema,
  weatherStationIdSchema,
  weatherStationSchema,
  type WeatherSource,
  type WeatherSourceId,
} from '../../app/weather/weather-records.ts'
import type { ReadDb } from '../store/database.ts'
import type { Write } from '../store/record-edits.ts'
import { weatherSourceTable, weatherStationTable } from '../store/records/tables.ts'
import type { DeskWorld } from './desk-world.ts'
import { editJob } from './edit-job.ts'
import type { Area } from './handlers.ts'
import { needJob } from './snapshot.ts'
import { fileReading, readKeptFile } from './weather-files.ts'

/** Stations, observations and what was chosen for looking at them. */
export function weatherArea(world: DeskWorld): Area<'weather'> {
  return {
    'weather.read-file': async ({ jobId, ...asked }) => {
      needJob(world.library.db, jobId)
      return fileReading((await readKeptFile(world, jobId, asked)).file)
    },
    'weather.take-file': (asked) => takeFile(world, asked),
    'weather.add-observation': (asked) => addObservation(world, asked),
    'weather.set-provenance': ({ jobId, id, provenance }) =>
      editJob(world, jobId, (db) => ({
        summary: `Say where ${nameOf(needSource(db, jobId, id))} comes from`,
        writes: [{ record: 'weather-source', id, after: { ...needSource(db, jobId, id), provenance } }],
        result: {},
      })),
    'weather.remove-source': ({ jobId, id }) =>
      editJob(world, jobId, (db) => {
        const source = needSource(db, jobId, id)
        const others = weatherSourceTable.list(db, jobId).filter((other) => other.id !== id)
        const reported = new Set(others.flatMap(({ observations }) => observations.map(({ station }) => station)))
        const mine = new Set(source.observations.map(({ station }) => station))
        const orphans = weatherStationTable
          .list(db, jobId)
          .filter(({ code }) => mine.has(code) && !reported.has(code))
          .map((station): Write => ({ record: 'weather-station', id: station.id, after: null }))
        return {
          summary: `Remove the observations of ${nameOf(source)}`,
          writes: [{ record: 'weather-source', id, after: null }, ...orphans],
          result: {},
        }
      }),
    'weather.save-station': (asked) => saveStation(world, asked),
    'weather.choose': ({ jobId, choices }) =>
      editJob(world, jobId, () => ({
        summary: 'Change what is shown of the weather',
        writes: [{ record: 'weather-choices', id: jobId, after: choices }],
        result: {},
      })),
  }
}

async function takeFile(
  world: DeskWorld,
  { jobId, attachmentId, choices, provenance, withoutBadRows }: ParsedInput<'weather.take-file'>,
): Promise<{ id: WeatherSourceId; observations: number }> {
  const { db } = world.library
  needJob(db, jobId)
  const { attachment, file } = await readKeptFile(world, jobId, { attachmentId, choices })
  const { fileName } = attachment.file
  const [lack] = file.lacks
  if (lack !== undefined) refuse('invalid', `${fileName}: ${lack}`)
  if (weatherSourceTable.list(db, jobId).some((source) => source.attachmentId === attachmentId)) {
    refuse('conflict', `The observations of ${fileName} are in the job already.`, {
      help: 'Remove them first to read the file in another way.',
    })
  }
  if (file.problems.length > 0 && !withoutBadRows) {
    refuse('invalid', `${file.problems.length} rows of ${fileName} can't be read.`, {
      help: 'Mend the choices, or say that the other rows are enough.',
    })
  }
  const source = sourceOfFile(file, { id: world.newId(), attachment, choices, provenance })
  return editJob(world, jobId, (now) => ({
    summary: `Take ${source.observations.length} observations from ${fileName}`,
    writes: [
      ...stationWrites(world, { db: now, jobId, notes: file.stations, source }),
      { record: 'weather-source', id: source.id, after: source },
    ],
    result: { id: source.id, observations: source.observations.length },
  }))
}

function stationWrites(
  world: DeskWorld,
  {
    db,
    jobId,
    notes,
    source,
  }: { db: ReadDb; jobId: JobId; notes: Parameters<typeof stationsAfter>[1]; source: WeatherSource },
): readonly Write[] {
  const reported = new Set(source.observations.map(({ station }) => station))
  const known = weatherStationTable.list(db, jobId)
  return stationsAfter(
    known,
    notes.filter(({ code }) => reported.has(code)),
    world.newId,
  ).map((after): Write => ({ record: 'weather-station', id: after.id, after }))
}

function addObservation(
  world: DeskWorld,
  { jobId, observation, averaging, provenance }: ParsedInput<'weather.add-observation'>,
): { id: WeatherSourceId } {
  const { meanKt, gustKt, peak, station } = observation
  if (meanKt === null && gustKt === null && peak === null) {
    refuse('invalid', 'An observation needs a mean wind or a gust.', { about: 'gustKt' })
  }
  const id = weatherSourceIdSchema.parse(world.newId())
  const { observations } = compareRows([{ ...observation, line: null, doubts: [] }])
  const source = weatherSourceSchema.parse({
    id,
    attachmentId: null,
    fileName: '',
    sha256: '',
    provenance,
    choices: null,
    averaging,
    observations,
  })
  return editJob(world, jobId, (db) => ({
    summary: `Add an observation of ${station} by hand`,
    writes: [
      ...stationWrites(world, {
        db,
        jobId,
        notes: [{ code: station, name: '', position: null, elevationFt: null }],
        source,
      }),
      { record: 'weather-source', id, after: source },
    ],
    result: { id },
  }))
}

function saveStation(
  world: DeskWorld,
  { jobId, id, station }: ParsedInput<'weather.save-station'>,
): { id: ReturnType<typeof weatherStationIdSchema.parse> } {
  return editJob(world, jobId, (db) => {
    const known = weatherStationTable.list(db, jobId)
    const before = known.find((one) => one.id === id)
    if (id !== null && before === undefined) refuse('not-found', 'This station is no longer in the job.')
    if (known.some((one) => one.id !== id && one.code === station.code)) {
      refuse('conflict', `There is a station ${station.code} already.`, { about: 'code' })
    }
    if (before !== undefined && before.code !== station.code) {
      refuse('invalid', 'The code of a station ties it to its reports and stays as it is.', { about: 'code' })
    }
    const after = weatherStationSchema.parse({ ...station, id: id ?? world.newId() })
    return {
      summary: `${before === undefined ? 'Add' : 'Change'} station ${after.code}`,
      writes: [{ record: 'weather-station', id: after.id, after }],
      result: { id: after.id },
    }
  })
}

function needSource(db: ReadDb, jobId: string, id: string): WeatherSource {
  return (
    weatherSourceTable.get(db, { jobId, id }) ?? refuse('not-found', 'These observations are no longer in the job.')
  )
}

function nameOf({ fileName }: WeatherSource): string {
  return fileName === '' ? 'an observation typed by hand' : fileName
}
