import { describe, expect, it } from 'vitest'
import { facetIdSchema, photoIdSchema } from '../job/ids.ts'
import { spokenPlaceHints } from './place-hints.ts'

const back = facetIdSchema.parse('C')
const left = facetIdSchema.parse('B')
const photo = (instantMs: number | null) => ({ photoId: photoIdSchema.parse('p'), instantMs })
const said = (startMs: number, facetIds: readonly (typeof back)[], isGround = false) => ({
  cue: 0,
  startMs,
  words: 'there',
  facetIds,
  isGround,
})
const recording = {
  recordingStartMs: 1_000_000,
  lengthMs: 3_600_000,
  places: [said(0, [], true), said(60_000, [back]), said(600_000, [left, back])],
}
const weightsAt = (afterMs: number) => spokenPlaceHints([photo(1_000_000 + afterMs)], [recording])[0]?.weights

describe('spoken places as hints for photos', () => {
  it('are the place named last, surest right after it was said', () => {
    expect(weightsAt(60_000)).toEqual([{ place: 'C', weight: 0.9 }])
    expect(weightsAt(540_000)?.[0]?.weight).toBeCloseTo(0.45, 6)
  })

  it('share the weight where the words leave several facets, and know the ground', () => {
    expect(weightsAt(600_000)).toEqual([
      { place: 'B', weight: 0.45 },
      { place: 'C', weight: 0.45 },
    ])
    expect(weightsAt(1000)?.[0]?.place).toBe('ground')
  })

  it('speak once a saying: the order of the walk carries it on to the photos after the first', () => {
    const walk = [60_000, 70_000, 599_000, 700_000].map((afterMs, at) => ({
      photoId: photoIdSchema.parse(`p${at}`),
      instantMs: 1_000_000 + afterMs,
    }))
    const hints = spokenPlaceHints(walk.toReversed(), [recording])
    expect(hints.map(({ photoId }) => photoId)).toEqual(['p0', 'p2'])
    expect(hints[1]?.weights.map(({ place }) => place)).toEqual(['B', 'C'])
  })

  it('say nothing of photos outside the recording or without a time', () => {
    expect(weightsAt(-1)).toBeUndefined()
    expect(weightsAt(3_700_000)).toBeUndefined()
    expect(spokenPlaceHints([photo(null)], [recording])).toEqual([])
  })
})
