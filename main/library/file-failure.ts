import { appError, AppFailure, type AppError } from '../../app/contract/app-error.ts'

/** Turns what the operating system says about a file or folder into an error with words; null for anything else. */
export function fileFailure(cause: unknown, about: string): AppError | null {
  if (!(cause instanceof Error) || !('code' in cause)) return null
  switch (cause.code) {
    case 'ENOENT':
    case 'ENOTDIR':
      return appError(
        'missing-folder',
        `"${about}" is not there. It may have been moved, or its card or disk taken out.`,
        { about },
      )
    case 'EACCES':
    case 'EPERM':
    case 'EROFS':
      return appError('no-permission', `"${about}" can't be read or written with the rights this program has.`, {
        about,
      })
    case 'ENOSPC':
    case 'EDQUOT':
      return appError('disk-full', 'The disk is full.', { about })
    case 'EIO':
    case 'EISDIR':
    case 'ENXIO':
    case 'ESTALE':
      return appError('unreadable-file', `"${about}" can't be read: the card or disk reports an error.`, { about })
    case 'EBUSY':
    case 'SQLITE_BUSY':
      return appError('locked', `"${about}" is in use by another program.`, { about })
    case 'SQLITE_FULL':
      return appError('disk-full', 'The disk is full.', { about })
    case 'SQLITE_CORRUPT':
    case 'SQLITE_NOTADB':
      return appError('damaged-library', `"${about}" is not a sound Battenbook database.`, { about })
    case 'SQLITE_READONLY':
    case 'SQLITE_CANTOPEN':
      return appError('no-permission', `The library "${about}" can't be opened for writing.`, { about })
    default:
      return null
  }
}

/** Runs `work`; what the operating system refuses comes out as an `AppFailure` with words. */
export async function withFileWords<T>(about: string, work: () => Promise<T>): Promise<T> {
  try {
    return await work()
  } catch (cause) {
    const error = fileFailure(cause, about)
    throw error === null ? cause : new AppFailure(error, { cause })
  }
}
