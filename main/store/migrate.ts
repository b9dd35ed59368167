import { refuse } from '../../app/contract/app-error.ts'
import { row, type ReadDb } from './database.ts'
import { firstLibrary } from './migrations/0001-first-library.ts'
import { outlines } from './migrations/0002-outlines.ts'
import { planImages } from './migrations/0003-plan-images.ts'
import { videos } from './migrations/0005-videos.ts'
import { narration } from './migrations/0006-narration.ts'
import { photoChanges } from './migrations/0007-photo-changes.ts'
import { markups } from './migrations/0008-markups.ts'
import { pictureLooks } from './migrations/0009-picture-looks.ts'
import { fieldSurveys } from './migrations/0010-field-surveys.ts'
import { weather } from './migrations/0011-weather.ts'
import { scopes } from './migrations/0014-scopes.ts'
import { diaryAndRules } from './migrations/0013-diary-and-rules.ts'
import { assessments } from './migrations/0012-assessments.ts'

/** Every migration in order; the position in this list, counted from 1, is the database's version after it. */
const migrations: readonly string[] = [
  firstLibrary,
  outlines,
  planImages,
  videos,
  narration,
  photoChanges,
  markups,
  pictureLooks,
  fieldSurveys,
  weather,
  scopes,
  diaryAndRules,
  assessments,
]

/**
 * Brings a database up to date, all steps in one transaction.
 *
 * @param backup called before anything changes, when an older database holds something
 * @param steps every migration in order; this program's own when left out
 * @throws AppFailure `newer-library` when the database comes from a newer program, `damaged-library` when it is not a
 *   library's at all
 */
export function migrate(
  db: ReadDb,
  { backup, steps = migrations }: { backup: () => void; steps?: readonly string[] },
): void {
  const version = Number(db.connection.pragma('user_version', { simple: true }))
  if (version > steps.length) {
    refuse(
      'newer-library',
      `This library was written by a newer Battenbook (database version ${version}; this one knows ${steps.length}).`,
    )
  }
  if (version === steps.length) return
  if (version > 0) backup()
  else if (row(db, 'select 1 from sqlite_schema') !== null) {
    refuse('damaged-library', 'The database in this folder was not made by Battenbook.', {
      help: 'Choose another folder for the library, or move that database away.',
    })
  }
  db.connection.transaction(() => {
    for (const sql of steps.slice(version)) db.connection.exec(sql)
    db.connection.pragma(`user_version = ${steps.length}`)
  })()
}
