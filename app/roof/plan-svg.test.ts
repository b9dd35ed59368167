import { describe, expect, it } from 'vitest'
import type { PlanDrawing } from './plan-drawing.ts'
import { planToSvg } from './plan-svg.ts'

const at = (xFt: number, yFt: number) => ({ xFt, yFt })

/** A gable 40 by 30 ft, its ridge from west to east, up the sheet due east, with one pin. */
function gable(pinLabel = '7'): PlanDrawing {
  const south = {
    id: 'a',
    letter: 'A',
    outline: [at(0, 0), at(40, 0), at(40, 15), at(0, 15)],
    labelAt: at(20, 7.5),
    pitchLabel: '4:12',
    downhill: { x: 0, y: -1 },
  }
  const north = {
    id: 'b',
    letter: 'B',
    outline: [at(0, 15), at(40, 15), at(40, 30), at(0, 30)],
    labelAt: at(20, 22.5),
    pitchLabel: '4:12',
    downhill: { x: 0, y: 1 },
  }
  return {
    bounds: { minXFt: 0, minYFt: 0, maxXFt: 40, maxYFt: 30 },
    upAzimuthDeg: 90,
    frontAzimuthDeg: 90,
    facets: [south, north],
    edges: [
      { kind: 'eave', from: at(0, 0), to: at(40, 0) },
      { kind: 'ridge', from: at(0, 15), to: at(40, 15) },
      { kind: 'rake', from: at(0, 0), to: at(0, 15) },
    ],
    pins: [{ findingId: 'f', label: pinLabel, kind: 'point', points: [at(30, 5)], markerAt: at(30, 5), filled: true }],
    cameras: [{ photoId: 'p', label: 'P-001', at: at(10, 5), looking: { x: 1, y: 0 } }],
  }
}

const texts = (svg: string) => [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map((match) => match[1])

describe('the plan as SVG', () => {
  it('names facets, pitches, pins, edges, north, front and the scale', () => {
    expect(texts(planToSvg(gable()))).toEqual(
      expect.arrayContaining([
        'A',
        'B',
        '4:12',
        '7',
        'N',
        'Front',
        'ridge',
        'eave',
        'rake',
        'Scale 1/8 in = 1 ft',
        '10 ft',
      ]),
    )
  })

  it('is true to its scale when printed: 40 ft at 1/8 in to the foot are 360 units of 1/72 in', () => {
    const svg = planToSvg(gable())
    expect(svg).toContain('width="7.5in" height="10in" viewBox="0 0 540 720"')
    const lengths = [...svg.matchAll(/d="M([\d.]+) ([\d.]+)L([\d.]+) ([\d.]+)"/g)].map(([, x1, y1, x2, y2]) =>
      Math.hypot(Number(x2) - Number(x1), Number(y2) - Number(y1)),
    )
    expect(lengths.filter((length) => Math.abs(length - 360) < 0.02)).toHaveLength(2)
  })

  it('turns the north arrow against the sheet: with east up, north is to the left', () => {
    const svg = planToSvg(gable())
    const [, letterX] = /<text x="([\d.]+)" y="[\d.]+"[^>]*>N</.exec(svg) ?? []
    const half = /<path d="M([\d.]+) ([\d.]+)L[^"]*Z" fill="#1C1C1C" stroke="#1C1C1C" stroke-width="0.7"/.exec(svg)
    expect(Number(letterX)).toBeLessThan(Number(half?.[1]))
  })

  it('writes text that means something in XML as references, and drops what XML cannot hold', () => {
    const svg = planToSvg(gable('<&">\u0001'))
    expect(svg).toContain('&lt;&amp;&quot;&gt;')
    expect(svg).not.toContain('\u0001')
    expect(svg).not.toContain('<&')
  })

  it('opens and closes every element it does not close at once', () => {
    const svg = planToSvg(gable())
    const open: string[] = []
    for (const [, slash, name, end] of svg.matchAll(/<(\/?)([a-z]+)[^>]*?(\/?)>/g)) {
      if (slash === '/') expect(open.pop()).toBe(name)
      else if (end !== '/' && name !== undefined) open.push(name)
    }
    expect(open).toEqual([])
  })

  it('draws an empty roof too', () => {
    const svg = planToSvg({ ...gable(), facets: [], edges: [], pins: [], cameras: [] })
    expect(svg).toContain('</svg>')
    expect(svg).not.toContain('NaN')
  })
})
