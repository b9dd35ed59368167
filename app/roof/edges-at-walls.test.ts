import { describe, expect, it } from 'vitest'
import { corners } from '../../tests/builders/outlines.ts'
import { type RoofEdge, roofEdges } from './edges.ts'
import { facetSchema, type Facet } from './facet.ts'
import { slopeFactor } from './slope.ts'

interface Slope {
  readonly letter: string
  readonly line: string
  readonly pitchRise: number
  readonly facesDeg: number
  readonly eaveHeightFt?: number
}

function slope({ letter, line, pitchRise, facesDeg, eaveHeightFt = 0 }: Slope): Facet {
  return facetSchema.parse({
    id: letter,
    letter,
    outline: corners(line),
    pitchRise,
    downslopeAzimuthDeg: facesDeg,
    from: { outlineId: `outline-${letter}`, edgeId: 'e', eaveHeightFt },
  })
}

const found = (edges: readonly RoofEdge[]) =>
  edges.map(({ kind, facetIds, planLengthFt }) => `${kind} ${facetIds.join('-')} ${planLengthFt.toFixed(2)}`).toSorted()
const on40 = (edges: readonly RoofEdge[]) => edges.filter(({ from, to }) => from.xFt === 40 && to.xFt === 40)

const high = { letter: 'H', line: '0,0 40,0 40,24 0,24', pitchRise: 6 }
const low = { letter: 'L', line: '40,4 60,4 60,20 40,20', pitchRise: 3 }

describe('two slopes at one wall', () => {
  it('at two heights are an edge of the higher one and a step of the lower one', () => {
    const edges = roofEdges(
      [slope({ ...high, facesDeg: 180, eaveHeightFt: 18 }), slope({ ...low, facesDeg: 90, eaveHeightFt: 9 })],
      0,
    )
    expect(found(on40(edges))).toEqual(['rake H 16.00', 'rake H 4.00', 'rake H 4.00', 'step L 16.00'])
    const step = edges.find(({ kind }) => kind === 'step')
    // The low slope runs level along the wall, the high one climbs it at 6:12.
    expect(step?.trueLengthFt).toBeCloseTo(16, 9)
    expect(on40(edges).find(({ kind, planLengthFt }) => kind === 'rake' && planLengthFt > 5)?.trueLengthFt).toBeCloseTo(
      16 * slopeFactor(6),
      9,
    )
  })

  it('at one height all along are what their slopes make of them', () => {
    // Both eaves at 9 ft, both ridges at x = 40.
    const edges = roofEdges(
      [
        slope({ letter: 'W', line: '20,0 40,0 40,16 20,16', pitchRise: 3, facesDeg: 270, eaveHeightFt: 9 }),
        slope({ letter: 'E', line: '40,0 60,0 60,16 40,16', pitchRise: 3, facesDeg: 90, eaveHeightFt: 9 }),
      ],
      0,
    )
    expect(found(on40(edges))).toEqual(['ridge W-E 16.00'])
  })

  it('that pass through each other step down on either hand of the crossing', () => {
    // The high slope climbs from 9 ft to 21 ft over 24 ft; the low one stands at 14 ft along the wall: they cross at y = 10.
    const edges = roofEdges(
      [slope({ ...high, facesDeg: 180, eaveHeightFt: 9 }), slope({ ...low, facesDeg: 90, eaveHeightFt: 9 })],
      0,
    )
    expect(found(on40(edges))).toEqual([
      'rake H 10.00',
      'rake H 4.00',
      'rake H 4.00',
      'step H 6.00',
      'step L 10.00',
      'top-edge L 6.00',
    ])
  })

  it('with a height that nobody gave are told by their slopes alone', () => {
    const edges = roofEdges(
      [slope({ ...high, facesDeg: 180, eaveHeightFt: 18 }), { ...slope({ ...low, facesDeg: 90 }), from: null }],
      0,
    )
    expect(found(on40(edges))).toEqual(['rake H 4.00', 'rake H 4.00', 'step H-L 16.00'])
  })

  it('of one slope that runs on over the wall have no edge there', () => {
    const edges = roofEdges(
      [
        slope({ letter: 'A', line: '0,0 40,0 40,16 0,16', pitchRise: 3, facesDeg: 180, eaveHeightFt: 9 }),
        slope({ letter: 'B', line: '40,0 60,0 60,16 40,16', pitchRise: 3, facesDeg: 180, eaveHeightFt: 9 }),
      ],
      0,
    )
    expect(on40(edges)).toEqual([])
  })
})
