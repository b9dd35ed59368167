import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { facetIdSchema, photoIdSchema } from '../../job/ids.ts'
import type { PhotoSuggestion } from './placement-input.ts'
import { findingTellingPhotos, type TellingPhoto } from './telling-photos.ts'

const [a, b] = ['facet-a', 'facet-b'].map((id) => facetIdSchema.parse(id))

interface Shot {
  readonly name: string
  readonly s: number | null
  /** Probability of facet A; the rest is B's. */
  readonly a: number
  readonly isConfirmed?: boolean
}

function asked(shots: readonly Shot[], count: number): readonly TellingPhoto[] {
  const suggestions = shots.map(({ name, a: chance, isConfirmed = false }): PhotoSuggestion => {
    const ranking = [
      { place: a ?? 'ground', probability: chance },
      { place: b ?? 'ground', probability: 1 - chance },
    ] as const
    const byChance = ranking.toSorted((one, other) => other.probability - one.probability)
    return { photoId: photoIdSchema.parse(name), ranking: byChance, isConfirmed }
  })
  const photos = shots.map(({ name, s }) => ({
    id: photoIdSchema.parse(name),
    instantMs: s === null ? null : s * 1000,
  }))
  const work = findingTellingPhotos(photos, suggestions, count)
  for (;;) {
    const step = work.next()
    if (step.done === true) return step.value
  }
}
const names = (shots: readonly Shot[], count: number) => asked(shots, count).map(({ photoId }) => photoId)

describe('photos that a person is asked to place', () => {
  it('are doubtful ones among doubtful ones before one that stands alone', () => {
    const alone = { name: 'alone', s: 9000, a: 0.5 }
    const stay = [0, 10, 20].map((s) => ({ name: `stay-${s}`, s, a: 0.6 }))
    expect(names([alone, ...stay], 2)).toEqual(['stay-10', 'alone'])
  })

  it('each come from a stay of its own', () => {
    const stays = [0, 3600, 7200].flatMap((from) =>
      [0, 10, 20].map((s) => ({ name: `${from}-${s}`, s: from + s, a: 0.7 - from / 100_000 })),
    )
    expect(names(stays, 3).map((name) => name.split('-')[0])).toEqual(['7200', '3600', '0'])
  })

  it('are never ones that a person placed already, nor ones that are sure', () => {
    const shots = [
      { name: 'placed', s: 0, a: 0.5, isConfirmed: true },
      { name: 'sure', s: 10, a: 1 },
    ]
    expect(asked(shots, 5)).toEqual([])
  })

  it('tell of nothing but themselves without a time', () => {
    const shots = [1, 2].map((at) => ({ name: `undated-${at}`, s: null, a: 0.75 }))
    expect(asked(shots, 1)).toEqual([{ photoId: 'undated-1', expectedWrong: 0.25 }])
  })

  it('are at most as many as wanted, each once, and promise no more than the whole doubt', () => {
    const shot = fc.record({ s: fc.option(fc.nat(2000), { nil: null }), a: fc.double({ min: 0, max: 1, noNaN: true }) })
    fc.assert(
      fc.property(fc.array(shot, { maxLength: 30 }), fc.nat(8), (drawn, count) => {
        const shots = drawn.map((one, at) => ({ ...one, name: `photo-${at}` }))
        const answer = asked(shots, count)
        expect(answer.length).toBeLessThanOrEqual(count)
        expect(new Set(answer.map(({ photoId }) => photoId)).size).toBe(answer.length)
        const doubt = shots.reduce((sum, { a: chance }) => sum + Math.min(chance, 1 - chance), 0)
        for (const { expectedWrong } of answer) expect(expectedWrong).toBeLessThanOrEqual(doubt + 1e-9)
      }),
    )
  })
})
