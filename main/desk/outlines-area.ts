import { refuse } from '../../app/contract/app-error.ts'
import { facetIdSchema, outlineIdSchema, type FacetId, type JobId } from '../../app/job/ids.ts'
import type { Facet } from '../../app/roof/facet.ts'
import { facetsOfOutline } from '../../app/roof/facets-of-outline.ts'
import { houseOutlineSchema, type HouseOutline } from '../../app/roof/house-outline.ts'
import type { ReadDb } from '../store/database.ts'
import type { Write } from '../store/record-edits.ts'
import { facetTable, outlineTable } from '../store/records/tables.ts'
import type { DeskWorld } from './desk-world.ts'
import { editJob } from './edit-job.ts'
import { formerFacets } from './former-facets.ts'
import type { Area } from './handlers.ts'
import { needJob } from './snapshot.ts'
import { withFacetAgain, withoutFacets } from './tied-to-facet.ts'

/** Outlines of the house, and the facets that follow from them. */
export function outlinesArea(world: DeskWorld): Area<'outlines'> {
  return {
    'outlines.save': ({ jobId, id, outline }) =>
      editJob(world, jobId, (db) => {
        if (id !== null) needOutline(db, jobId, id)
        const after = houseOutlineSchema.parse({ ...outline, id: id ?? outlineIdSchema.parse(world.newId()) })
        if (outlineTable.list(db, jobId).some((other) => other.id !== after.id && other.name === after.name)) {
          refuse('conflict', `An outline called "${after.name}" is there already.`, {
            about: 'name',
            help: 'Give it another name.',
          })
        }
        return {
          summary: `${id === null ? 'Draw' : 'Change'} the outline "${after.name}"`,
          writes: [
            { record: 'outline', id: after.id, after },
            ...outlineFacetWrites(world, jobId, { db, outline: after }),
          ],
          result: { id: after.id },
        }
      }),
    'outlines.remove': ({ jobId, id }) =>
      editJob(world, jobId, (db) => {
        const outline = needOutline(db, jobId, id)
        const facets = facetTable.list(db, jobId).filter((facet) => facet.from?.outlineId === id)
        return {
          summary: `Remove the outline "${outline.name}"`,
          writes: [
            { record: 'outline', id, after: null },
            ...facets.map((facet): Write => ({ record: 'facet', id: facet.id, after: null })),
            ...withoutFacets(
              db,
              jobId,
              facets.map((facet) => facet.id),
            ),
          ],
          result: {},
        }
      }),
  }
}

/** The records that change with an outline: its facets, what pointed to those that go, and to those that are there again. */
export function outlineFacetWrites(
  world: DeskWorld,
  jobId: JobId,
  {
    db,
    outline,
    existing = facetTable.list(db, jobId),
  }: { db: ReadDb; outline: HouseOutline; existing?: readonly Facet[] },
): readonly Write[] {
  const { job } = needJob(db, jobId)
  const former = formerFacets(db, jobId, outline.id)
  const built = facetsOfOutline(outline, {
    existing,
    former: former.map(({ facet }) => facet),
    neighbours: outlineTable.list(db, jobId).filter(({ id }) => id !== outline.id),
    frame: job.frame,
    frontAzimuthDeg: job.sheet.property.frontAzimuthDeg,
    newId: (): FacetId => facetIdSchema.parse(world.newId()),
  })
  if (!built.ok) {
    return refuse(built.fault === 'roofs-overlap' ? 'conflict' : 'invalid', built.sentence, { about: 'outline' })
  }
  return [
    ...built.removed.map((id): Write => ({ record: 'facet', id, after: null })),
    ...withoutFacets(db, jobId, built.removed),
    ...built.facets.map((facet): Write => ({ record: 'facet', id: facet.id, after: facet })),
    ...built.returned.flatMap((id) => {
      const tied = former.find(({ facet }) => facet.id === id)?.tied ?? []
      return withFacetAgain(db, jobId, { facetId: id, tied })
    }),
  ]
}

/** An outline of a job; refuses where it is gone. */
export function needOutline(db: ReadDb, jobId: string, id: string): HouseOutline {
  return outlineTable.get(db, { jobId, id }) ?? refuse('not-found', 'This outline is no longer in the job.')
}
