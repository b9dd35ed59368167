import type { CameraId, PhotoId } from '../../job/ids.ts'
import { PLACEMENT_CALIBRATION } from './calibration.ts'
import { placesShown } from './evidence-of-photo.ts'
import type { OffsetGrid } from './offset-grid.ts'
import type { PhotoSuggestion, PlaceId, PlacementInput } from './placement-input.ts'
import { placementScene, type PlacementScene } from './placement-scene.ts'
import { takenTogether, type Take, type TakenInput } from './takes.ts'
import { hearWalk, type HeardPhoto } from './walk.ts'

/**
 * For every photo, in the order given, the probability of each facet and of the ground.
 *
 * Photos in time order are a walk: a hidden Markov chain over the places an inspector can stand on, together with the
 * slowly wandering error of the camera's positions. Each photo adds its position (a Gaussian integrated over the facets),
 * its direction (what lies along the line of sight), what a person confirmed and what hints say. A photo without a
 * time stands by itself.
 *
 * Each camera with positions leads a chain of its own in which the photos of cameras carried along are heard too, with some
 * doubt that they were together; cameras without positions are read from the chain of the camera with the most.
 */
export function suggestFacets(input: PlacementInput): readonly PhotoSuggestion[] {
  const work = suggestingFacets(input)
  for (;;) {
    const step = work.next()
    if (step.done === true) return step.value
  }
}

/** The same in small pieces: it pauses every millisecond or so, so that thousands of photos need not hold up a desk. */
export function* suggestingFacets(input: PlacementInput): Generator<void, readonly PhotoSuggestion[]> {
  const taken = takenTogether(input)
  const scene = placementScene(taken)
  if (scene === null) return []
  const found = new Map<PhotoId, PhotoSuggestion>()
  const keep = (take: Take, { ranking }: PhotoSuggestion) => {
    for (const photoId of take.photoIds) found.set(photoId, { photoId, ranking, isConfirmed: false })
  }
  for (const take of taken.photos) {
    if (take.instantMs !== null) continue
    for (const suggestion of yield* ledBy(scene, [take], take.cameraId)) keep(take, suggestion)
  }
  for (const walk of walksOf(taken)) {
    const leads = leadsOf(walk)
    const [first = null] = leads
    // The camera with the most positions comes last, so that it speaks for those without.
    for (const lead of leads.length === 0 ? [null] : leads.toReversed()) {
      for (const [at, suggestion] of (yield* ledBy(scene, walk, lead)).entries()) {
        const take = walk[at]
        if (take === undefined) continue
        const isRead = take.cameraId === lead || (lead === first && !leads.includes(take.cameraId))
        if (isRead || leads.length === 0) keep(take, suggestion)
      }
    }
  }
  const confirmed = new Map(input.confirmed.map(({ photoId, place }) => [photoId, place]))
  return input.photos.flatMap(({ id }) => {
    const suggestion = found.get(id)
    const place = confirmed.get(id)
    if (suggestion === undefined || place === undefined || !scene.cells.places.includes(place)) return suggestion ?? []
    return settled(suggestion, place)
  })
}

/** A person's word is certain. */
function settled({ photoId, ranking }: PhotoSuggestion, confirmed: PlaceId): PhotoSuggestion {
  const sure = ranking.map(({ place }) => ({ place, probability: Number(place === confirmed) }))
  return { photoId, ranking: sure.toSorted((a, b) => b.probability - a.probability), isConfirmed: true }
}

/** Photos with a time, in its order: all together, or by camera when several people carried them. */
function walksOf({ photos, carriedTogether = true }: TakenInput): readonly (readonly Take[])[] {
  const timed = photos.filter(({ instantMs }) => instantMs !== null)
  const ordered = timed.toSorted((a, b) => (a.instantMs ?? 0) - (b.instantMs ?? 0))
  if (carriedTogether) return ordered.length === 0 ? [] : [ordered]
  const cameras = [...new Set(ordered.map(({ cameraId }) => cameraId))]
  return cameras.map((camera) => ordered.filter(({ cameraId }) => cameraId === camera))
}

/** Cameras that write positions, the one with the most first. */
function leadsOf(walk: readonly Take[]): readonly (CameraId | null)[] {
  const counts = new Map<CameraId | null, number>()
  for (const { cameraId, position } of walk) {
    if (position !== null) counts.set(cameraId, (counts.get(cameraId) ?? 0) + 1)
  }
  return [...counts].toSorted(([, a], [, b]) => b - a).map(([cameraId]) => cameraId)
}

function* ledBy(
  scene: PlacementScene,
  walk: readonly Take[],
  lead: CameraId | null,
): Generator<void, readonly PhotoSuggestion[]> {
  const { grid, photos, states } = yield* hearWalk(scene, walk, lead)
  const suggestions: PhotoSuggestion[] = []
  for (const [at, heard] of photos.entries()) {
    const state = states[at]
    if (state !== undefined) suggestions.push(suggestionOf(scene, heard, { grid, state }))
    yield
  }
  return suggestions
}

function suggestionOf(
  scene: PlacementScene,
  heard: HeardPhoto,
  { grid, state }: { grid: OffsetGrid; state: Float64Array },
): PhotoSuggestion {
  const { places } = scene.cells
  const { photo, evidence, leads, sole, facing } = heard
  const shown = placesShown(evidence, scene.cells, {
    offsetsFt: leads ? grid.stepsFt : Float64Array.of(0),
    standing: leads ? state : overPlaces(reconsidered(state, heard), places.length),
    likelihood: leads ? sole : overPlaces(sole, places.length).map((sum) => sum / grid.stepsFt.length ** 2),
    facing,
  })
  const flat = shown.map((chance) => chance ** PLACEMENT_CALIBRATION.flatten)
  const total = flat.reduce((sum, chance) => sum + chance, 0)
  const ranking = places.map((place, at) => ({ place, probability: (flat[at] ?? 0) / total }))
  return {
    photoId: photo.id,
    ranking: ranking.toSorted((a, b) => b.probability - a.probability),
    isConfirmed: false,
  }
}

/** Where a doubted camera was: what the others make likely, or anywhere, weighed by its own evidence. */
function reconsidered(state: Float64Array, { likelihood, sole }: HeardPhoto): Float64Array {
  const { apart } = PLACEMENT_CALIBRATION
  const others = state.map((chance, at) => (chance > 0 ? chance / (likelihood[at] ?? 1) : 0))
  const mean = others.reduce((sum, chance) => sum + chance, 0) / others.length
  const together = others.map((chance, at) => ((1 - apart) * chance + apart * mean) * (sole[at] ?? 0))
  const total = together.reduce((sum, chance) => sum + chance, 0)
  return total > 0 ? together.map((chance) => chance / total) : state
}

function overPlaces(states: Float64Array, places: number): Float64Array {
  const square = states.length / places
  const sums = new Float64Array(places)
  states.forEach((chance, at) => {
    const place = Math.floor(at / square)
    sums[place] = (sums[place] ?? 0) + chance
  })
  return sums
}
