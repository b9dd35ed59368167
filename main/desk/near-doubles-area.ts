import { join } from 'node:path'
import type { JobId } from '../../app/job/ids.ts'
import { nearDoubles } from '../../app/evidence/near-doubles/near-doubles.ts'
import { derivedNames } from '../library/layout.ts'
import { lookAtPreview } from '../library/previews/look-at-picture.ts'
import { inTransaction } from '../store/database.ts'
import { listPhotos } from '../store/records/photos.ts'
import { listLooks, putLook } from '../store/records/picture-looks.ts'
import type { DeskWorld } from './desk-world.ts'
import type { Area } from './handlers.ts'
import { jobSnapshot, needJob, needJobLayout } from './snapshot.ts'

/** Photos taken in by an older program are looked at when near-doubles are first asked for, so many at a time. */
const AT_A_TIME = 60

/** Photos that show nearly the same. */
export function nearDoublesArea(world: DeskWorld): Area<'near-doubles'> {
  const { db } = world.library
  // A preview that is gone is made again when it is shown; until then its photo is no one's near-double.
  const gone = new Set<string>()
  return {
    'near-doubles.find': async ({ jobId }) => {
      needJob(db, jobId)
      const waiting = await lookAtSome(world, jobId, gone)
      const looks = listLooks(db, jobId)
      const photos = jobSnapshot(db, jobId).photos.flatMap(({ id, number, time, tags }) => {
        const look = looks.get(id)
        return look === undefined || tags.leftOutBecause !== null
          ? []
          : [{ id, number, instantMs: time.instantMs, look }]
      })
      const groups = nearDoubles(photos).map(({ photos: members, best, why }) => ({
        photos: members.map(({ id, look }) => ({
          photoId: id,
          sharpness: look.sharpness,
          clippedShare: look.clippedShare,
        })),
        best,
        why,
      }))
      return { groups, waiting }
    },
  }
}

/** Looks at some of the photos that nobody looked at yet; answers how many are left. */
async function lookAtSome({ library }: DeskWorld, jobId: JobId, gone: Set<string>): Promise<number> {
  const known = listLooks(library.db, jobId)
  const { derived } = needJobLayout(library, jobId)
  const missing = listPhotos(library.db, jobId).filter(
    ({ id, preview }) => preview === 'ready' && !known.has(id) && !gone.has(id),
  )
  for (const { id } of missing.slice(0, AT_A_TIME)) {
    const look = await lookAtPreview(join(derived, derivedNames(id).preview))
    if (look !== null) inTransaction(library.db, (write) => putLook(write, id, look))
    else gone.add(id)
  }
  return Math.max(0, missing.length - AT_A_TIME)
}
