import { z } from 'zod'

/** Everything that can go wrong, as a closed set. A new code needs words in `errorHelp`. */
export const errorCodeSchema = z.enum([
  'not-found',
  'invalid',
  'conflict',
  'unreadable-file',
  'missing-folder',
  'disk-full',
  'no-permission',
  'locked',
  'newer-library',
  'damaged-library',
  'cancelled',
  'not-verified',
  'internal',
])
export type ErrorCode = z.output<typeof errorCodeSchema>

/** An error as a value: what happened, what the person can do, and which field or file it is about. */
export const appErrorSchema = z.object({
  code: errorCodeSchema,
  message: z.string(),
  help: z.string(),
  /** The field (dotted path) or file that the error is about, where there is one. */
  about: z.string().nullable(),
})
export type AppError = z.output<typeof appErrorSchema>

/** What a person can do about each kind of error when nothing more particular is known. */
export const errorHelp = {
  'not-found': 'It may have been removed. Go back to the list and open it again.',
  invalid: 'Correct the value that is named and try again.',
  conflict: 'Choose another value, or open the record that has this one.',
  'unreadable-file': 'Check that the file opens in another program, then take it in again.',
  'missing-folder': 'Check that the folder or card is connected, then try again.',
  'disk-full':
    'Free some space on the disk. Nothing taken in before is lost; running the same step again goes on from here.',
  'no-permission': 'Ask for the right to read and write this folder, or choose another one.',
  locked: 'Close the other program that has this library open, then try again.',
  'newer-library':
    'Open this library with the newer Battenbook that made it, or restore a backup from its backups folder.',
  'damaged-library': 'Restore the latest copy from the backups folder beside the database.',
  cancelled: 'Run it again to go on from here.',
  'not-verified': 'Compare the named file or entry with an earlier copy of the packet or a backup.',
  internal:
    'Try again. If it happens again, send the log file from the library folder to whoever looks after the program.',
} as const satisfies Record<ErrorCode, string>

/** Makes an error value; `help` falls back on the general advice for the code. */
export function appError(code: ErrorCode, message: string, more: { help?: string; about?: string } = {}): AppError {
  return { code, message, help: more.help ?? errorHelp[code], about: more.about ?? null }
}

/** Carries an `AppError` through code that throws. The desk turns it back into a value at the door. */
export class AppFailure extends Error {
  readonly error: AppError
  constructor(error: AppError, options?: ErrorOptions) {
    super(error.message, options)
    this.name = 'AppFailure'
    this.error = error
  }
}

/** Throws an `AppFailure`; the one-line way to refuse. */
export function refuse(code: ErrorCode, message: string, more: { help?: string; about?: string } = {}): never {
  throw new AppFailure(appError(code, message, more))
}
