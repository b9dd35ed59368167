import { describe, expect, it } from 'vitest'
import { aFinding } from '../../tests/builders/records.ts'
import { tally } from './tally.ts'

describe('a tally', () => {
  it('adds only what was counted exactly, and keeps everything else apart', () => {
    const three = aFinding({ extent: { kind: 'exactly', count: 3 } })
    const four = aFinding({ extent: { kind: 'exactly', count: 4 } })
    const apart = [
      aFinding({ extent: { kind: 'at-least', count: 100 } }),
      aFinding({ extent: { kind: 'about', count: 50 } }),
      aFinding({ extent: { kind: 'several' } }),
      aFinding({ extent: { kind: 'examples' } }),
      aFinding({ extent: { kind: 'whole-facet' } }),
      aFinding({ extent: { kind: 'length', lengthFt: 14 } }),
      aFinding({ extent: { kind: 'area', areaSqFt: 200 } }),
      aFinding(),
    ]
    const [row, ...others] = tally([three, ...apart, four])
    expect(others).toEqual([])
    expect(row?.counted).toEqual({ count: 7, findings: [three, four] })
    expect(row?.apart).toEqual(apart)
  })

  it('does not add one component or condition to another', () => {
    const rows = tally([
      aFinding({ extent: { kind: 'exactly', count: 1 } }),
      aFinding({ condition: 'corner-break', extent: { kind: 'exactly', count: 1 } }),
      aFinding({ component: 'ridge-tile', extent: { kind: 'exactly', count: 1 } }),
    ])
    expect(rows.map(({ counted }) => counted?.count)).toEqual([1, 1, 1])
  })

  it('has no count, not a count of 0, where nothing was counted', () => {
    const [row] = tally([aFinding({ extent: { kind: 'several' } })])
    expect(row?.counted).toBeNull()
  })
})
