import type { CameraId, PhotoId } from '../../job/ids.ts'
import { PLACEMENT_CALIBRATION } from './calibration.ts'
import type { PhotoEvidence } from './evidence-of-photo.ts'
import { corrected, learnFrames, positionOnPlan, type LearnedFrame } from './learn-frame.ts'
import { acrossShares, sightOver, type Sight } from './line-of-sight.ts'
import { neighbourWeights } from './neighbours.ts'
import type { OffsetHabit } from './offset-grid.ts'
import { planCells, type PlanCells } from './plan-cells.ts'
import type { ConfirmedPlace, PlaceHint } from './placement-input.ts'
import { feet, sigmaFtOf } from './position-error.ts'
import type { Take, TakenInput } from './takes.ts'
import { walkingOver, type Walking } from './walking.ts'

/** What is worked out once for all photos of a job. */
export interface PlacementScene {
  readonly input: TakenInput
  readonly cells: PlanCells
  readonly walking: Walking
  readonly sightOf: (take: Pick<Take, 'direction' | 'looks'>) => Sight
  readonly shares: readonly Float64Array[]
  readonly learned: ReadonlyMap<CameraId | null, LearnedFrame>
  readonly confirmed: ReadonlyMap<PhotoId, ConfirmedPlace>
  readonly hints: ReadonlyMap<PhotoId, readonly PlaceHint[]>
  readonly habitOf: (camera: CameraId | null) => OffsetHabit
}

/** Grid lines along one axis, before and after something was learned of the camera's offset. */
const STEPS = { unknown: 9, learned: 6 }

/** The scene of a job; null without a facet. */
export function placementScene(input: TakenInput): PlacementScene | null {
  const cells = planCells(input.facets)
  if (cells === null) return null
  const neighbours = neighbourWeights(input.facets, input.frame.upAzimuthDeg, cells)
  const shares = acrossShares(neighbours)
  const learned = new Map(learnFrames(input).map((frame) => [frame.cameraId, frame]))
  const cameras = new Set(input.photos.map(({ cameraId }) => cameraId))
  const habits = new Map([...cameras].map((camera) => [camera, habitOf(input, camera, learned.get(camera))]))
  const known = input.confirmed.filter(({ place }) => cells.places.includes(place))
  return {
    input,
    cells,
    shares,
    walking: walkingOver(neighbours, cells.areaSqFt),
    sightOf: sightOver(cells, input, shares),
    learned,
    confirmed: new Map(known.map((place) => [place.photoId, place])),
    hints: hintsByPhoto(input.hints ?? []),
    habitOf: (camera) => habits.get(camera) ?? habitOf(input, camera, undefined),
  }
}

function hintsByPhoto(hints: readonly PlaceHint[]): ReadonlyMap<PhotoId, readonly PlaceHint[]> {
  const byPhoto = new Map<PhotoId, PlaceHint[]>()
  for (const hint of hints) byPhoto.set(hint.photoId, [...(byPhoto.get(hint.photoId) ?? []), hint])
  return byPhoto
}

/** What is known of a photo by itself; when its camera's wander is followed, only the fresh part of the error is left. */
export function evidenceFor(scene: PlacementScene, photo: Take, isFollowed: boolean): PhotoEvidence {
  const { input, sightOf, shares, learned } = scene
  const at = positionOnPlan(photo, input.frame)
  const { freshShare, leastSigmaFt } = PLACEMENT_CALIBRATION
  const habit = scene.habitOf(photo.cameraId)
  // Stated errors of one walk differ by more than its errors do: half of what a photo's own says is believed.
  const sigmaFt = Math.sqrt(statedSigmaFt(input, photo) * habit.typicalFt)
  const frame = learned.get(photo.cameraId)
  const lasting = isFollowed ? 0 : Math.sqrt(Math.max(0, habit.sigmaFt ** 2 - habit.wanderFt ** 2))
  const fresh = freshShare / Math.max(1, photo.fixes)
  const ownFt = sigmaFt * Math.sqrt(isFollowed ? fresh : 1 - freshShare + fresh)
  return {
    position:
      at === null
        ? null
        : { at: frame === undefined ? at : corrected(at, frame), sigmaFt: Math.hypot(ownFt, lasting, leastSigmaFt) },
    sight: sightOf(photo),
    shares,
    said: saidOf(scene, photo),
    pin: scene.confirmed.get(photo.id)?.pin ?? null,
  }
}

function saidOf({ cells, confirmed, hints }: PlacementScene, photo: Take): Float64Array {
  const place = confirmed.get(photo.id)?.place
  if (place !== undefined) {
    const doubt = photo.photoIds.length === 1 ? 0 : PLACEMENT_CALIBRATION.otherThing
    return Float64Array.from(cells.places, (other) => (other === place ? 1 : doubt))
  }
  const said = new Float64Array(cells.places.length).fill(1)
  for (const { weights } of hints.get(photo.id) ?? []) {
    const known = weights.filter(({ place: named }) => cells.places.includes(named))
    const most = known.reduce((top, { weight }) => Math.max(top, weight), 0)
    if (most <= 0) continue
    const doubt = 1 - PLACEMENT_CALIBRATION.hintTrust
    cells.places.forEach((other, at) => {
      const weight = known.find(({ place: named }) => named === other)?.weight ?? 0
      said[at] = (said[at] ?? 0) * (doubt / cells.places.length + (1 - doubt) * (weight / most))
    })
  }
  return said
}

function statedSigmaFt({ defaultErrorM }: TakenInput, { position }: Take): number {
  const stated = position?.errorM
  if (stated === null || stated === undefined) return sigmaFtOf(defaultErrorM ?? PLACEMENT_CALIBRATION.defaultErrorM)
  return sigmaFtOf(stated) * PLACEMENT_CALIBRATION.statedErrorScale
}

function habitOf(input: TakenInput, camera: CameraId | null, learned: LearnedFrame | undefined): OffsetHabit {
  const sigmas = input.photos
    .filter(({ cameraId, position }) => cameraId === camera && position !== null)
    .map((photo) => statedSigmaFt(input, photo))
    .toSorted((a, b) => a - b)
  const typical = sigmas[Math.floor(sigmas.length / 2)] ?? sigmaFtOf(PLACEMENT_CALIBRATION.defaultErrorM)
  const wanderFt = typical * Math.sqrt(1 - PLACEMENT_CALIBRATION.freshShare)
  const lastingFt =
    learned === undefined ? feet(PLACEMENT_CALIBRATION.offsetSigmaM) : (1.2 * typical) / Math.sqrt(learned.photoCount)
  return {
    steps: learned === undefined ? STEPS.unknown : STEPS.learned,
    typicalFt: typical,
    sigmaFt: Math.hypot(wanderFt, lastingFt),
    wanderFt,
    memoryS: PLACEMENT_CALIBRATION.wanderMemoryS,
  }
}
