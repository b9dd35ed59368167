import { describe, expect, it } from 'vitest'
import { corners, outlineOf, ringOf } from '../../../tests/builders/outlines.ts'
import { buildRoofBeside } from './build-roof-beside.ts'
import { roofFaultSentence } from './roof-faults.ts'

const house = { ...outlineOf('0,0 40,0 40,30 0,30', 6), eaveHeightFt: 18 }

describe('a roof beside others', () => {
  it('is the roof over its outline when they only share a wall', () => {
    const garage = { ...outlineOf('40,5 60,5 60,25 40,25', [4, 4, 4, 0]), eaveHeightFt: 9 }
    expect(buildRoofBeside(garage, [house])).toMatchObject({ ok: true, roof: { facets: { length: 3 } } })
    expect(buildRoofBeside(house, [garage])).toMatchObject({ ok: true, roof: { facets: { length: 4 } } })
  })

  it('may stand in a courtyard of another', () => {
    const around = {
      outer: ringOf(corners('0,0 60,0 60,60 0,60'), 6),
      courtyards: [ringOf(corners('20,20 40,20 40,40 20,40'), 6)],
    }
    const inside = outlineOf('25,25 35,25 35,35 25,35', 6)
    expect(buildRoofBeside(inside, [around]).ok).toBe(true)
    expect(buildRoofBeside(around, [inside]).ok).toBe(true)
  })

  it.each([
    ['run into each other', '30,10 50,10 50,20 30,20', 'at 40.0 ft across'],
    ['lie in each other', '10,10 20,10 20,20 10,20', 'at 15.0 ft across, 10.0 ft up'],
    ['are the same', '0,0 40,0 40,30 0,30', 'at 20.0 ft across, 0.0 ft up'],
    ['share three walls', '20,0 40,0 40,30 20,30', 'ft across'],
  ])('is a fault that names the other and the place when they %s', (_what, second, where) => {
    const far = outlineOf('100,0 140,0 140,30 100,30', 6)
    for (const [one, other] of [
      [house, outlineOf(second, 4)],
      [outlineOf(second, 4), house],
    ] as const) {
      const result = buildRoofBeside(one, [far, other])
      const sentences = result.ok ? [] : result.faults.map(roofFaultSentence)
      expect(sentences).toHaveLength(1)
      expect(sentences[0]).toContain('This outline and outline 2 cover the same place')
      expect(sentences[0]).toContain(where)
    }
  })

  it('tells of the outline itself first', () => {
    expect(buildRoofBeside(outlineOf('50,0 60,0', 4), [house])).toEqual({
      ok: false,
      faults: [{ kind: 'too-few-corners', ring: 0 }],
    })
  })
})
