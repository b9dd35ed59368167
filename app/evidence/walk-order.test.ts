import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { aPhoto, WALK_STARTED_MS } from '../../tests/builders/records.ts'
import type { Photo, PlacedBetween } from './photo.ts'
import { inWalkOrder, isPlacedByHand, placeAfter, placedWords } from './walk-order.ts'

const timed = (number: number, minute: number): Photo => {
  const photo = aPhoto({ number })
  return { ...photo, time: { ...photo.time, instantMs: WALK_STARTED_MS + minute * 60_000 } }
}
const timeless = (number: number, placedBetween?: PlacedBetween): Photo => {
  const photo = aPhoto({ number, ...(placedBetween === undefined ? {} : { tags: { placedBetween } }) })
  return { ...photo, time: { basis: 'unknown', offsetMinutes: null, correctionMs: 0, instantMs: null } }
}
const numbers = (photos: readonly Photo[]) => photos.map(({ number }) => number)
const placed = (photo: Photo, placedBetween: PlacedBetween | null): Photo =>
  placedBetween === null ? photo : { ...photo, tags: { ...photo.tags, placedBetween } }

describe('photos in the order of the walk', () => {
  const first = timed(1, 10)
  const second = timed(2, 20)
  const third = timed(3, 5)

  it('stand by time, those that nobody placed last', () => {
    expect(numbers(inWalkOrder([first, timeless(4), second, third]))).toEqual([3, 1, 2, 4])
  })

  it('have one without a time where a person put it, which gives it no time', () => {
    const photo = timeless(4, { afterId: first.id, beforeId: second.id })
    expect(numbers(inWalkOrder([first, photo, second, third]))).toEqual([3, 1, 4, 2])
    expect(photo.time.instantMs).toBeNull()
    expect(isPlacedByHand(photo)).toBe(true)
  })

  it('can have one before all others and one after all others', () => {
    const start = timeless(4, { afterId: null, beforeId: third.id })
    const end = timeless(5, { afterId: second.id, beforeId: null })
    expect(numbers(inWalkOrder([end, first, start, second, third]))).toEqual([4, 3, 1, 2, 5])
  })

  it('keep the one put later nearer to the photo it was put after', () => {
    const photos = [first, second, third]
    const x = placed(timeless(4), placeAfter([...photos, timeless(4)], { afterId: first.id, moving: [] }))
    const y = placed(timeless(5), placeAfter([...photos, x], { afterId: first.id, moving: [] }))
    expect(numbers(inWalkOrder([y, ...photos, x]))).toEqual([3, 1, 5, 4, 2])
  })

  it('keep several that were put in one place in the order of their numbers, also at the end', () => {
    const between = { afterId: second.id, beforeId: null }
    expect(numbers(inWalkOrder([timeless(6, between), first, timeless(5, between), second]))).toEqual([1, 2, 5, 6])
  })

  it('leave one whose neighbours are gone, or that only lean on each other, among those that nobody placed', () => {
    const a = timeless(7)
    const b = timeless(8)
    const lean = [placed(a, { afterId: b.id, beforeId: null }), placed(b, { afterId: a.id, beforeId: null })]
    const lost = timeless(9, { afterId: timeless(99).id, beforeId: null })
    expect(numbers(inWalkOrder([...lean, lost, first]))).toEqual([1, 7, 8, 9])
  })

  it('hold every photo once, whatever was placed beside what', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.boolean(), fc.nat(100), fc.nat(12), fc.nat(12)), { maxLength: 12 }), (given) => {
        const bare = given.map(([hasTime, minute], at) => (hasTime ? timed(at + 1, minute) : timeless(at + 1)))
        const photos = bare.map((photo, at) => {
          const [, , after = 0, before = 0] = given[at] ?? []
          const place = { afterId: bare[after]?.id ?? null, beforeId: bare[before]?.id ?? null }
          return photo.time.instantMs === null ? placed(photo, place) : photo
        })
        const order = inWalkOrder(photos)
        expect([...order].sort((a, b) => a.number - b.number)).toEqual(photos)
        const instants = order.flatMap(({ time }) => time.instantMs ?? [])
        expect(instants).toEqual([...instants].sort((a, b) => a - b))
      }),
    )
  })

  it('say in words that the place is a person’s', () => {
    const byId = new Map([first, second].map((photo) => [photo.id, photo]))
    const photo = timeless(4, { afterId: first.id, beforeId: second.id })
    expect(placedWords(photo, byId)).toBe('placed by hand between P-001 and P-002; time not known')
    expect(placedWords(timeless(5, { afterId: null, beforeId: first.id }), byId)).toBe(
      'placed by hand before P-001; time not known',
    )
    expect(placedWords(first, byId)).toBeNull()
  })
})
