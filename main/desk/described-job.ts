import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { refuse } from '../../app/contract/app-error.ts'
import { firstIssueSentence } from '../../app/contract/schema-sentence.ts'
import { diaryEntrySchema } from '../../app/diary/entry.ts'
import { digestOf } from '../../app/evidence/log-chain.ts'
import { describedJobSchema, type DescribedJob } from '../../app/job/described-job.ts'
import type { JobId } from '../../app/job/ids.ts'
import type { Job } from '../../app/job/job.ts'
import type { Narration } from '../../app/narration/narration.ts'
import type { PriceBook } from '../../app/scope/price-book.ts'
import { withFileWords } from '../library/file-failure.ts'
import { findFiles } from '../library/intake/find-files.ts'
import { reserveNumber } from '../store/counters.ts'
import { inTransaction, type ReadDb } from '../store/database.ts'
import { jobByNumber } from '../store/jobs.ts'
import { historyState, recordEdit, type Write } from '../store/record-edits.ts'
import { listAttachments } from '../store/records/attachments.ts'
import { checkReferences } from './described-references.ts'
import { describedRecords } from './described-records.ts'
import { readDescribedPrices } from './described-scope.ts'
import { describedWeatherWrites, readDescribedWeather, type DescribedStationFile } from './described-weather.ts'
import type { DeskWorld } from './desk-world.ts'
import { announceChange } from './edit-job.ts'
import { keptNarration } from './kept-narration.ts'
import { takeFilesIn } from './intake-area.ts'
import { newJob } from './new-job.ts'

/**
 * Makes a job from a folder that holds `job.json` and `photos/`. The description is checked whole before the job is
 * begun; photos are then taken in as a task, and the records follow when they are there. A job that an earlier run began
 * and could not finish is gone on with.
 *
 * @throws AppFailure `missing-folder`, `invalid` naming the field, or `conflict` when the number is in use
 */
export async function startDescribedJob(
  world: DeskWorld,
  folder: string,
): Promise<{ jobId: JobId; number: string; taskId: string }> {
  const described = await readDescription(folder)
  const files = await findFiles([
    join(folder, 'photos'),
    ...(described.narrations.length > 0 ? [join(folder, 'narration')] : []),
  ])
  checkReferences(described, files)
  const weather = await readDescribedWeather(folder, described)
  const book = await readDescribedPrices(folder, described)
  const job =
    unfinishedJob(world.library.db, described) ?? newJob(world, { number: described.number, sheet: described.sheet })
  const taskId = world.tasks.start(
    { jobId: job.id, kind: 'intake', title: `Making job ${job.number}` },
    async (handle) => {
      await takeFilesIn(world, job.id, { files: [...files, ...weather.map(({ waiting }) => waiting)], handle })
      if (handle.signal.aborted) return
      const narrations = await describedNarrations(world, job.id, described)
      writeRecords(world, job.id, { described, narrations, weather, book })
    },
  )
  return { jobId: job.id, number: job.number, taskId }
}

/** A job with this number and sheet in which nobody has done anything yet: all it can have is photos. */
function unfinishedJob(db: ReadDb, { number, sheet }: DescribedJob): Job | null {
  const begun = jobByNumber(db, number)?.job ?? null
  if (begun === null || digestOf(begun.sheet) !== digestOf(sheet)) return null
  const { undo, redo } = historyState(db, begun.id)
  return undo === null && redo === null ? begun : null
}

async function readDescription(folder: string): Promise<DescribedJob> {
  const path = join(folder, 'job.json')
  const text = await withFileWords(path, () => readFile(path, 'utf8'))
  const parsed = describedJobSchema.safeParse(parseJson(text.replace(/^\uFEFF/, '')))
  if (parsed.success) return parsed.data
  const { field, sentence } = firstIssueSentence(parsed.error)
  return refuse('invalid', `job.json, ${field === '' ? 'as a whole' : field}: ${sentence}`, { about: field })
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch (cause) {
    return refuse('invalid', `job.json is not JSON: ${cause instanceof Error ? cause.message : 'it cannot be read'}.`, {
      help: 'Open it in a text editor and correct the place that is named.',
    })
  }
}

function writeRecords(
  world: DeskWorld,
  jobId: JobId,
  {
    described,
    narrations,
    weather,
    book,
  }: {
    described: DescribedJob
    narrations: readonly Narration[]
    weather: readonly DescribedStationFile[]
    book: PriceBook | null
  },
): void {
  inTransaction(world.library.db, (db) => {
    recordEdit(db, jobId, {
      actor: world.operator(),
      atMs: world.now(),
      summary: 'Take over the records of job.json',
      writes: [
        ...describedRecords(db, jobId, { described, book, newId: world.newId }),
        ...narrations.map((narration): Write => ({ record: 'narration', id: narration.id, after: narration })),
        ...diaryWrites(world, described),
        ...describedWeatherWrites(db, jobId, { described, files: weather, newId: world.newId }),
      ],
    })
    for (const { number } of described.findings) reserveNumber(db, jobId, { name: 'finding', used: number })
    for (const { number } of described.diary) reserveNumber(db, jobId, { name: 'diary-entry', used: number })
    for (const { number } of described.readings) reserveNumber(db, jobId, { name: 'reading', used: number })
  })
  announceChange(world, jobId)
}

function diaryWrites(world: DeskWorld, { diary }: DescribedJob): readonly Write[] {
  return diary.map((entry): Write => {
    const made = { id: world.newId(), madeAtMs: world.now(), madeBy: world.operator() }
    const after = diaryEntrySchema.parse({ ...entry, ...made })
    return { record: 'diary-entry', id: after.id, after }
  })
}

/** The narrations of a described job, read from the files that were just taken in. */
async function describedNarrations(
  world: DeskWorld,
  jobId: JobId,
  { narrations }: DescribedJob,
): Promise<readonly Narration[]> {
  const kept = listAttachments(world.library.db, jobId)
  const read = narrations.map(({ file, recordedFrom }) => {
    const found = kept.find(({ attachment }) => attachment.file.fileName === file)
    const start = recordedFrom === null ? null : { kind: 'recorded' as const, instantMs: Date.parse(recordedFrom) }
    return found === undefined ? null : keptNarration(world, found, start ?? { kind: 'not-known' })
  })
  return Promise.all(read.filter((one) => one !== null))
}
