import { readdir, readFile, rm } from 'node:fs/promises'
import { join } from 'node:path'
import { refuse } from '../../app/contract/app-error.ts'
import type { IntakeSource, TaskState } from '../../app/contract/intake.ts'
import { videoLabel } from '../../app/evidence/video-label.ts'
import type { JobId } from '../../app/job/ids.ts'
import { findFiles, type Waiting } from '../library/intake/find-files.ts'
import { takeIn, type Outcome } from '../library/intake/take-in.ts'
import type { DeskWorld } from './desk-world.ts'
import { announceChange } from './edit-job.ts'
import type { Area } from './handlers.ts'
import { needJob, needJobLayout } from './snapshot.ts'
import type { TaskHandle } from './task-list.ts'

type IntakeReport = NonNullable<TaskState['intake']>

const nothingYet: IntakeReport = {
  photosAdded: 0,
  videosAdded: 0,
  attachmentsAdded: 0,
  doubles: [],
  failed: [],
  attached: [],
  videos: [],
}

/** Taking files in, and the list of long work. */
export function intakeArea(world: DeskWorld): Area<'intake'> & Area<'tasks'> {
  return {
    'intake.start': async ({ jobId, from }) => {
      const { job } = needJob(world.library.db, jobId)
      const files = await intakeFiles(world, from)
      const taskId = world.tasks.start(
        { jobId, kind: 'intake', title: `Taking ${files.length} files into job ${job.number}` },
        async (handle) => {
          await takeFilesIn(world, jobId, { files, handle })
          if (from.kind === 'upload') await rm(uploadFolder(world, from.uploadId), { recursive: true, force: true })
        },
      )
      return { taskId }
    },
    'tasks.list': () => ({ tasks: [...world.tasks.list()] }),
    'tasks.show': ({ taskId }) => world.tasks.show(taskId),
    'tasks.cancel': ({ taskId }) => {
      world.tasks.cancel(taskId)
      return {}
    },
  }
}

/** Takes files in as the body of a task, telling how far it is; screens hear of the job's new photos as they come. */
export async function takeFilesIn(
  world: DeskWorld,
  jobId: JobId,
  { files, handle }: { files: readonly Waiting[]; handle: TaskHandle },
): Promise<void> {
  let report = nothingYet
  let done = 0
  let announcedAtMs = 0
  handle.update({ total: files.length, doing: 'Reading files', intake: report })
  const onOutcome = (outcome: Outcome) => {
    done += 1
    report = withOutcome(report, outcome)
    handle.update({ done, doing: outcome.fileName, intake: report })
    if (world.now() - announcedAtMs < 400 && done > 1) return
    announcedAtMs = world.now()
    announceChange(world, jobId)
  }
  try {
    await takeIn(world.library, jobId, {
      files,
      places: needJobLayout(world.library, jobId),
      actor: world.operator(),
      now: world.now,
      newId: world.newId,
      signal: handle.signal,
      onOutcome,
      onUnforeseen: world.reportCause,
    })
  } finally {
    announceChange(world, jobId)
  }
}

function withOutcome(report: IntakeReport, outcome: Outcome): IntakeReport {
  const { fileName } = outcome
  switch (outcome.kind) {
    case 'photo':
      return { ...report, photosAdded: report.photosAdded + 1 }
    case 'video': {
      const reason = `Taken in as ${videoLabel(outcome.number)}.`
      return { ...report, videosAdded: report.videosAdded + 1, videos: [...report.videos, { fileName, reason }] }
    }
    case 'attachment':
      return {
        ...report,
        attachmentsAdded: report.attachmentsAdded + 1,
        attached: [...report.attached, { fileName, reason: outcome.why }],
      }
    case 'double':
      return { ...report, doubles: [...report.doubles, { fileName, sameAs: outcome.sameAs }] }
    case 'failed':
      return { ...report, failed: [...report.failed, { fileName, reason: outcome.reason }] }
  }
}

/** Where a browser's upload stands until it is taken in. */
export function uploadFolder(world: DeskWorld, uploadId: string): string {
  return join(world.library.layout.incoming, uploadId)
}

/** The files that an intake names. @throws AppFailure when there are none */
export async function intakeFiles(world: DeskWorld, from: IntakeSource): Promise<readonly Waiting[]> {
  const files =
    from.kind === 'paths' ? await findFiles(from.paths) : await uploadedFiles(uploadFolder(world, from.uploadId))
  if (files.length === 0)
    refuse('missing-folder', 'There are no files in it.', { help: 'Choose the folder that holds the photos.' })
  return files
}

/** The files of an upload in the order they were sent, each under the name it had on the sender's disk. */
async function uploadedFiles(folder: string): Promise<readonly Waiting[]> {
  const names = await readdir(folder).catch(() =>
    refuse('not-found', 'This upload is no longer there. Drop the files again.'),
  )
  const indexes = names.flatMap((name) => /^(\d+)\.bytes$/.exec(name)?.[1] ?? [])
  const inOrder = indexes.map(Number).toSorted((a, b) => a - b)
  return Promise.all(
    inOrder.map(async (index) => ({
      path: join(folder, `${index}.bytes`),
      fileName: await readFile(join(folder, `${index}.name`), 'utf8'),
    })),
  )
}
