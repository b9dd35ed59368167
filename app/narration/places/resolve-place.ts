import type { FacetId } from '../../job/ids.ts'
import type { Facet } from '../../roof/facet.ts'
import { facetWords, type House } from '../../roof/front-words.ts'
import { distanceAlong, houseSide } from '../../roof/house-sides.ts'
import { stem } from '../words/stem.ts'
import type { SaidPlace, SideWord } from './said-place.ts'

/** A house with the names of the outlines that its facets rise from. */
export interface NamedHouse extends House {
  readonly outlines: readonly { readonly id: string; readonly name: string }[]
}

/** A facet with all that places are told by. */
interface KnownFacet {
  readonly facet: Facet
  /** 0 front, 2 left, 4 back, 6 right, odd for corners; by the compass where the front is not known. */
  readonly side: number
  /** Words that name parts of the house in the facet's name or its outline's: "garage", "porch". */
  readonly landmarks: ReadonlySet<string>
  /** Its middle, and its ends, as one looks at the front: feet to the right. */
  readonly fromFt: number
  readonly toFt: number
}

/** Turns places as they are said into facets of one house. */
export interface PlaceResolver {
  /** Words that name parts of the house. */
  readonly landmarks: ReadonlySet<string>
  /** Facets that a place can mean, likeliest first; empty where the words don't lead to the plan. */
  readonly facetsOf: (place: SaidPlace) => readonly FacetId[]
}

/** Words in names of facets and outlines that say how a slope lies, not which part of the house it is. */
const NO_LANDMARK = new Set(
  `front back rear left right north south east west side slope main roof house end upper lower inner outer middle part corner smaller flat over door and the of in at
  line with above first second third fourth fifth hip ridge valley eave gable facet a b c d e f g h outline large big small by on to
  north-east south-east south-west north-west`
    .split(/\s+/)
    .map(stem),
)

/** A slope that reaches this far past a line still lies on its side of it. */
const PAST_FT = 1

const FRONT_PLACES: Readonly<Record<SideWord, number | null>> = {
  front: 0,
  left: 2,
  back: 4,
  right: 6,
  north: null,
  east: null,
  south: null,
  west: null,
}
const COMPASS_DEG: Readonly<Partial<Record<SideWord, number>>> = { north: 0, east: 90, south: 180, west: 270 }

/** Prepares a house's facets for many places. */
export function placeResolver(house: NamedHouse): PlaceResolver {
  const known = house.facets.map((facet) => knownFacet(facet, house))
  const landmarks = new Set(known.flatMap((one) => [...one.landmarks]))
  return {
    landmarks,
    facetsOf: (place) => {
      const letter = known.filter(({ facet }) => facet.letter.toUpperCase() === place.letter)
      if (place.letter !== null) return letter.map(({ facet }) => facet.id)
      return resolved(place, { known, house }).map(({ facet }) => facet.id)
    },
  }
}

function knownFacet(facet: Facet, house: NamedHouse): KnownFacet {
  const outline = house.outlines.find(({ id }) => id === facet.from?.outlineId)
  const names = [facet.name === '' ? facetWords(facet, house) : facet.name, outline?.name ?? '']
  const words =
    names
      .join(' ')
      .toLowerCase()
      .match(/[\p{L}-]+/gu) ?? []
  const side = houseSide(facet, house)
  const across = acrossFront(house)
  const along = facet.outline.map((corner) => distanceAlong(corner, across))
  return {
    facet,
    side: side.place,
    landmarks: new Set(words.map(stem).filter((word) => word.length > 2 && !NO_LANDMARK.has(word))),
    fromFt: Math.min(...along),
    toFt: Math.max(...along),
  }
}

/** Unit vector to the right of a person who looks at the front; along the sheet where the front is not known. */
function acrossFront({ upAzimuthDeg, frontAzimuthDeg }: NamedHouse): { x: number; y: number } {
  if (frontAzimuthDeg === null) return { x: 1, y: 0 }
  const radians = ((frontAzimuthDeg - 90 - upAzimuthDeg) * Math.PI) / 180
  return { x: Math.sin(radians), y: Math.cos(radians) }
}

interface Known {
  readonly known: readonly KnownFacet[]
  readonly house: NamedHouse
}

function resolved(place: SaidPlace, at: Known): readonly KnownFacet[] {
  const sides = place.sides.map((side) => (place.isFromInside ? mirrored(side) : side))
  if (place.landmark !== null && place.relation !== 'on' && place.relation !== null) return beside(place, at)
  if (place.landmark === 'door') return overDoor(at)
  if (place.landmark !== null) {
    const own = at.known.filter(({ landmarks }) => landmarks.has(place.landmark ?? ''))
    const [side] = sides
    const facing = side === undefined ? [] : onSide(side, { ...at, known: own })
    return facing.length > 0 ? facing : own
  }
  const [first, second] = sides
  if (first === undefined) return []
  if (second === undefined) return plainFirst(onSide(first, at))
  return partOf(first, second, at)
}

function mirrored(side: SideWord): SideWord {
  return side === 'left' ? 'right' : side === 'right' ? 'left' : side
}

/** Facets that face a side squarely, else those at its corners. */
function onSide(side: SideWord, { known, house }: Known): readonly KnownFacet[] {
  const compass = COMPASS_DEG[side]
  if (compass !== undefined) {
    return known.filter(({ facet }) => {
      const apart = Math.abs(((facet.downslopeAzimuthDeg - compass + 540) % 360) - 180)
      return facet.pitchRise > 0 && apart <= 45
    })
  }
  const wanted = FRONT_PLACES[side]
  if (wanted === null || house.frontAzimuthDeg === null) return []
  const square = known.filter((one) => one.side === wanted)
  if (square.length > 0) return square
  return known.filter((one) => one.side < 8 && (one.side === (wanted + 1) % 8 || one.side === (wanted + 7) % 8))
}

/** "The left side" is the house's own: slopes of a garage or a porch have a name that would have been said. */
function plainFirst(found: readonly KnownFacet[]): readonly KnownFacet[] {
  const plain = found.filter(({ landmarks }) => landmarks.size === 0)
  return plain.length > 0 ? plain : found
}

/** "Left half of the back", "front left". The slope is the side that is not left or right, unless only such is said. */
function partOf(first: SideWord, second: SideWord, at: Known): readonly KnownFacet[] {
  const isAcross = (side: SideWord) => side === 'left' || side === 'right'
  const slope = isAcross(first) ? second : first
  const end = isAcross(first) ? first : second
  const slopes = plainFirst(onSide(slope, at))
  if (slopes.length < 2 || !isAcross(end)) return slopes
  const all = [Math.min(...slopes.map(({ fromFt }) => fromFt)), Math.max(...slopes.map(({ toFt }) => toFt))] as const
  const middle = (all[0] + all[1]) / 2
  const own = slopes.filter(({ fromFt, toFt }) =>
    end === 'left' ? fromFt < middle - PAST_FT : toFt > middle + PAST_FT,
  )
  return own.length > 0 ? own : slopes
}

/** Slopes of the front to the left or right of the door or of a part of the house. */
function beside({ landmark, relation, isFromInside }: SaidPlace, at: Known): readonly KnownFacet[] {
  const fronts = onSide('front', at)
  const isLeft = (relation === 'left-of') !== isFromInside
  if (landmark === 'door') {
    const door = at.house.doorAt
    if (door === undefined || door === null) return plainFirst(fronts)
    const doorFt = distanceAlong(door, acrossFront(at.house))
    return plainFirst(
      fronts.filter(({ fromFt, toFt }) => (isLeft ? fromFt < doorFt - PAST_FT : toFt > doorFt + PAST_FT)),
    )
  }
  const own = at.known.filter(({ landmarks }) => landmarks.has(landmark ?? ''))
  const middle = (Math.min(...own.map(({ fromFt }) => fromFt)) + Math.max(...own.map(({ toFt }) => toFt))) / 2
  return plainFirst(
    fronts.filter(
      (one) => !own.includes(one) && (isLeft ? one.fromFt < middle - PAST_FT : one.toFt > middle + PAST_FT),
    ),
  )
}

function overDoor(at: Known): readonly KnownFacet[] {
  const named = at.known.filter(({ landmarks }) => landmarks.has(stem('entry')) || landmarks.has(stem('entrance')))
  const door = at.house.doorAt ?? null
  if (door === null) return named.length > 0 ? named : plainFirst(onSide('front', at))
  const doorFt = distanceAlong(door, acrossFront(at.house))
  return onSide('front', at).filter(({ fromFt, toFt }) => fromFt <= doorFt && toFt >= doorFt)
}
