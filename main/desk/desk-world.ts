import type { DeskEvent } from '../../app/contract/events.ts'
import type { Library } from '../library/open-library.ts'
import type { TaskList } from './task-list.ts'

/** What every part of the desk works with. Clock and identities come in from outside. */
export interface DeskWorld {
  readonly library: Library
  readonly tasks: TaskList
  readonly now: () => number
  readonly newId: () => string
  /** Who works here, for the evidence log. */
  readonly operator: () => string
  /** Tells every listener. */
  readonly announce: (event: DeskEvent) => void
  /** A line for the log file; never shown on screens. */
  readonly report: (line: string) => void
  /** Notes in the log file what nobody foresaw. */
  readonly reportCause: (cause: unknown) => void
  readonly programVersion: string
  /** Folder of the sample job that comes with the program. */
  readonly sampleFolder: string
  readonly drop: 'paths' | 'upload'
}
