import { describe, expect, it } from 'vitest'
import { labelDetails } from './label-detail.ts'

const at = (xFt: number, roomFt: number) => ({ at: { xFt, yFt: 0 }, roomFt })

describe('labels of facets', () => {
  it('show as much as there is room for, and nothing in a sliver', () => {
    const places = [at(0, 10), at(100, 6), at(200, 3), at(300, 1.5), at(400, 0.5)]
    expect(labelDetails(places, 4)).toEqual(['full', 'arrow', 'letter', 'small', 'none'])
  })

  it('come out as one looks closer', () => {
    expect(labelDetails([at(0, 0.5)], 12)).toEqual(['small'])
    expect(labelDetails([at(0, 0.5)], 80)).toEqual(['full'])
  })

  it('never stand on each other: the one with more room stays', () => {
    expect(labelDetails([at(0, 2), at(2, 3), at(10, 2)], 4)).toEqual(['none', 'letter', 'small'])
  })
})
