import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { at, DOWN, ellHip, facetsOf, gableWing, hip, type Face } from '../../tests/builders/whole-roofs.ts'
import { letterOrder, nextLetters } from './facet-letters.ts'

/** Letters of the faces, in the order of the faces, of a house drawn with its front at the bottom of the sheet. */
function lettersOf(faces: readonly Face[], up = 0): readonly (string | undefined)[] {
  const facets = facetsOf(faces, up)
  const letters = letterOrder(facets, { upAzimuthDeg: up, frontAzimuthDeg: (up + DOWN) % 360 })
  return facets.map(({ id }) => letters.find(({ facetId }) => facetId === id)?.letter)
}

const box = (x: number, y: number, { down = DOWN, pitch = 5 } = {}): Face => ({
  corners: at(`${x},${y} ${x + 10},${y} ${x + 10},${y + 10} ${x},${y + 10}`),
  pitch,
  down,
})

describe('letters of a new plan', () => {
  it('go clockwise seen from above, from the front: front, left, back, right as seen from the street', () => {
    // The hip's faces are listed front, right, back, left.
    expect(lettersOf(hip(60, 40, 5))).toEqual(['A', 'D', 'C', 'B'])
  })

  it('go on clockwise within a side, so from right to left on the front; the outer one of two behind each other is first', () => {
    expect(lettersOf([box(0, 0), box(20, 0), box(40, 0)])).toEqual(['C', 'B', 'A'])
    expect(lettersOf([box(0, 30), box(0, 0)])).toEqual(['B', 'A'])
  })

  it('leave flat parts to the end, and put corner slopes between the sides', () => {
    expect(
      lettersOf([
        box(0, 0, { pitch: 0 }),
        box(20, 0, { down: DOWN + 45 }),
        box(40, 0),
        box(60, 0, { down: DOWN + 90 }),
      ]),
    ).toEqual(['D', 'B', 'A', 'C'])
  })

  it('start with north where the front is not known', () => {
    const facets = facetsOf(hip(60, 40, 5))
    const [first] = letterOrder(facets, { upAzimuthDeg: 0, frontAzimuthDeg: null })
    expect(first).toEqual({ facetId: facets[2]?.id, letter: 'A' })
  })

  it('go on with AA after Z, and BA after AZ', () => {
    const many = Array.from({ length: 60 }, (_, i) => box(i * 12, 0))
    const letters = letterOrder(facetsOf(many), { upAzimuthDeg: 0, frontAzimuthDeg: 180 }).map(({ letter }) => letter)
    expect([letters[25], letters[26], letters[51], letters[52]]).toEqual(['Z', 'AA', 'AZ', 'BA'])
  })

  it('do not depend on the order of the list or on how the sheet is turned', () => {
    const roof = fc.constantFrom(ellHip(5), gableWing(6), hip(60, 40, 5))
    fc.assert(
      fc.property(roof, fc.integer({ min: 0, max: 359 }), fc.nat(5), (faces, up, start) => {
        const letters = lettersOf(faces)
        const turn = start % faces.length
        expect(lettersOf([...faces.slice(turn), ...faces.slice(0, turn)], up)).toEqual([
          ...letters.slice(turn),
          ...letters.slice(0, turn),
        ])
      }),
      { numRuns: 40 },
    )
  })
})

describe('letters of facets that are added', () => {
  const orientation = { upAzimuthDeg: 0, frontAzimuthDeg: 180 }

  it('are those not in use; letters already given are never given again', () => {
    const added = nextLetters(['A', 'b', 'D'], facetsOf([box(20, 0), box(0, 0)]), orientation)
    expect(added.map(({ letter }) => letter)).toEqual(['C', 'E'])
  })

  it('never repeat one in use, whatever is in use', () => {
    const inUse = fc.array(fc.constantFrom('A', 'B', 'C', 'D', 'E', 'Porch', 'é'), { maxLength: 7 })
    fc.assert(
      fc.property(inUse, fc.integer({ min: 1, max: 6 }), (existing, count) => {
        const facets = facetsOf(Array.from({ length: count }, (_, i) => box(i * 12, 0)))
        const letters = nextLetters(existing, facets, orientation).map(({ letter }) => letter)
        expect(new Set([...letters, ...existing]).size).toBe(count + new Set(existing).size)
      }),
    )
  })
})
