import type { CameraId } from '../../job/ids.ts'
import { PLACEMENT_CALIBRATION } from './calibration.ts'
import { heardFromAll, type ChainTables, type Moment } from './chain.ts'
import { likelihoods, type Likelihoods, type PhotoEvidence } from './evidence-of-photo.ts'
import { fromUphillDeg } from './facing.ts'
import { facingFactors, learnHabits, usualHabits, type Habits, type PlaceMoment } from './habits.ts'
import { offsetGrid, type OffsetGrid } from './offset-grid.ts'
import { evidenceFor, type PlacementScene } from './placement-scene.ts'
import type { Take } from './takes.ts'

/** A photo of a walk with all that was made of it. */
export interface HeardPhoto extends Moment {
  readonly photo: Take
  readonly evidence: PhotoEvidence
  /** Its camera leads the chain, whose offsets are this camera's. */
  readonly leads: boolean
  /** What the photo put in by itself, as far as takes in a row count; `likelihood` has the doubt that its camera was elsewhere. */
  readonly sole: Float64Array
  /** By how much each place's own photos are likelier in the photo's direction. */
  readonly facing: Float64Array
}

/** A walk after all its photos were heard. */
export interface HeardWalk {
  readonly grid: OffsetGrid
  readonly photos: readonly HeardPhoto[]
  /** For each photo the probability of every place and offset. */
  readonly states: readonly Float64Array[]
}

/** A photo before anything is known of habits. */
interface Taken extends Omit<PlaceMoment, keyof Likelihoods> {
  readonly photo: Take
  readonly evidence: PhotoEvidence
  readonly leads: boolean
  readonly parts: Likelihoods
}

/**
 * Hears the photos of a walk in their order, led by the offsets of one camera. A first hearing finds the offsets, at which
 * the inspector's habits are learned from the places alone; a second one goes by both.
 */
export function* hearWalk(
  scene: PlacementScene,
  photos: readonly Take[],
  lead: CameraId | null,
): Generator<void, HeardWalk> {
  const grid = gridOf(scene, photos, lead)
  const taken: Taken[] = []
  for (const [at, photo] of photos.entries()) {
    taken.push(takenAt(scene, photo, { grid, lead, before: photos[at - 1] }))
    yield
  }
  const places = scene.cells.places.length
  const square = grid.stepsFt.length ** 2
  const start = photos.length === 1 ? scene.walking.usual : scene.walking.start
  const tables: ChainTables = {
    places,
    stages: scene.walking.stages,
    steps: grid.stepsFt.length,
    start: Float64Array.from({ length: places * square }, (_, at) => {
      return (start[Math.floor(at / square)] ?? 0) * (grid.start[at % square] ?? 0)
    }),
    placeAfter: scene.walking.after,
    offsetAfter: grid.after,
  }
  const atFirst = yield* hear(taken, tables, usualHabits(taken.map(alone), places))
  const byPlace = taken.map((one, at): PlaceMoment => {
    const state = atFirst.states[at] ?? tables.start
    return {
      ...one,
      own: overOffsets(one.parts.own, state, square),
      across: overOffsets(one.parts.across, state, square),
    }
  })
  const habits = yield* learnHabits(byPlace, { ...tables, start })
  const { photos: heard, states } = yield* hear(taken, tables, habits)
  return { grid, photos: heard, states }
}

/** Likelihoods of the places, at the offsets that a state makes likely. */
function overOffsets(likelihood: Float64Array, state: Float64Array, square: number): Float64Array {
  const offsets = new Float64Array(square)
  const places = new Float64Array(likelihood.length / square)
  for (let from = 0; from < state.length; from += square) {
    for (let offset = 0; offset < square; offset++)
      offsets[offset] = (offsets[offset] ?? 0) + (state[from + offset] ?? 0)
  }
  for (let place = 0; place < places.length; place++) {
    let sum = 0
    for (let offset = 0; offset < square; offset++) {
      sum += (likelihood[place * square + offset] ?? 0) * (offsets[offset] ?? 0)
    }
    places[place] = sum
  }
  return places
}

/** Nothing is followed where no position is heard. */
function gridOf(scene: PlacementScene, photos: readonly Take[], lead: CameraId | null): OffsetGrid {
  const leading = photos.filter(({ cameraId, position }) => cameraId === lead && position !== null)
  const habit = scene.habitOf(lead)
  return offsetGrid(leading.length < 2 ? { ...habit, steps: 1 } : habit)
}

function takenAt(
  scene: PlacementScene,
  photo: Take,
  { grid, lead, before }: { grid: OffsetGrid; lead: CameraId | null; before: Take | undefined },
): Taken {
  const leads = photo.cameraId === lead
  const evidence = evidenceFor(scene, photo, leads && grid.stepsFt.length > 1)
  const parts = likelihoods(evidence, scene.cells, leads ? grid.stepsFt : Float64Array.of(0))
  const square = grid.stepsFt.length ** 2
  const instantMs = photo.instantMs ?? 0
  return {
    photo,
    evidence,
    leads,
    // A camera that doesn't lead has its position heard with all its error, the same at every offset of the leading one.
    parts: leads ? parts : { own: spread(parts.own, square), across: spread(parts.across, square) },
    seconds: (instantMs - (before?.instantMs ?? instantMs)) / 1000,
    fromUphillDeg: fromUphillDeg(photo, scene.input.facets),
    isHinted: scene.hints.has(photo.id),
  }
}

function alone(taken: Taken): PlaceMoment {
  return { ...taken, ...taken.parts }
}

function spread(places: Float64Array, square: number): Float64Array {
  const out = new Float64Array(places.length * square)
  places.forEach((chance, place) => out.fill(chance, place * square, (place + 1) * square))
  return out
}

function* hear(taken: readonly Taken[], tables: ChainTables, habits: Habits): Generator<void, Omit<HeardWalk, 'grid'>> {
  const photos = taken.map((one) => heardAs(one, habits, tables.places))
  const { states } = yield* heardFromAll(photos, tables, habits.welcome)
  return { photos, states }
}

function heardAs(
  { photo, evidence, leads, parts, seconds, ...taken }: Taken,
  habits: Habits,
  places: number,
): HeardPhoto {
  const facing = facingFactors(habits.facing, taken.fromUphillDeg, places)
  const sole = new Float64Array(parts.own.length)
  const square = sole.length / places
  facing.forEach((factor, place) => {
    for (let at = place * square; at < (place + 1) * square; at++) {
      sole[at] = ((parts.own[at] ?? 0) * factor + (parts.across[at] ?? 0)) ** PLACEMENT_CALIBRATION.takeWorth
    }
  })
  return { photo, evidence, leads, seconds, sole, facing, likelihood: leads ? sole : doubted(sole) }
}

/** Some of the likelihood spread evenly: its camera may have been elsewhere at that moment. */
function doubted(likelihood: Float64Array): Float64Array {
  const { apart } = PLACEMENT_CALIBRATION
  const mean = likelihood.reduce((sum, chance) => sum + chance, 0) / likelihood.length
  return likelihood.map((chance) => (1 - apart) * chance + apart * mean)
}
