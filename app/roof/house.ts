import type { PlanFrame, PlanPoint } from '../job/places.ts'
import type { Facet } from './facet.ts'
import { facetWords, type House } from './front-words.ts'

/** What the job sheet says about the house that places are named by. */
interface HouseFacts {
  readonly frontAzimuthDeg: number | null
  /** The front door on the plan, where someone marked it. */
  readonly doorAt?: PlanPoint | null
}

/** A roof with all that its places are named by. */
export function houseOf(facets: readonly Facet[], frame: PlanFrame, property: HouseFacts): House {
  const { frontAzimuthDeg, doorAt = null } = property
  return { facets, upAzimuthDeg: frame.upAzimuthDeg, frontAzimuthDeg, doorAt }
}

/** The name that a person gave a facet or, where none was given, the plain words for where it is. */
export function facetName(facet: Facet, house: House): string {
  const given = facet.name.trim()
  return given === '' ? facetWords(facet, house) : given
}
