import { describe, expect, it } from 'vitest'
import type { Photo } from '../../app/evidence/photo.ts'
import { testPhoto } from '../state/test-photo.ts'
import { gapGroupOf, nextUntagged, nextUntaggedGroup } from './gap-groups.ts'

/** Photos at seconds after the start; `tagged` ones have a facet. */
function walk(...taken: readonly { atS: number; tagged?: boolean }[]): readonly Photo[] {
  return taken.map(({ atS, tagged = false }, k) =>
    testPhoto(`p${k + 1}`, { number: k + 1, instantMs: atS * 1000, facetId: tagged ? 'fa' : null }),
  )
}
const idOf = (photos: readonly Photo[], k: number) => photos[k - 1]?.id ?? expect.fail('no such photo')

describe('groups between pauses', () => {
  const photos = walk({ atS: 0 }, { atS: 8 }, { atS: 19 }, { atS: 60 }, { atS: 65 }, { atS: 200 })

  it('end at a gap of so many seconds', () => {
    expect(gapGroupOf(photos, idOf(photos, 2), 20_000)).toEqual(['p1', 'p2', 'p3'])
    expect(gapGroupOf(photos, idOf(photos, 2), 10_000)).toEqual(['p1', 'p2'])
    expect(gapGroupOf(photos, idOf(photos, 5), 60_000)).toEqual(['p1', 'p2', 'p3', 'p4', 'p5'])
  })

  it('do not depend on the order in which photos are shown', () => {
    expect(gapGroupOf(photos.toReversed(), idOf(photos, 1), 20_000)).toEqual(['p1', 'p2', 'p3'])
  })
})

describe('what is still untagged', () => {
  const photos = walk(
    { atS: 0, tagged: true },
    { atS: 5 },
    { atS: 100, tagged: true },
    { atS: 200 },
    { atS: 205, tagged: true },
    { atS: 210 },
  )

  it('is found photo by photo, from the top again after the last', () => {
    expect(nextUntagged(photos, null)).toBe('p2')
    expect(nextUntagged(photos, idOf(photos, 2))).toBe('p4')
    expect(nextUntagged(photos, idOf(photos, 6))).toBe('p2')
    expect(nextUntagged(walk({ atS: 0, tagged: true }), null)).toBeNull()
  })

  it('is found group by group, without what is tagged in it', () => {
    expect(nextUntaggedGroup(photos, null, 20_000)).toEqual(['p2'])
    expect(nextUntaggedGroup(photos, idOf(photos, 2), 20_000)).toEqual(['p4', 'p6'])
    expect(nextUntaggedGroup(photos, idOf(photos, 4), 20_000)).toEqual(['p2'])
    expect(nextUntaggedGroup(walk({ atS: 0, tagged: true }), null, 20_000)).toEqual([])
  })
})
