import { refuse } from '../../app/contract/app-error.ts'
import { markupSchema } from '../../app/evidence/markup.ts'
import { markOutside } from '../../app/evidence/markup/mark-points.ts'
import { markEditWords } from '../../app/evidence/markup/words.ts'
import { photoLabel } from '../../app/evidence/photo.ts'
import { markupTable } from '../store/records/markups.ts'
import { findPhoto } from '../store/records/photos.ts'
import type { DeskWorld } from './desk-world.ts'
import { editJob } from './edit-job.ts'
import type { Area } from './handlers.ts'

/** What is drawn over photos. */
export function marksArea(world: DeskWorld): Area<'marks'> {
  return {
    'marks.save': ({ jobId, photoId, marks }) =>
      editJob(world, jobId, (db) => {
        const photo = findPhoto(db, photoId)
        if (photo === null || photo.jobId !== jobId) return refuse('not-found', 'This photo is not in the job.')
        if (markOutside(marks, photo.file) !== null)
          refuse('invalid', 'A mark lies outside its picture.', { help: 'Move the mark onto the picture.' })
        const before = markupTable.get(db, { jobId, id: photoId })?.marks ?? []
        return {
          summary: markEditWords(before, marks, photoLabel(photo.number)),
          writes: [
            {
              record: 'markup',
              id: photoId,
              after: marks.length === 0 ? null : markupSchema.parse({ photoId, marks }),
            },
          ],
          result: {},
        }
      }),
  }
}
