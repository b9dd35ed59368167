import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { refuse } from '../../app/contract/app-error.ts'
import { firstIssueSentence } from '../../app/contract/schema-sentence.ts'
import { describedJobSchema, type DescribedJob } from '../../app/job/described-job.ts'
import type { JobId } from '../../app/job/ids.ts'
import { withFileWords } from '../library/file-failure.ts'
import { findFiles, type Waiting } from '../library/intake/find-files.ts'
import { inTransaction } from '../store/database.ts'
import { recordEdit } from '../store/record-edits.ts'
import { reserveNumber } from '../store/counters.ts'
import type { DeskWorld } from './desk-world.ts'
import { describedRecords } from './described-records.ts'
import { announceChange } from './edit-job.ts'
import { takeFilesIn } from './intake-area.ts'
import { newJob } from './new-job.ts'

/**
 * Makes a job from a folder that holds `job.json` and `photos/`. The description is checked whole before the job is
 * begun; photos are then taken in as a task, and the records follow when they are there.
 *
 * @throws AppFailure `missing-folder`, `invalid` naming the field, or `conflict` when the number is in use
 */
export async function startDescribedJob(
  world: DeskWorld,
  folder: string,
): Promise<{ jobId: JobId; number: string; taskId: string }> {
  const described = await readDescription(folder)
  const files = await photosOf(folder)
  checkReferences(described, files)
  const job = newJob(world, { number: described.number, sheet: described.sheet })
  const taskId = world.tasks.start(
    { jobId: job.id, kind: 'intake', title: `Making job ${job.number}` },
    async (handle) => {
      await takeFilesIn(world, job.id, { files, handle })
      if (!handle.signal.aborted) writeRecords(world, job.id, described)
    },
  )
  return { jobId: job.id, number: job.number, taskId }
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

async function photosOf(folder: string): Promise<readonly Waiting[]> {
  return findFiles([join(folder, 'photos')])
}

function checkReferences(described: DescribedJob, files: readonly Waiting[]): void {
  const counts = new Map<string, number>()
  for (const { fileName } of files) counts.set(fileName, (counts.get(fileName) ?? 0) + 1)
  const letters = new Set(described.facets.map((facet) => facet.letter))
  const numbers = new Set(described.findings.map((finding) => finding.number))
  const needFile = (file: string, field: string) => {
    const count = counts.get(file) ?? 0
    if (count === 0) refuse('invalid', `job.json, ${field}: there is no photo "${file}" in photos/.`, { about: field })
    if (count > 1)
      refuse(
        'invalid',
        `job.json, ${field}: photos/ has ${count} files called "${file}". Give them names of their own.`,
        { about: field },
      )
  }
  const needFacet = (letter: string | null, field: string) => {
    if (letter !== null && !letters.has(letter))
      refuse('invalid', `job.json, ${field}: there is no facet "${letter}".`, { about: field })
  }
  refuseRepeats(
    described.facets.map((facet) => facet.letter),
    'facets',
    'letter',
  )
  refuseRepeats(
    described.findings.map((finding) => finding.number),
    'findings',
    'number',
  )
  refuseRepeats(
    described.readings.map((reading) => reading.number),
    'readings',
    'number',
  )
  described.photos.forEach((photo, i) => {
    needFile(photo.file, `photos.${i}.file`)
    needFacet(photo.facet, `photos.${i}.facet`)
  })
  described.findings.forEach((finding, i) => {
    needFacet(finding.facet, `findings.${i}.facet`)
    finding.photos.forEach((photo, k) => needFile(photo.file, `findings.${i}.photos.${k}.file`))
  })
  described.readings.forEach((reading, i) => {
    needFacet(reading.facet, `readings.${i}.facet`)
    reading.photos.forEach((file, k) => needFile(file, `readings.${i}.photos.${k}`))
    if (reading.finding !== null && !numbers.has(reading.finding)) {
      refuse('invalid', `job.json, readings.${i}.finding: there is no finding ${reading.finding}.`, {
        about: `readings.${i}.finding`,
      })
    }
  })
}

function refuseRepeats(values: readonly (string | number)[], list: string, field: string): void {
  values.forEach((value, i) => {
    if (values.indexOf(value) !== i)
      refuse('invalid', `job.json, ${list}.${i}.${field}: ${value} is used twice.`, { about: `${list}.${i}.${field}` })
  })
}

function writeRecords(world: DeskWorld, jobId: JobId, described: DescribedJob): void {
  inTransaction(world.library.db, (db) => {
    recordEdit(db, jobId, {
      actor: world.operator(),
      atMs: world.now(),
      summary: 'Take over the records of job.json',
      writes: describedRecords(db, jobId, { described, newId: world.newId }),
    })
    for (const { number } of described.findings) reserveNumber(db, jobId, { name: 'finding', used: number })
    for (const { number } of described.readings) reserveNumber(db, jobId, { name: 'reading', used: number })
  })
  announceChange(world, jobId)
}
