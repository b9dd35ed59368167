import { describe, expect, it } from 'vitest'
import { facetsOf, gable, hip } from '../../tests/builders/whole-roofs.ts'
import { facetIdSchema } from '../job/ids.ts'
import { facetName, houseOf } from './house.ts'

const frame = { upAzimuthDeg: 0, anchor: null }

describe('the name of a facet', () => {
  it('is the one that a person gave it', () => {
    const [south, north] = facetsOf(gable(60, 40, 6))
    if (south === undefined || north === undefined) throw new Error('A gable has two slopes.')
    const named = { ...south, name: ' over the kitchen ' }
    expect(facetName(named, houseOf([named, north], frame, { frontAzimuthDeg: 180 }))).toBe('over the kitchen')
    expect(facetName(north, houseOf([named, north], frame, { frontAzimuthDeg: 180 }))).toBe('back')
  })

  it('tells the slopes of the front apart by the door as soon as one is marked', () => {
    // Two hip roofs side by side, both with a front slope.
    const [left = [], right = []] = [facetsOf(hip(30, 30, 5)), facetsOf(hip(30, 30, 5))]
    const moved = right.map((facet) => ({
      ...facet,
      id: facetIdSchema.parse(`${facet.id}-right`),
      outline: facet.outline.map(({ xFt, yFt }) => ({ xFt: xFt + 40, yFt })),
    }))
    const [leftFront, rightFront] = [left[0], moved[0]]
    if (leftFront === undefined || rightFront === undefined) throw new Error('A hip roof has four slopes.')
    const without = houseOf([...left, ...moved], frame, { frontAzimuthDeg: 180 })
    const withDoor = houseOf([...left, ...moved], frame, { frontAzimuthDeg: 180, doorAt: { xFt: 35, yFt: -1 } })
    expect(facetName(leftFront, without)).toBe('front, left part')
    expect(facetName(leftFront, withDoor)).toBe('front, left of the door')
    expect(facetName(rightFront, withDoor)).toBe('front, right of the door')
  })
})
