import { describe, expect, it } from 'vitest'
import { photoSchema, type Photo } from '../../app/evidence/photo.ts'
import type { PhotoId } from '../../app/job/ids.ts'
import { facetSchema } from '../../app/roof/facet.ts'
import { EVERY_PHOTO, filteredPhotos, isUntagged } from './photo-filter.ts'
import { GAP_MS, groupedPhotos } from './photo-groups.ts'
import { sortedPhotos } from './photo-order.ts'
import { sheetRows, steppedPhoto } from './sheet-rows.ts'
import { picked } from './sheet-selection.ts'

const START_MS = Date.UTC(2026, 2, 14, 15, 0)

function photo(number: number, more: { atMin?: number | null; tags?: object; problems?: object[] } = {}): Photo {
  const { atMin = number } = more
  return photoSchema.parse({
    id: `p${number}`,
    number,
    cameraId: null,
    file: {
      sha256: 'a'.repeat(64),
      bytes: 1000,
      fileName: `DSC_${number}.JPG`,
      mediaType: 'image/jpeg',
      widthPx: 40,
      heightPx: 30,
      orientation: 1,
      camera: { make: '', model: '', serial: '' },
      position: null,
      direction: null,
      written: { tag: null, raw: null, local: null, offsetMinutes: null, gpsUtcMs: null },
      problems: more.problems ?? [],
    },
    tags: more.tags ?? {},
    time: {
      basis: 'unknown',
      offsetMinutes: 0,
      correctionMs: 0,
      instantMs: atMin === null ? null : START_MS + atMin * 60_000,
    },
    takenInAtMs: START_MS,
    preview: 'ready',
  })
}

const byPause = { grouping: 'gap', gapMs: GAP_MS } as const
const ids = (photos: readonly Photo[]) => photos.map((p) => p.id)
const facetA = facetSchema.parse({
  id: 'fa',
  letter: 'A',
  outline: [
    { xFt: 0, yFt: 0 },
    { xFt: 9, yFt: 0 },
    { xFt: 9, yFt: 9 },
  ],
  pitchRise: 4,
  downslopeAzimuthDeg: 0,
})

describe('the order of photos', () => {
  const photos = [photo(1, { atMin: 5 }), photo(2, { atMin: null }), photo(3, { atMin: 1 }), photo(4, { atMin: 5 })]

  it('is by time, those without a time last', () => {
    expect(ids(sortedPhotos(photos, 'time'))).toEqual(['p3', 'p1', 'p4', 'p2'])
  })

  it('is by number', () => {
    expect(ids(sortedPhotos(photos.toReversed(), 'number'))).toEqual(['p1', 'p2', 'p3', 'p4'])
  })
})

describe('grouping by a gap in time', () => {
  it('starts a new group after a pause of more than three minutes and keeps photos without a time apart', () => {
    const photos = [0, 2, 5, 8.1, 9, null].map((atMin, i) => photo(i + 1, { atMin }))
    const groups = groupedPhotos(photos, byPause, [])
    expect(groups.map((g) => [g.about.kind, ids(g.photos)])).toEqual([
      ['stretch', ['p1', 'p2', 'p3']],
      ['stretch', ['p4', 'p5']],
      ['no-time', ['p6']],
    ])
  })

  it('has no groups without photos', () => {
    expect(groupedPhotos([], byPause, [])).toEqual([])
    expect(groupedPhotos([], { ...byPause, grouping: 'none' }, [])).toEqual([])
  })
})

describe('grouping by facet', () => {
  it('puts photos without a facet, or with one that is gone, first', () => {
    const photos = [photo(1, { tags: { facetId: 'fa' } }), photo(2), photo(3, { tags: { facetId: 'gone' } })]
    const groups = groupedPhotos(photos, { ...byPause, grouping: 'facet' }, [facetA])
    expect(
      groups.map((g) => [g.about.kind === 'facet' ? (g.about.facet?.letter ?? null) : '?', ids(g.photos)]),
    ).toEqual([
      [null, ['p2', 'p3']],
      ['A', ['p1']],
    ])
  })
})

describe('filtering', () => {
  const photos = [
    photo(1, { tags: { facetId: 'fa', role: 'close', caption: 'Broken corner, two tiles' } }),
    photo(2),
    photo(3, { tags: { leftOutBecause: 'blurred' } }),
    photo(4, { problems: [{ about: 'time', text: 'No date.' }], atMin: null }),
  ]
  const shown = (filter: object) => ids(filteredPhotos(photos, { ...EVERY_PHOTO, ...filter }))

  it('finds untagged photos; one left out has been dealt with', () => {
    expect(photos.map(isUntagged)).toEqual([false, true, false, true])
    expect(shown({ only: 'untagged' })).toEqual(['p2', 'p4'])
  })

  it('finds by facet, role, problems, time and words', () => {
    expect(shown({ facet: 'fa' })).toEqual(['p1'])
    expect(shown({ facet: 'none', role: 'none' })).toEqual(['p2', 'p3', 'p4'])
    expect(shown({ only: 'left-out' })).toEqual(['p3'])
    expect(shown({ only: 'in-packet' })).toEqual(['p1', 'p2', 'p4'])
    expect(shown({ only: 'with-problems' })).toEqual(['p4'])
    expect(shown({ only: 'without-time' })).toEqual(['p4'])
    expect(shown({ words: 'TILES broken' })).toEqual(['p1'])
    expect(shown({ words: 'p-002' })).toEqual(['p2'])
  })
})

describe('moving on the sheet', () => {
  const photos = [1, 2, 3, 4, 5, 6, 7].map((n) => photo(n, { atMin: n < 6 ? n : n + 30 }))
  const rows = sheetRows(groupedPhotos(photos, byPause, []), 3)
  const step = (from: number, way: Parameters<typeof steppedPhoto>[2]) => steppedPhoto(rows, photo(from).id, way)

  it('lays headings and lines out', () => {
    expect(rows.map((row) => (row.kind === 'heading' ? 'heading' : row.photos.length))).toEqual([
      'heading',
      3,
      2,
      'heading',
      2,
    ])
  })

  it('goes sideways across lines and groups, and stays at the ends', () => {
    expect(step(3, 'right')).toBe('p4')
    expect(step(6, 'left')).toBe('p5')
    expect(step(1, 'left')).toBe('p1')
    expect(step(7, 'right')).toBe('p7')
  })

  it('goes up and down in the column, or to the end of a shorter line', () => {
    expect(step(3, 'down')).toBe('p5')
    expect(step(4, 'down')).toBe('p6')
    expect(step(7, 'up')).toBe('p5')
    expect(step(2, 'up')).toBe('p2')
    expect(step(4, 'last')).toBe('p7')
  })
})

describe('picking photos', () => {
  const order = [1, 2, 3, 4, 5].map((n) => photo(n).id)
  const id = (n: number): PhotoId => photo(n).id

  it('picks one, adds others and takes one away', () => {
    const one = picked(null, id(2), { how: 'alone', order })
    const two = picked(one, id(4), { how: 'toggle', order })
    expect(two).toEqual({ ids: ['p2', 'p4'], lead: 'p4', anchor: 'p4' })
    expect(picked(two, id(4), { how: 'toggle', order }).ids).toEqual(['p2'])
  })

  it('keeps the last one', () => {
    const one = picked(null, id(2), { how: 'alone', order })
    expect(picked(one, id(2), { how: 'toggle', order })).toEqual(one)
  })

  it('picks a range either way, always from where it began', () => {
    const one = picked(null, id(3), { how: 'alone', order })
    const down = picked(one, id(5), { how: 'range', order })
    expect(down.ids).toEqual(['p3', 'p4', 'p5'])
    expect(picked(down, id(1), { how: 'range', order }).ids).toEqual(['p1', 'p2', 'p3'])
  })
})
