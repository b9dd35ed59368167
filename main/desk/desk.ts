import type { Readable } from 'node:stream'
import { appError, AppFailure, type AppError } from '../../app/contract/app-error.ts'
import { contract, isProcedureName, type Call, type ProcedureName } from '../../app/contract/contract.ts'
import type { DeskEvent } from '../../app/contract/events.ts'
import type { FileRef } from '../../app/contract/files.ts'
import type { Reply } from '../../app/contract/procedure.ts'
import { firstIssueSentence } from '../../app/contract/schema-sentence.ts'
import { fileFailure } from '../library/file-failure.ts'
import type { Library } from '../library/open-library.ts'
import { readSetting } from '../store/settings.ts'
import { diaryArea } from './diary-area.ts'
import { assessmentArea } from './assessment-area.ts'
import type { DeskWorld } from './desk-world.ts'
import { findingsArea, historyArea, photosArea, sheetArea } from './edits-area.ts'
import { fieldFilesArea, readingsArea, surveyArea } from './field-tests-area.ts'
import type { Handlers } from './handlers.ts'
import { intakeArea } from './intake-area.ts'
import { jobsArea } from './jobs-area.ts'
import { libraryArea } from './library-area.ts'
import { logArea, searchArea } from './log-area.ts'
import { marksArea } from './marks-area.ts'
import { nearDoublesArea } from './near-doubles-area.ts'
import { narrationArea } from './narration-area.ts'
import { packetArea } from './packet-area.ts'
import { outlinesArea } from './outlines-area.ts'
import { placementArea } from './placement-area.ts'
import { planImagesArea } from './plan-images-area.ts'
import { facetsArea } from './roof-area.ts'
import { scopeArea, scopeFilesArea } from './scope-area.ts'
import { rulesArea } from './rules-area.ts'
import { servedFile, type ServedFile } from './served-files.ts'
import { createTaskList, type TaskList } from './task-list.ts'
import { throughJson } from './through-json.ts'
import { videosArea } from './videos-area.ts'
import { acceptUpload } from './uploads.ts'
import { weatherArea } from './weather-area.ts'

/** The one implementation of the contract. Hosts and the terminal stand in front of it and add nothing. */
export interface Desk {
  /** Answers any call by name; rubbish in gives an error value out, never an exception. */
  readonly call: (name: string, input: unknown) => Promise<Reply<unknown>>
  readonly listen: (on: (event: DeskEvent) => void) => () => void
  /** A file of the open library, or null when there is no such file. */
  readonly file: (ref: FileRef) => Promise<ServedFile | null>
  /** Keeps one file that a browser sends, until an intake takes it. */
  readonly acceptUpload: (upload: {
    uploadId: string
    index: number
    fileName: string
    body: Readable
  }) => Promise<Reply<null>>
  readonly tasks: TaskList
  /** Stops running work and closes the library. */
  readonly close: () => Promise<void>
}

export interface DeskOptions {
  readonly library: Library
  readonly now: () => number
  readonly newId: () => string
  /** Stands in for the operator's name until one is set. */
  readonly defaultOperator: string
  readonly report: (line: string) => void
  readonly programVersion: string
  readonly sampleFolder: string
  readonly drop: 'paths' | 'upload'
  /** Also checks every answer against the contract; on in tests. */
  readonly checkAnswers?: boolean
}

/** Sets the desk up over an open library. */
export function createDesk(options: DeskOptions): Desk {
  const { library, now, newId, report } = options
  const { announce, listen } = createListeners((cause) => report(stackOf(cause)))
  const world: DeskWorld = {
    ...options,
    announce,
    reportCause: (cause) => report(stackOf(cause)),
    operator: () => readSetting(library.db, 'operator') ?? options.defaultOperator,
    tasks: createTaskList({
      now,
      newId,
      tell: (task) => announce({ type: 'task', task }),
      words: (cause) => inWords(cause, report).message,
    }),
  }
  const handlers = allHandlers(world)
  const writes = createQueue()
  const answer = async (name: ProcedureName, input: unknown): Promise<unknown> => {
    const procedure = contract[name]
    const parsed = procedure.input.safeParse(input)
    if (!parsed.success) {
      const { field, sentence } = firstIssueSentence(parsed.error)
      throw new AppFailure(appError('invalid', sentence, { about: field }))
    }
    // The name picks both the schema and the handler, so the input fits; the type system can't follow that.
    const handle = handlers[name] as (input: unknown) => unknown
    const value: unknown = await (procedure.kind === 'write'
      ? writes(async () => handle(parsed.data))
      : handle(parsed.data))
    return options.checkAnswers === true ? procedure.output.parse(value) : value
  }
  return {
    call: (name, input) =>
      asReply(report, () => {
        if (!isProcedureName(name)) throw new AppFailure(appError('not-found', 'There is no such call.'))
        return answer(name, input)
      }),
    listen,
    file: (ref) => servedFile(world, ref),
    acceptUpload: (upload) =>
      asReply(report, async () => {
        await acceptUpload(world, upload)
        return null
      }),
    tasks: world.tasks,
    close: async () => {
      await writes(async () => undefined)
      await world.tasks.stopAll()
      library.close()
    },
  }
}

/** A typed caller in the same process. */
export function localCall(desk: Desk): Call {
  return async (name, input) => JSON.parse(JSON.stringify(await desk.call(name, throughJson(input))))
}

function allHandlers(world: DeskWorld): Handlers {
  return {
    ...libraryArea(world),
    ...jobsArea(world),
    ...sheetArea(world),
    ...outlinesArea(world),
    ...facetsArea(world),
    ...planImagesArea(world),
    ...photosArea(world),
    ...marksArea(world),
    ...nearDoublesArea(world),
    ...findingsArea(world),
    ...readingsArea(world),
    ...videosArea(world),
    ...narrationArea(world),
    ...surveyArea(world),
    ...assessmentArea(world),
    ...fieldFilesArea(world),
    ...historyArea(world),
    ...placementArea(world),
    ...intakeArea(world),
    ...logArea(world),
    ...searchArea(world),
    ...packetArea(world),
    ...weatherArea(world),
    ...scopeArea(world),
    ...scopeFilesArea(world),
    ...rulesArea(world),
    ...diaryArea(world),
  }
}

async function asReply<T>(report: DeskOptions['report'], work: () => Promise<T>): Promise<Reply<T>> {
  try {
    return { ok: true, value: await work() }
  } catch (cause) {
    return { ok: false, error: inWords(cause, report) }
  }
}

/** Whatever was thrown, as one of the known errors; what nobody foresaw is written to the log file and named plainly. */
function inWords(cause: unknown, report: DeskOptions['report']): AppError {
  if (cause instanceof AppFailure) return cause.error
  const fromSystem = fileFailure(cause, 'the library')
  if (fromSystem !== null) return fromSystem
  report(stackOf(cause))
  return appError('internal', 'Something went wrong inside the program.')
}

/** Those who hear of events. One that is gone, such as a closed window, must not stop the work that tells it. */
function createListeners(onFailure: (cause: unknown) => void): Pick<DeskWorld, 'announce'> & Pick<Desk, 'listen'> {
  const listeners = new Set<(event: DeskEvent) => void>()
  return {
    announce: (event) => {
      for (const listener of listeners) {
        try {
          listener(event)
        } catch (cause) {
          onFailure(cause)
        }
      }
    },
    listen: (on) => {
      listeners.add(on)
      return () => listeners.delete(on)
    },
  }
}

function stackOf(cause: unknown): string {
  return cause instanceof Error ? (cause.stack ?? cause.message) : String(cause)
}

/** Runs pieces of work one after another, in the order asked. */
function createQueue(): <T>(work: () => Promise<T>) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve()
  return (work) => {
    const mine = last.then(work)
    last = mine.catch(() => undefined)
    return mine
  }
}
