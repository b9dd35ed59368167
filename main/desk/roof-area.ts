import { refuse } from '../../app/contract/app-error.ts'
import type { ParsedInput } from '../../app/contract/contract.ts'
import { facetIdSchema, type FacetId, type JobId } from '../../app/job/ids.ts'
import type { PlanFrame } from '../../app/job/places.ts'
import { edgeKindWords } from '../../app/roof/edge-by-hand.ts'
import { roofEdges } from '../../app/roof/edges.ts'
import { facetSchema, type Facet, type HandSet } from '../../app/roof/facet.ts'
import { facetsWithEdgeKind } from '../../app/roof/kinds-by-hand.ts'
import { checkOutline, outlineFaultSentence } from '../../app/roof/outline.ts'
import type { ReadDb } from '../store/database.ts'
import type { Write } from '../store/record-edits.ts'
import { facetTable } from '../store/records/tables.ts'
import type { DeskWorld } from './desk-world.ts'
import { editJob } from './edit-job.ts'
import type { Area } from './handlers.ts'
import { needOutline, outlineFacetWrites } from './outlines-area.ts'
import { needJob } from './snapshot.ts'
import { withoutFacets } from './tied-to-facet.ts'

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
          writes: outlineFacetWrites(world, jobId, { db, outline, existing: released }),
          result: {},
        }
      }),
    'facets.set-edge': (asked) => setEdge(world, asked),
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
      ...(known?.edgesByHand === undefined ? {} : { edgesByHand: known.edgesByHand }),
    })
    return {
      summary: `${known === null ? 'Add' : 'Change'} facet ${after.letter}`,
      writes: [{ record: 'facet', id: after.id, after }],
      result: { id: after.id },
    }
  })
}

/** States what an edge of a facet is, or lets it follow from the slopes again. */
function setEdge(world: DeskWorld, { jobId, id, edge, kind }: ParsedInput<'facets.set-edge'>): Record<string, never> {
  return editJob(world, jobId, (db) => {
    const facet = needFacet(db, jobId, id)
    const facets = facetTable.list(db, jobId)
    const { upAzimuthDeg } = needJob(db, jobId).job.frame
    const changed = facetsWithEdgeKind(
      { facets, edges: roofEdges(facets, upAzimuthDeg), upAzimuthDeg },
      { facet, edge, kind },
    )
    if (changed === null) {
      return refuse('not-found', `Facet ${facet.letter} has no such edge any more.`, {
        about: 'edge',
        help: 'The roof has changed. Look at the edges of the facet again.',
      })
    }
    const other = edge.at === 'shared' ? facets.find((one) => one.id === edge.with) : undefined
    const words = other === undefined ? `an edge of facet ${facet.letter}` : `edge ${facet.letter}-${other.letter}`
    return {
      summary: kind === null ? `Let ${words} follow the slopes` : `State that ${words} is a ${edgeKindWords[kind]}`,
      writes: changed.map((after): Write => ({ record: 'facet', id: after.id, after })),
      result: {},
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

/** What of a facet that follows an outline a person has now set: what was set before, and what differs. */
function handSets(known: Facet, now: Pick<Facet, HandSet>): readonly HandSet[] {
  if (known.from === null) return []
  const fields: readonly HandSet[] = ['outline', 'pitchRise', 'downslopeAzimuthDeg']
  return fields.filter(
    (field) => known.setByHand.includes(field) || JSON.stringify(known[field]) !== JSON.stringify(now[field]),
  )
}

function needFacet(db: ReadDb, jobId: string, id: string): Facet {
  return facetTable.get(db, { jobId, id }) ?? refuse('not-found', 'This facet is no longer in the job.')
}
