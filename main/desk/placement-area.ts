import { setImmediate as afterOthers } from 'node:timers/promises'
import type { JobSnapshot } from '../../app/contract/jobs.ts'
import type { Placement } from '../../app/contract/placement.ts'
import { likelyFacets, placementOfJob } from '../../app/evidence/placement/job-placement.ts'
import { learnFrames } from '../../app/evidence/placement/learn-frame.ts'
import { findingTellingPhotos } from '../../app/evidence/placement/telling-photos.ts'
import { suggestingFacets } from '../../app/evidence/placement/suggest-facets.ts'
import type { JobId, PhotoId } from '../../app/job/ids.ts'
import { type PlacesOf, spokenHintsOfJob } from '../../app/narration/job-hints.ts'
import type { Write } from '../store/record-edits.ts'
import { findPhoto } from '../store/records/photos.ts'
import { facetTable } from '../store/records/tables.ts'
import type { DeskWorld } from './desk-world.ts'
import { editJob } from './edit-job.ts'
import type { Area } from './handlers.ts'
import { jobSnapshot } from './snapshot.ts'
import { keptSpokenPlaces } from './spoken-places.ts'

/** Places shown beside a photo: more would be noise. */
const SHOWN = 3
/** Photos asked about: after a few answers the suggestions have changed anyway. */
const ASKED = 6
/** Other calls get their turn at least this often while suggestions are worked out. */
const TURN_MS = 12

interface Kept {
  /** The log's head: every change of the job moves it. */
  readonly headHash: string
  readonly placement: Promise<Placement>
}

/** Photos that find their facet. Worked out once for each state of a job, in turns with the desk's other calls. */
export function placementArea(world: DeskWorld): Area<'placement'> {
  const kept = new Map<JobId, Kept>()
  const placesOf = keptSpokenPlaces()
  const placementOf = async (jobId: JobId): Promise<Placement> => {
    const snapshot = jobSnapshot(world.library.db, jobId)
    const { headHash } = snapshot.log
    const known = kept.get(jobId)
    if (known?.headHash === headHash) return known.placement
    const isWanted = () => kept.get(jobId)?.headHash === headHash
    const leftOut = new Set(snapshot.photos.filter(({ tags }) => tags.leftOutBecause !== null).map(({ id }) => id))
    const placement = workOut(placing(snapshot, placesOf), isWanted).then((found) => {
      if (found === null) return placementOf(jobId)
      const isIn = ({ photoId }: { readonly photoId: PhotoId }) => !leftOut.has(photoId)
      return { ...found, suggestions: found.suggestions.filter(isIn), asked: found.asked.filter(isIn) }
    })
    kept.set(jobId, { headHash, placement })
    placement.catch(() => kept.delete(jobId))
    return placement
  }
  return {
    'placement.suggest': ({ jobId }) => placementOf(jobId),
    'placement.accept': async ({ jobId, leastProbability }) => {
      const likely = likelyFacets((await placementOf(jobId)).suggestions, leastProbability)
      return editJob(world, jobId, (db) => {
        const writes = likely.flatMap(({ photoId, facetId }): Write[] => {
          const tags = findPhoto(db, photoId)?.tags
          const isOpen = tags !== undefined && tags.facetId === null && tags.leftOutBecause === null
          if (!isOpen || facetTable.get(db, { jobId, id: facetId }) === null) return []
          return [{ record: 'photo', id: photoId, after: { ...tags, facetId } }]
        })
        return {
          summary: `Take over the suggested facets of ${writes.length === 1 ? '1 photo' : `${writes.length} photos`}, ${percent(leastProbability)} or surer`,
          writes,
          result: { tagged: writes.length },
        }
      })
    },
  }
}

function percent(share: number): string {
  return `${Math.round(share * 1000) / 10} %`
}

/** What is suggested, and what that was worked out from, a step at a time. */
function* placing(job: JobSnapshot, placesOf: PlacesOf) {
  const input = placementOfJob(job, yield* spokenHintsOfJob(job, placesOf))
  const suggestions = yield* suggestingFacets(input)
  return { input, suggestions, asked: yield* findingTellingPhotos(input.photos, suggestions, ASKED) }
}

/** Answers null when somebody asked for a newer state of the job in the meantime. */
async function workOut(work: ReturnType<typeof placing>, isWanted: () => boolean): Promise<Placement | null> {
  // Nothing is begun within the caller's own turn: that is when the caller writes down that this is wanted.
  await afterOthers()
  let turnBegan = performance.now()
  for (;;) {
    const step = work.next()
    if (step.done === true) {
      const { input, suggestions, asked } = step.value
      const open = suggestions.filter(({ isConfirmed }) => !isConfirmed)
      return {
        suggestions: open.map(({ photoId, ranking }) => ({ photoId, ranking: ranking.slice(0, SHOWN) })),
        asked: [...asked],
        frames: learnFrames(input).map(({ residuals: _residuals, ...frame }) => frame),
      }
    }
    if (performance.now() - turnBegan < TURN_MS) continue
    await afterOthers()
    if (!isWanted()) return null
    turnBegan = performance.now()
  }
}
