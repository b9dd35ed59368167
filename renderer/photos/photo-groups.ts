import type { Photo } from '../../app/evidence/photo.ts'
import { isPlacedByHand } from '../../app/evidence/walk-order.ts'
import type { FacetId } from '../../app/job/ids.ts'
import type { Facet } from '../../app/roof/facet.ts'

export type PhotoGrouping = 'none' | 'facet' | 'gap'

/** Photos that stand together on the contact sheet. */
export interface PhotoGroup {
  readonly about: { kind: 'all' } | { kind: 'facet'; facet: Facet | null } | { kind: 'stretch' } | { kind: 'no-time' }
  readonly photos: readonly Photo[]
}

/** A pause this long between two photos starts a new stretch of the walk, unless another is chosen. */
export const GAP_MS = 3 * 60_000

/** What photos are grouped by, and how long a pause has to be to part two groups. */
export interface Grouping {
  readonly grouping: PhotoGrouping
  readonly gapMs: number
}

/** Groups photos that are already in order; empty groups are left away. */
export function groupedPhotos(
  photos: readonly Photo[],
  { grouping, gapMs }: Grouping,
  facets: readonly Facet[],
): readonly PhotoGroup[] {
  switch (grouping) {
    case 'none':
      return photos.length === 0 ? [] : [{ about: { kind: 'all' }, photos }]
    case 'facet':
      return byFacet(photos, facets)
    case 'gap':
      return byGap(photos, gapMs)
  }
}

function byFacet(photos: readonly Photo[], facets: readonly Facet[]): readonly PhotoGroup[] {
  const byId = new Map<FacetId | null, Photo[]>()
  const known = new Set(facets.map((facet) => facet.id))
  for (const photo of photos) {
    const id = photo.tags.facetId !== null && known.has(photo.tags.facetId) ? photo.tags.facetId : null
    const own = byId.get(id)
    if (own === undefined) byId.set(id, [photo])
    else own.push(photo)
  }
  const inLetterOrder = [...facets].sort((a, b) => a.letter.localeCompare(b.letter, 'en', { numeric: true }))
  return [null, ...inLetterOrder].flatMap((facet) => {
    const own = byId.get(facet?.id ?? null)
    return own === undefined ? [] : [{ about: { kind: 'facet' as const, facet }, photos: own }]
  })
}

function byGap(photos: readonly Photo[], gapMs: number): readonly PhotoGroup[] {
  const stretches: Photo[][] = []
  const timeless: Photo[] = []
  let lastMs: number | null = null
  for (const photo of photos) {
    const { instantMs } = photo.time
    const open = stretches.at(-1)
    if (instantMs === null) {
      if (!isPlacedByHand(photo)) timeless.push(photo)
      else if (open === undefined) stretches.push([photo])
      else open.push(photo)
      continue
    }
    if (open === undefined || (lastMs !== null && Math.abs(instantMs - lastMs) > gapMs)) stretches.push([photo])
    else open.push(photo)
    lastMs = instantMs
  }
  return [
    ...stretches.map((stretch) => ({ about: { kind: 'stretch' as const }, photos: stretch })),
    ...(timeless.length === 0 ? [] : [{ about: { kind: 'no-time' as const }, photos: timeless }]),
  ]
}
