import { refuse } from '../../app/contract/app-error.ts'
import type { ParsedInput } from '../../app/contract/contract.ts'
import { facetIdSchema, outlineIdSchema, type FacetId, type JobId } from '../../app/job/ids.ts'
import type { PlanFrame } from '../../app/job/places.ts'
import { facetSchema, type Facet, type HandSet } from '../../app/roof/facet.ts'
import { facetsOfOutline } from '../../app/roof/facets-of-outline.ts'
import { houseOutlineSchema, type HouseOutline } from '../../app/roof/house-outline.ts'
import { checkOutline, outlineFaultSentence } from '../../app/roof/outline.ts'
import type { ReadDb } from '../store/database.ts'
import type { Write } from '../store/record-edits.ts'
import { facetTable, outlineTable } from '../store/records/tables.ts'
import type { DeskWorld } from './desk-world.ts'
import { editJob } from './edit-job.ts'
import type { Area } from './handlers.ts'
import { needJob } from './snapshot.ts'
import { withoutFacets } from './without-facets.ts'

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
          writes: [{ record: 'outline', id: after.id, after }, ...facetWrites(world, jobId, { db, outline: after })],
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
              facets.map(({ id }) => id),
            ),
          ],
          result: {},
        }
      }),
  }
}

/** Facets of the roof plan. */
export function facetsArea(world: DeskWorld): Area<'facets'> {
  return {
    'facets.save': (asked) => saveFacet(world, asked),
    'facets.reshape': ({ jobId, changed }) =>
      editJob(world, jobId, (db) => {
        const facets = changed.map(({ id, outline }): Facet => {
          const known = needFacet(db, jobId, id)
          const fault = checkOutline(outline)[0]
          if (fault !== undefined) {
            refuse('invalid', `Facet ${known.letter}: ${outlineFaultSentence(fault)}`, { about: 'outline' })
          }
          return { ...known, outline, setByHand: [...handSets(known, { ...known, outline })] }
        })
        return {
          summary: `Reshape facet${facets.length === 1 ? '' : 's'} ${facets.map((facet) => facet.letter).join(', ')}`,
          writes: facets.map((facet): Write => ({ record: 'facet', id: facet.id, after: facet })),
          result: {},
        }
      }),
    'facets.follow-outline': ({ jobId, id }) =>
      editJob(world, jobId, (db) => {
        const facet = needFacet(db, jobId, id)
        if (facet.from === null) refuse('invalid', `Facet ${facet.letter} was drawn by itself and follows no outline.`)
        const outline = needOutline(db, jobId, facet.from.outlineId)
        const released = facetTable
          .list(db, jobId)
          .map((one): Facet => (one.id === id ? { ...one, setByHand: [] } : one))
        return {
          summary: `Let facet ${facet.letter} follow its outline`,
          writes: facetWrites(world, jobId, { db, outline, existing: released }),
          result: {},
        }
      }),
    'facets.remove': ({ jobId, id }) =>
      editJob(world, jobId, (db) => {
        const facet = needFacet(db, jobId, id)
        if (facet.from !== null) {
          refuse('conflict', `Facet ${facet.letter} follows from an outline.`, {
            help: 'Make its edge a gable or remove the outline; the facet goes with it.',
          })
        }
        return {
          summary: `Remove facet ${facet.letter}`,
          writes: [{ record: 'facet', id, after: null }, ...withoutFacets(db, jobId, [id])],
          result: {},
        }
      }),
  }
}

/** Adds or changes a facet; on one that follows an outline, what differs counts as set by hand. */
function saveFacet(world: DeskWorld, { jobId, id, facet }: ParsedInput<'facets.save'>): { id: FacetId } {
  return editJob(world, jobId, (db) => {
    const fault = checkOutline(facet.outline)[0]
    if (fault !== undefined) refuse('invalid', outlineFaultSentence(fault), { about: 'outline' })
    const others = facetTable.list(db, jobId).filter((other) => other.id !== id)
    if (others.some((other) => other.letter === facet.letter)) {
      refuse('conflict', `Facet ${facet.letter} is there already.`, {
        about: 'letter',
        help: 'Choose another letter.',
      })
    }
    const known = id === null ? null : needFacet(db, jobId, id)
    const after = facetSchema.parse({
      ...facet,
      id: known?.id ?? facetIdSchema.parse(world.newId()),
      from: known?.from ?? null,
      setByHand: known === null ? [] : handSets(known, facet),
    })
    return {
      summary: `${known === null ? 'Add' : 'Change'} facet ${after.letter}`,
      writes: [{ record: 'facet', id: after.id, after }],
      result: { id: after.id },
    }
  })
}

/** The facets of all outlines when the sheet's direction changes: shapes stay, the directions they face turn with it. */
export function facetsInFrame(db: ReadDb, jobId: JobId, frame: PlanFrame): readonly Write[] {
  const turnDeg = frame.upAzimuthDeg - needJob(db, jobId).job.frame.upAzimuthDeg
  if (turnDeg === 0) return []
  return facetTable
    .list(db, jobId)
    .filter((facet) => facet.from !== null && !facet.setByHand.includes('downslopeAzimuthDeg'))
    .map((facet): Write => {
      const turned = (((facet.downslopeAzimuthDeg + turnDeg) % 360) + 360) % 360
      return { record: 'facet', id: facet.id, after: { ...facet, downslopeAzimuthDeg: turned } }
    })
}

function facetWrites(
  world: DeskWorld,
  jobId: JobId,
  {
    db,
    outline,
    existing = facetTable.list(db, jobId),
  }: { db: ReadDb; outline: HouseOutline; existing?: readonly Facet[] },
): readonly Write[] {
  const { job } = needJob(db, jobId)
  const built = facetsOfOutline(outline, {
    existing,
    frame: job.frame,
    frontAzimuthDeg: job.sheet.property.frontAzimuthDeg,
    newId: (): FacetId => facetIdSchema.parse(world.newId()),
  })
  if (!built.ok) return refuse('invalid', built.sentence, { about: 'outline' })
  return [
    ...built.removed.map((id): Write => ({ record: 'facet', id, after: null })),
    ...withoutFacets(db, jobId, built.removed),
    ...built.facets.map((facet): Write => ({ record: 'facet', id: facet.id, after: facet })),
  ]
}

/** What of a facet that follows an outline a person has now set: what was set before, and what differs. */
function handSets(known: Facet, now: Pick<Facet, HandSet>): readonly HandSet[] {
  if (known.from === null) return []
  const fields: readonly HandSet[] = ['outline', 'pitchRise', 'downslopeAzimuthDeg']
  return fields.filter(
    (field) => known.setByHand.includes(field) || JSON.stringify(known[field]) !== JSON.stringify(now[field]),
  )
}

function needOutline(db: ReadDb, jobId: string, id: string): HouseOutline {
  return outlineTable.get(db, { jobId, id }) ?? refuse('not-found', 'This outline is no longer in the job.')
}

function needFacet(db: ReadDb, jobId: string, id: string): Facet {
  return facetTable.get(db, { jobId, id }) ?? refuse('not-found', 'This facet is no longer in the job.')
}
