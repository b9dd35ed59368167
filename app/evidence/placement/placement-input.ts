import type { CameraId, FacetId, PhotoId } from '../../job/ids.ts'
import type { PlanFrame, PlanPoint } from '../../job/places.ts'
import type { Facet } from '../../roof/facet.ts'
import type { Photo } from '../photo.ts'

/** Where a photo belongs: the facet that it shows, or "on the ground" for one taken from beside the house. */
export type PlaceId = FacetId | 'ground'

/** What placement needs to know of a photo; every `Photo` fits through `placementPhotoOf`. */
export interface PlacementPhoto {
  readonly id: PhotoId
  readonly cameraId: CameraId | null
  readonly instantMs: number | null
  readonly position: Photo['file']['position']
  readonly direction: Photo['file']['direction']
}

/** A place that a person confirmed, with the point on the plan where one was pinned. */
export interface ConfirmedPlace {
  readonly photoId: PhotoId
  readonly place: PlaceId
  readonly pin: PlanPoint | null
}

/** Something that speaks for some places without settling the matter, such as words spoken at that time. */
export interface PlaceHint {
  readonly photoId: PhotoId
  /** Relative weights, 0 or more; places that are not listed weigh nothing within the hint. */
  readonly weights: readonly { readonly place: PlaceId; readonly weight: number }[]
}

/** All that placement looks at. */
export interface PlacementInput {
  readonly facets: readonly Facet[]
  readonly frame: PlanFrame
  readonly photos: readonly PlacementPhoto[]
  readonly confirmed: readonly ConfirmedPlace[]
  readonly hints?: readonly PlaceHint[]
  /** Radius that 68 % of the errors of a position without a stated error keep within, metres; 5 when not given. */
  readonly defaultErrorM?: number
  /** False when the cameras were carried by several people, so that one says nothing of where the other was. */
  readonly carriedTogether?: boolean
}

/** A probability of one place. */
export interface RankedPlace {
  readonly place: PlaceId
  readonly probability: number
}

/** The places of a photo, likeliest first. Offered to a person, never a tag by itself. */
export interface PhotoSuggestion {
  readonly photoId: PhotoId
  /** Every facet and the ground; probabilities add up to 1. */
  readonly ranking: readonly RankedPlace[]
  readonly isConfirmed: boolean
}

/** The facts of a photo that placement uses. */
export function placementPhotoOf(photo: Photo): PlacementPhoto {
  const { position, direction } = photo.file
  return { id: photo.id, cameraId: photo.cameraId, instantMs: photo.time.instantMs, position, direction }
}
