import { describe, expect, it } from 'vitest'
import { at, DOWN, facetsOf, gable, hip } from '../../tests/builders/whole-roofs.ts'
import type { House } from './front-words.ts'
import { placeWords } from './place-words.ts'

/** 60 by 40, the front at the bottom of the sheet, which is drawn north-up: the front faces south. Ridge from 20 to 40. */
const hipHouse: House = { facets: facetsOf(hip(60, 40, 5)), upAzimuthDeg: 0, frontAzimuthDeg: 180 }
const p = (xFt: number, yFt: number) => ({ xFt, yFt })

describe('words for a place on the roof', () => {
  it.each([
    { x: 22, y: 19, words: 'near the left end of the ridge' },
    { x: 38, y: 21, words: 'near the right end of the ridge' },
    { x: 30, y: 19, words: 'along the ridge' },
    { x: 5, y: 4, words: 'near the lower end of the hip' },
    { x: 18, y: 17, words: 'near the upper end of the hip' },
    { x: 12, y: 11, words: 'along the hip' },
    { x: 30, y: 1, words: 'along the eave' },
    { x: 10, y: 1, words: 'near the left end of the eave' },
    { x: 1, y: 35, words: 'near the back end of the eave' },
    { x: 30, y: 5, words: 'in the lower third of the slope' },
    { x: 30, y: 10, words: 'in the middle third of the slope' },
    { x: 30, y: 16, words: 'in the upper third of the slope' },
    { x: 30, y: -0.5, words: 'along the eave' },
    { x: 30, y: -5, words: 'off the drawn roof' },
  ])('$x, $y on a hip roof 60 by 40: $words', ({ x, y, words }) => {
    expect(placeWords(p(x, y), hipHouse)).toBe(words)
  })

  it('rakes have a lower and an upper end', () => {
    const house: House = { facets: facetsOf(gable(60, 40, 6)), upAzimuthDeg: 0, frontAzimuthDeg: 180 }
    expect(placeWords(p(1, 3.5), house)).toBe('near the lower end of the rake')
    expect(placeWords(p(1, 10), house)).toBe('along the rake')
  })

  it('short edges have no ends, and a flat part has neither top nor bottom', () => {
    const corners = at('0,0 7,0 7,20 0,20')
    const facets = facetsOf([{ corners, pitch: 5, down: DOWN }])
    const flat = facetsOf([{ corners: at('0,0 20,0 20,20 0,20'), pitch: 0, down: DOWN }])
    expect(placeWords(p(3.5, 1), { facets, upAzimuthDeg: 0, frontAzimuthDeg: 180 })).toBe('near the eave')
    expect(placeWords(p(10, 10), { facets: flat, upAzimuthDeg: 0, frontAzimuthDeg: 180 })).toBe('')
  })

  it('on slopes that face the front, a marked door is named as seen from the street', () => {
    const house = { ...hipHouse, doorAt: p(30, 1) }
    expect(placeWords(p(20, 10), house)).toBe('left of the front door, in the middle third of the slope')
    expect(placeWords(p(40, 1), house)).toBe('right of the front door, along the eave')
    expect(placeWords(p(32, 10), house)).toBe('above the front door, in the middle third of the slope')
    expect(placeWords(p(20, 30), house)).toBe('in the middle third of the slope')
  })

  it('left and right change ends when the front is on the other side', () => {
    const turned = { ...hipHouse, frontAzimuthDeg: 0 }
    expect(placeWords(p(22, 19), turned)).toBe('near the right end of the ridge')
  })

  it('without a front, ends are named by the compass and the door is left out', () => {
    const house = { ...hipHouse, frontAzimuthDeg: null, doorAt: p(30, 1) }
    expect(placeWords(p(22, 19), house)).toBe('near the west end of the ridge')
    expect(placeWords(p(1, 35), house)).toBe('near the north end of the eave')
  })

  it('a place on the line between two facets is on the one that is given', () => {
    const [front, , , left] = hipHouse.facets
    const house = { ...hipHouse, doorAt: p(30, 1) }
    expect(placeWords(p(10, 10), house, front?.id ?? null)).toBe('left of the front door, along the hip')
    expect(placeWords(p(10, 10), house, left?.id ?? null)).toBe('along the hip')
  })
})
