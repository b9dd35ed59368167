import type { Photo } from '../../app/evidence/photo.ts'
import { isUntagged } from './photo-filter.ts'

/** How far tagging has come. Photos left out are dealt with and count in nothing else. */
export interface PhotoCounts {
  readonly all: number
  readonly leftOut: number
  readonly untagged: number
  /** Photos in the packet that lack each tag. */
  readonly withoutFacet: number
  readonly withoutComponent: number
  readonly withoutCondition: number
  readonly withoutRole: number
}

/** Counts what is tagged and what is not. */
export function photoCounts(photos: readonly Photo[]): PhotoCounts {
  const kept = photos.filter(({ tags }) => tags.leftOutBecause === null)
  const lacking = (tag: 'facetId' | 'component' | 'condition' | 'role') =>
    kept.filter(({ tags }) => tags[tag] === null).length
  return {
    all: photos.length,
    leftOut: photos.length - kept.length,
    untagged: photos.filter(isUntagged).length,
    withoutFacet: lacking('facetId'),
    withoutComponent: lacking('component'),
    withoutCondition: lacking('condition'),
    withoutRole: lacking('role'),
  }
}
