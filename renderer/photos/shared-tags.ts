import type { Photo, PhotoTags } from '../../app/evidence/photo.ts'

/** What several photos say alike of one tag; `mixed` when they differ. */
export type Shared<T> = { readonly kind: 'same'; readonly value: T } | { readonly kind: 'mixed' }

/** What the photos say of each tag. No photo at all says the same as an untagged one. */
export function sharedTags(photos: readonly Photo[]): { readonly [Tag in keyof PhotoTags]: Shared<PhotoTags[Tag]> } {
  return {
    facetId: shared(
      photos.map(({ tags }) => tags.facetId),
      null,
    ),
    component: shared(
      photos.map(({ tags }) => tags.component),
      null,
    ),
    condition: shared(
      photos.map(({ tags }) => tags.condition),
      null,
    ),
    role: shared(
      photos.map(({ tags }) => tags.role),
      null,
    ),
    caption: shared(
      photos.map(({ tags }) => tags.caption),
      '',
    ),
    leftOutBecause: shared(
      photos.map(({ tags }) => tags.leftOutBecause),
      null,
    ),
  }
}

function shared<T>(values: readonly T[], none: T): Shared<T> {
  const [first = none] = values
  return values.every((value) => value === first) ? { kind: 'same', value: first } : { kind: 'mixed' }
}
