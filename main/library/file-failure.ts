import { appError, AppFailure, type AppError } from '../../app/contract/app-error.ts'

/** Turns what the operating system or the database says about a file or folder into an error with words; null for anything else. */
export function fileFailure(cause: unknown, about: string): AppError | null {
  if (!(cause instanceof Error) || !('code' in cause) || typeof cause.code !== 'string') return null
  return cause.code.startsWith('SQLITE_') ? databaseFailure(cause.code, about) : systemFailure(cause.code, about)
}

/** Node refuses a path with a null byte before the system sees it. */
const NULL_BYTE_IN_PATH = 'ERR_INVALID_ARG_VALUE'

function systemFailure(code: string, about: string): AppError | null {
  switch (code) {
    case 'ENOENT':
    case 'ENOTDIR':
      return appError(
        'missing-folder',
        `"${about}" is not there. It may have been moved, or its card or disk taken out.`,
        { about },
      )
    case 'EEXIST':
      return appError('conflict', `"${about}" is there already.`, { about, help: 'Choose another name or folder.' })
    case 'ENAMETOOLONG':
    case 'ELOOP':
    case NULL_BYTE_IN_PATH:
      return appError('invalid', `"${about}" is no usable path.`, { about, help: 'Choose a shorter, plain path.' })
    case 'EACCES':
    case 'EPERM':
    case 'EROFS':
      return appError('no-permission', `"${about}" can't be read or written with the rights this program has.`, {
        about,
      })
    case 'ENOSPC':
    case 'EDQUOT':
      return appError('disk-full', 'The disk is full.', { about })
    case 'EFBIG':
      return appError('disk-full', `The disk takes no file as large as "${about}".`, { about })
    case 'EIO':
    case 'EISDIR':
    case 'ENXIO':
    case 'ENODEV':
    case 'ESTALE':
      return appError('unreadable-file', `"${about}" can't be read: the card or disk reports an error.`, { about })
    case 'EBUSY':
    case 'ETXTBSY':
      return appError('locked', `"${about}" is in use by another program.`, { about })
    case 'EMFILE':
    case 'ENFILE':
      return appError('locked', 'The computer has too many files open.', {
        about,
        help: 'Close other programs, then try again.',
      })
    default:
      return null
  }
}

/** SQLite's result codes, https://sqlite.org/rescode.html: the extended ones begin with their primary code. */
function databaseFailure(code: string, about: string): AppError | null {
  const is = (...primary: string[]) => primary.some((one) => code === one || code.startsWith(`${one}_`))
  if (is('SQLITE_FULL')) return appError('disk-full', 'The disk is full.', { about })
  if (is('SQLITE_BUSY', 'SQLITE_LOCKED'))
    return appError('locked', `"${about}" is in use by another program.`, { about })
  if (is('SQLITE_CORRUPT', 'SQLITE_NOTADB'))
    return appError('damaged-library', `"${about}" is not a sound Battenbook database.`, { about })
  if (is('SQLITE_READONLY', 'SQLITE_CANTOPEN', 'SQLITE_PERM'))
    return appError('no-permission', `The library "${about}" can't be opened for writing.`, { about })
  if (is('SQLITE_IOERR'))
    return appError(
      'unreadable-file',
      `The database of "${about}" can't be read or written: the disk reports an error.`,
      {
        about,
        help: 'Check the disk, then try again.',
      },
    )
  return null
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
