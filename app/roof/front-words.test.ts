import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  at,
  DOWN,
  ellHip,
  facetsOf,
  gable,
  gableWing,
  hip,
  LEFT,
  RIGHT,
  UP,
  type Face,
} from '../../tests/builders/whole-roofs.ts'
import { facetWords, type House } from './front-words.ts'

/** Names of the faces, in order, of a house drawn with its front at the bottom of the sheet. */
function namesOf(
  faces: readonly Face[],
  given: { readonly up?: number; readonly door?: readonly [number, number] } = {},
) {
  const { up = 0, door } = given
  const facets = facetsOf(faces, up)
  const house: House = {
    facets,
    upAzimuthDeg: up,
    frontAzimuthDeg: (up + DOWN) % 360,
    doorAt: door === undefined ? null : { xFt: door[0], yFt: door[1] },
  }
  return facets.map((facet) => facetWords(facet, house))
}

function compassNamesOf(faces: readonly Face[], up = 0) {
  const facets = facetsOf(faces, up)
  return facets.map((facet) => facetWords(facet, { facets, upAzimuthDeg: up, frontAzimuthDeg: null }))
}

const slope = (corners: string, down: number, pitch = 5): Face => ({ corners: at(corners), pitch, down })

/** Three slopes side by side that face the front. */
const row = [
  slope('0,0 10,0 10,10 0,10', DOWN),
  slope('12,0 22,0 22,10 12,10', DOWN),
  slope('24,0 34,0 34,10 24,10', DOWN),
]

describe('names of facets by the front', () => {
  it('a hip roof has a front, a right, a back and a left, as seen from the street', () => {
    expect(namesOf(hip(60, 40, 5))).toEqual(['front', 'right', 'back', 'left'])
  })

  it('left is the side at front azimuth + 90: of a house that faces south, the one that faces west', () => {
    const [facet] = facetsOf([slope('0,0 10,0 10,10 0,10', LEFT)])
    if (facet === undefined) throw new Error('no facet')
    expect(facet.downslopeAzimuthDeg).toBe(270)
    const facing = (frontAzimuthDeg: number) => facetWords(facet, { facets: [facet], upAzimuthDeg: 0, frontAzimuthDeg })
    expect([facing(180), facing(270), facing(0), facing(90)]).toEqual(['left', 'front', 'right', 'back'])
  })

  it('a facet is squarely on a side within 30 degrees, and a corner slope in between', () => {
    const named = [0, 30, 31, 59, 60, 120, 135, 225, 315].map(
      (deg) => namesOf([slope('0,0 9,0 9,9 0,9', (DOWN + deg) % 360)])[0],
    )
    expect(named).toEqual([
      'front',
      'front',
      'front left corner',
      'front left corner',
      'left',
      'left',
      'back left corner',
      'back right corner',
      'front right corner',
    ])
  })

  it('slopes side by side are parts from left to right, also at the back; those of the sides run from front to back', () => {
    expect(namesOf(row)).toEqual(['front, left part', 'front, middle', 'front, right part'])
    expect(namesOf(row.slice(0, 2))).toEqual(['front, left part', 'front, right part'])
    expect(namesOf(row.map((face) => ({ ...face, down: UP })))).toEqual([
      'back, left part',
      'back, middle',
      'back, right part',
    ])
    const side = [slope('0,0 10,0 10,10 0,10', RIGHT), slope('0,12 10,12 10,22 0,22', RIGHT)]
    expect(namesOf(side)).toEqual(['right, front part', 'right, back part'])
  })

  it('four and more are counted from the left', () => {
    const four = [...row, slope('36,0 46,0 46,10 36,10', DOWN)]
    expect(namesOf(four)[1]).toBe('front, second from the left')
    expect(namesOf(four)[3]).toBe('front, fourth from the left')
  })

  it('a slope that drains onto another is the upper one', () => {
    const stacked = [slope('0,0 30,0 30,8 0,8', DOWN, 3), slope('0,8 30,8 30,20 0,20', DOWN, 6)]
    expect(namesOf(stacked)).toEqual(['front, lower', 'front, upper'])
  })

  it('slopes of the same size behind each other that do not drain onto each other are outer and inner', () => {
    const staggered = [slope('0,0 30,0 30,10 0,10', DOWN), slope('5,30 35,30 35,40 5,40', DOWN)]
    expect(namesOf(staggered)).toEqual(['front, outer', 'front, inner'])
  })

  it('a much larger slope is the main one, and the ends of wings are smaller slopes with their place', () => {
    const wings = [
      slope('0,0 60,0 60,17 0,17', DOWN),
      slope('8,-6 22,-6 15,1', DOWN),
      slope('36,-14 58,-14 47,-3', DOWN),
    ]
    expect(namesOf(wings)).toEqual([
      'front, main slope',
      'front, smaller slope at the left',
      'front, smaller slope at the right',
    ])
    expect(namesOf(wings.slice(0, 2))).toEqual(['front, main slope', 'front, smaller slope'])
  })

  it('flat parts are named as such', () => {
    expect(namesOf([slope('0,0 10,0 10,10 0,10', DOWN, 0)])).toEqual(['flat part'])
  })
})

describe('names of facets by the door', () => {
  it('what lies to one side of the door is left or right of it, and what is in front of it or over it says so', () => {
    expect(namesOf(row, { door: [17, -1] })).toEqual([
      'front, left of the door',
      'front, over the door',
      'front, right of the door',
    ])
    expect(namesOf(row, { door: [11, -1] })).toEqual([
      'front, left of the door',
      'front, right of the door, left part',
      'front, right of the door, right part',
    ])
  })

  it('other sides and a single front are not named by the door', () => {
    expect(namesOf(hip(60, 40, 5), { door: [10, 0] })).toEqual(['front', 'right', 'back', 'left'])
  })
})

describe('names of facets by the compass, where the front is not known', () => {
  it('say which way each slope faces', () => {
    expect(compassNamesOf(hip(60, 40, 5))).toEqual(['south slope', 'east slope', 'north slope', 'west slope'])
    expect(compassNamesOf(gable(60, 40, 5), 45)).toEqual(['south-west slope', 'north-east slope'])
  })

  it('tell slopes of one side apart by the compass as well', () => {
    expect(compassNamesOf(row)).toEqual(['south slope, west part', 'south slope, middle', 'south slope, east part'])
  })
})

describe('names of every house', () => {
  const wings = fc.constantFrom(ellHip(5), gableWing(6), hip(60, 40, 5), row, [...hip(60, 40, 5), ...gableWing(6)])
  const cells = fc.uniqueArray(fc.nat(35), { minLength: 2, maxLength: 14 }).chain((places) =>
    fc.array(fc.constantFrom(DOWN, LEFT, 225), { minLength: places.length, maxLength: places.length }).map((downs) =>
      places.map((place, i): Face => {
        const [x, y] = [(place % 6) * 12, Math.floor(place / 6) * 9]
        return slope(`${x},${y} ${x + 10},${y} ${x + 10},${y + 8} ${x},${y + 8}`, downs[i] ?? DOWN)
      }),
    ),
  )

  it('are different for each facet, short enough to store, and do not depend on how the sheet is turned', () => {
    fc.assert(
      fc.property(fc.oneof(wings, cells), fc.integer({ min: 0, max: 359 }), (faces, up) => {
        const names = namesOf(faces, { up })
        expect(new Set(names).size).toBe(faces.length)
        expect(Math.max(...names.map((name) => name.length))).toBeLessThanOrEqual(120)
        expect(names).toEqual(namesOf(faces))
      }),
      { numRuns: 50 },
    )
  })

  it('do not depend on the order in which facets are listed', () => {
    fc.assert(
      fc.property(cells, (faces) => {
        const facets = facetsOf(faces)
        const house = { facets, upAzimuthDeg: 0, frontAzimuthDeg: 180 }
        const backwards = { ...house, facets: facets.toReversed() }
        for (const facet of facets) expect(facetWords(facet, backwards)).toBe(facetWords(facet, house))
      }),
      { numRuns: 20 },
    )
  })
})
