import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { refuse } from '../../app/contract/app-error.ts'
import type { FileReading } from '../../app/contract/weather.ts'
import type { Attachment } from '../../app/evidence/attachment.ts'
import type { Observation } from '../../app/weather/observation.ts'
import type { ReadingChoices } from '../../app/weather/reading-choices.ts'
import { readStationFile, type UnderstoodFile } from '../../app/weather/read-station-file.ts'
import { withFileWords } from '../library/file-failure.ts'
import { stationFileOf } from '../library/reading/station-file.ts'
import { findAttachment } from '../store/records/attachments.ts'
import type { DeskWorld } from './desk-world.ts'
import { needJobLayout } from './snapshot.ts'

/** Larger files are no station files, and reading one would hold up everything else. */
const MOST_BYTES = 40_000_000
const SHOWN_ROWS = 12
const SHOWN_PROBLEMS = 200

/**
 * Reads a kept file as a station file.
 *
 * @throws AppFailure `not-found`, or `invalid` when the file is far too large
 */
export async function readKeptFile(
  world: DeskWorld,
  jobId: string,
  { attachmentId, choices }: { attachmentId: string; choices: ReadingChoices },
): Promise<{ attachment: Attachment; file: UnderstoodFile }> {
  const kept = findAttachment(world.library.db, attachmentId)
  if (kept === null || kept.jobId !== jobId) return refuse('not-found', 'This file is not among the files of the job.')
  const { attachment, storedName } = kept
  if (attachment.file.bytes > MOST_BYTES) {
    return refuse('invalid', `${attachment.file.fileName} is larger than a station file can be.`, {
      help: 'Ask the archive for fewer days.',
    })
  }
  const path = join(needJobLayout(world.library, jobId).attachments, storedName)
  const bytes = await withFileWords(path, () => readFile(path))
  return { attachment, file: readStationFile(stationFileOf(bytes), choices) }
}

/** What a person sees of a file before taking it. */
export function fileReading(file: UnderstoodFile): FileReading {
  const { observations, problems } = file
  const times = observations.map(({ atMs }) => atMs)
  return {
    kind: file.kind,
    columns: [...file.columns],
    lacks: [...file.lacks],
    stations: [...file.stations],
    total: observations.length,
    first: observations.slice(0, SHOWN_ROWS),
    highest: highestOf(observations),
    firstMs: times.length === 0 ? null : times.reduce((least, next) => Math.min(least, next)),
    lastMs: times.length === 0 ? null : times.reduce((most, next) => Math.max(most, next)),
    dailyPeaks: file.dailyPeaks.slice(0, SHOWN_ROWS),
    problems: problems.slice(0, SHOWN_PROBLEMS),
    problemTotal: problems.length,
    merged: file.merged,
    outsideDays: file.outsideDays,
    proofs: [...file.proofs],
    provenUnit: file.provenUnit,
    provenTimeBasis: file.provenTimeBasis,
    cautions: [...file.cautions],
  }
}

function highestOf(observations: readonly Observation[]): Observation | null {
  const speed = ({ gustKt, peak, meanKt }: Observation) => Math.max(gustKt ?? 0, peak?.kt ?? 0, meanKt ?? 0)
  const [first, ...rest] = observations
  if (first === undefined) return null
  return rest.reduce((best, next) => (speed(next) > speed(best) ? next : best), first)
}
