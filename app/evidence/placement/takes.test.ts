import { describe, expect, it } from 'vitest'
import { cameraIdSchema, facetIdSchema, photoIdSchema } from '../../job/ids.ts'
import type { PlacementPhoto } from './placement-input.ts'
import { takenTogether } from './takes.ts'

const one = cameraIdSchema.parse('one')
const other = cameraIdSchema.parse('other')
const frame = { upAzimuthDeg: 0, anchor: { latDeg: 28, lonDeg: -82 } }

function photo(name: string, seconds: number | null, given: Partial<PlacementPhoto> = {}): PlacementPhoto {
  return {
    id: photoIdSchema.parse(name),
    cameraId: one,
    instantMs: seconds === null ? null : seconds * 1000,
    position: null,
    direction: null,
    ...given,
  }
}

const at = (latDeg: number) => ({ latDeg, lonDeg: -82, altitudeM: null, errorM: 5 })
const facing = (azimuthDeg: number) => ({ azimuthDeg, reference: 'true' as const })
const taken = (photos: readonly PlacementPhoto[]) =>
  takenTogether({ facets: [], frame, photos, confirmed: [] }).photos.map(({ photoIds }) => photoIds.join(' '))

describe('photos taken together', () => {
  it('follow each other within seconds, by camera and whatever their order', () => {
    expect(taken([photo('c', 8), photo('a', 0), photo('b', 4, { cameraId: other }), photo('d', 300)])).toEqual([
      'a c',
      'b',
      'd',
    ])
  })

  it('face about the same way', () => {
    const turn = (deg: number) => photo(`${deg}`, deg / 100, { direction: facing(deg) })
    expect(taken([turn(10), turn(30), turn(200)])).toEqual(['10 30', '200'])
  })

  it('are never two that somebody confirmed of different places, and none without a time', () => {
    const photos = [photo('a', 0), photo('b', 2), photo('x', null), photo('y', null)]
    const { photos: takes, confirmed } = takenTogether({
      facets: [],
      frame,
      photos,
      confirmed: photos
        .slice(0, 2)
        .map(({ id }) => ({ photoId: id, place: facetIdSchema.parse(`on-${id}`), pin: null })),
    })
    expect(takes.map(({ photoIds }) => photoIds.join(' ')).toSorted()).toEqual(['a', 'b', 'x', 'y'])
    expect(confirmed.map(({ photoId }) => photoId)).toEqual(['a', 'b'])
  })

  it('have one mean direction across north and one position that a wild one does not carry off', () => {
    const photos = [28, 28.00002, 28.00004, 28.7].map((latDeg, index) =>
      photo(`${index}`, 2 * index, { position: at(latDeg), direction: facing(index % 2 === 0 ? 350 : 20) }),
    )
    const [take] = takenTogether({ facets: [], frame, photos, confirmed: [] }).photos
    expect(take?.direction?.azimuthDeg).toBeCloseTo(5, 6)
    expect(take?.position?.latDeg).toBeCloseTo(28.00003, 6)
    expect(take).toMatchObject({ fixes: 4, looks: 4 })
  })
})
