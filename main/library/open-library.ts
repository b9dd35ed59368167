import { copyFileSync, existsSync, mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { AppFailure } from '../../app/contract/app-error.ts'
import { connect, type ReadDb } from '../store/database.ts'
import { migrate } from '../store/migrate.ts'
import { fileFailure } from './file-failure.ts'
import { libraryLayout, type LibraryLayout } from './layout.ts'

/** An open library: its database and its folders. */
export interface Library {
  readonly db: ReadDb
  readonly layout: LibraryLayout
  readonly close: () => void
}

/** What an opening depends on, passed in so that tests and hosts can choose it. */
export interface OpenOptions {
  /** Path of the SQLite driver's binary; Node's own build when left out. */
  readonly nativeBinding?: string
  /** The present moment, milliseconds since 1970; names the backup. */
  readonly nowMs: number
}

/**
 * Opens the library in `folder`, making it when there is none and bringing an older database up to date after a backup.
 *
 * @throws AppFailure `newer-library`, `damaged-library`, `no-permission`, `disk-full` or `locked`
 */
export function openLibrary(folder: string, { nativeBinding, nowMs }: OpenOptions): Library {
  const layout = libraryLayout(folder)
  let db: ReadDb | null = null
  try {
    for (const path of [layout.folder, layout.jobs, layout.backups, layout.logs]) mkdirSync(path, { recursive: true })
    db = connect(layout.database, nativeBinding)
    const opened = db
    migrate(opened, { backup: () => backUp(opened, layout, nowMs) })
    return { db: opened, layout, close: () => opened.connection.close() }
  } catch (cause) {
    db?.connection.close()
    const error = fileFailure(cause, folder)
    throw error === null ? cause : new AppFailure(error, { cause })
  }
}

/** Copies the database as it stands before a migration touches it. */
function backUp(db: ReadDb, layout: LibraryLayout, nowMs: number): void {
  db.connection.pragma('wal_checkpoint(TRUNCATE)')
  const copy = join(layout.backups, `before-update-${new Date(nowMs).toISOString().replaceAll(':', '')}.db`)
  if (!existsSync(copy)) copyFileSync(layout.database, copy)
}
