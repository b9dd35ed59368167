import type { Attachment } from '../evidence/attachment.ts'
import type { StationNote } from './observation.ts'
import type { UnderstoodFile } from './read-station-file.ts'
import type { ReadingChoices } from './reading-choices.ts'
import {
  weatherSourceSchema,
  weatherStationSchema,
  type WeatherSource,
  type WeatherStation,
} from './weather-records.ts'

/** A read file as a source of observations, tied to the kept file by its hash. */
export function sourceOfFile(
  file: UnderstoodFile,
  given: { id: string; attachment: Attachment; choices: ReadingChoices; provenance: string },
): WeatherSource {
  const { id, attachment, choices, provenance } = given
  return weatherSourceSchema.parse({
    id,
    attachmentId: attachment.id,
    fileName: attachment.file.fileName,
    sha256: attachment.file.sha256,
    provenance,
    choices,
    averaging: choices.averaging,
    observations: file.observations,
    dailyPeaks: file.dailyPeaks,
    leftOut: file.problems.length,
    merged: file.merged,
  })
}

/** Stations that a file adds to those known, and those of which it tells something that was not known. */
export function stationsAfter(
  known: readonly WeatherStation[],
  notes: readonly StationNote[],
  newId: () => string,
): readonly WeatherStation[] {
  return notes.flatMap((note) => {
    const old = known.find(({ code }) => code === note.code)
    if (old === undefined) return [weatherStationSchema.parse({ ...note, id: newId() })]
    const filled = {
      ...old,
      name: old.name === '' ? note.name : old.name,
      position: old.position ?? note.position,
      elevationFt: old.elevationFt ?? note.elevationFt,
    }
    return [filled]
  })
}
