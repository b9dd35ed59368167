import { describe, expect, it } from 'vitest'
import { rulerMarks } from './strip-ruler.ts'
import { stripScale } from './strip-scale.ts'

const MINUTE = 60_000
const NEW_YORK_SUMMER = () => -240

describe('rulerMarks', () => {
  it('labels whole local minutes, never closer than they can be read', () => {
    const start = Date.UTC(2026, 2, 14, 18, 2, 30)
    const scale = stripScale([start, start + 18 * MINUTE, start + 36 * MINUTE], { widthPx: 1000, window: null })
    const labels = rulerMarks(scale, NEW_YORK_SUMMER).filter((mark) => mark.label !== null)
    expect(labels.map((mark) => mark.label)).toEqual(['14:05', '14:10', '14:15', '14:20', '14:25', '14:30', '14:35'])
    for (const [index, mark] of labels.entries()) {
      expect(mark.x - (labels[index - 1]?.x ?? -58)).toBeGreaterThanOrEqual(58)
    }
  })

  it('labels seconds when zoomed in', () => {
    const start = Date.UTC(2026, 2, 14, 18, 2, 0)
    const scale = stripScale([start], { widthPx: 600, window: { fromMs: start, toMs: start + 20_000 } })
    const labels = rulerMarks(scale, NEW_YORK_SUMMER).flatMap((mark) => mark.label ?? [])
    expect(labels).toEqual([
      '14:02:00',
      '14:02:02',
      '14:02:04',
      '14:02:06',
      '14:02:08',
      '14:02:10',
      '14:02:12',
      '14:02:14',
      '14:02:16',
      '14:02:18',
    ])
  })

  it('keeps labels apart over breaks too', () => {
    const start = Date.UTC(2026, 2, 14, 18, 0)
    const instants = Array.from({ length: 12 }, (_, hour) => start + hour * 60 * MINUTE)
    const labels = rulerMarks(stripScale(instants, { widthPx: 800, window: null }), NEW_YORK_SUMMER).filter(
      (mark) => mark.label !== null,
    )
    for (const [index, mark] of labels.entries()) {
      expect(mark.x - (labels[index - 1]?.x ?? -58)).toBeGreaterThanOrEqual(58)
    }
  })

  it('names the day at the first label of each, where there is more than one', () => {
    const start = Date.UTC(2026, 2, 20, 13, 0)
    const days = [0, 20 * MINUTE, 24 * 60 * MINUTE, 24 * 60 * MINUTE + 20 * MINUTE].map((after) => start + after)
    const labels = rulerMarks(stripScale(days, { widthPx: 900, window: null }), NEW_YORK_SUMMER).flatMap(
      (mark) => mark.label ?? [],
    )
    expect(labels.filter((label) => label.includes('Mar'))).toEqual(['20 Mar 09:00', '21 Mar 09:00'])
    expect(labels.length).toBeGreaterThan(6)
  })
})
