import type { PhotoRole } from '../../app/evidence/catalog/keys.ts'
import { photoLabel, type Photo } from '../../app/evidence/photo.ts'
import type { FacetId } from '../../app/job/ids.ts'

/** Which photos the contact sheet shows. Every condition that is set must hold. */
export interface PhotoFilter {
  readonly facet: FacetId | 'any' | 'none'
  readonly role: PhotoRole | 'any' | 'none'
  readonly only: 'all' | 'in-packet' | 'untagged' | 'left-out' | 'with-problems' | 'without-time'
  /** Words that must stand in the caption, the number or the file name. */
  readonly words: string
}

/** The filter that shows every photo. */
export const EVERY_PHOTO: PhotoFilter = { facet: 'any', role: 'any', only: 'all', words: '' }

/** True when nothing has been said yet about where a photo was taken or what it shows. */
export function isUntagged(photo: Photo): boolean {
  const { facetId, component, condition, role, caption, leftOutBecause } = photo.tags
  const said = facetId !== null || component !== null || condition !== null || role !== null || caption !== ''
  return !said && leftOutBecause === null
}

/** The photos that a filter lets through, in the order given. */
export function filteredPhotos(photos: readonly Photo[], filter: PhotoFilter): readonly Photo[] {
  const words = filter.words
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '')
  return photos.filter(
    (photo) =>
      matches(filter.facet, photo.tags.facetId) &&
      matches(filter.role, photo.tags.role) &&
      fitsOnly(photo, filter.only) &&
      words.every((word) => textOf(photo).includes(word)),
  )
}

function matches(wanted: string, value: string | null): boolean {
  if (wanted === 'any') return true
  return wanted === 'none' ? value === null : value === wanted
}

function fitsOnly(photo: Photo, only: PhotoFilter['only']): boolean {
  switch (only) {
    case 'all':
      return true
    case 'in-packet':
      return photo.tags.leftOutBecause === null
    case 'untagged':
      return isUntagged(photo)
    case 'left-out':
      return photo.tags.leftOutBecause !== null
    case 'with-problems':
      return photo.file.problems.length > 0
    case 'without-time':
      return photo.time.instantMs === null
  }
}

function textOf(photo: Photo): string {
  return `${photoLabel(photo.number)} ${photo.file.fileName} ${photo.tags.caption}`.toLowerCase()
}
