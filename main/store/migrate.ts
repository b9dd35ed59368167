import { refuse } from '../../app/contract/app-error.ts'
import type { ReadDb } from './database.ts'
import { firstLibrary } from './migrations/0001-first-library.ts'

/** Every migration in order; the position in this list, counted from 1, is the database's version after it. */
const migrations: readonly string[] = [firstLibrary]

/** The version of database that this program writes. */
export const currentVersion = migrations.length

/**
 * Brings a database up to `target` (default: this program's version), all steps in one transaction.
 *
 * @param backup called before anything changes, when an older database holds something
 * @throws AppFailure `newer-library` when the database comes from a newer program
 */
export function migrate(
  db: ReadDb,
  { backup, target = currentVersion }: { backup: () => void; target?: number },
): void {
  const version = Number(db.connection.pragma('user_version', { simple: true }))
  if (version > currentVersion) {
    refuse(
      'newer-library',
      `This library was written by a newer Battenbook (database version ${version}; this one knows ${currentVersion}).`,
    )
  }
  if (version >= target) return
  if (version > 0) backup()
  db.connection.transaction(() => {
    for (const sql of migrations.slice(version, target)) db.connection.exec(sql)
    db.connection.pragma(`user_version = ${target}`)
  })()
}
