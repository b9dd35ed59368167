import { describe, expect, it } from 'vitest'
import { marksSchema } from './markup.ts'
import { drawMarkup, LETTER_PART } from './markup-drawing.ts'
import { markColourSchema, markLooks } from './markup/colours.ts'

const at = (xPx: number, yPx: number) => ({ xPx, yPx })
const size = { widthPx: 4000, heightPx: 3000 }
const draw = (marks: readonly object[], picture = size) => drawMarkup(marksSchema.parse(marks), picture)
const arrow = { kind: 'arrow', id: 'a', from: at(100, 100), to: at(900, 100) }

/** Relative luminance and contrast as WCAG 2.2 defines them, https://www.w3.org/TR/WCAG22/#dfn-relative-luminance. */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((from) => {
    const part = Number.parseInt(hex.slice(from, from + 2), 16) / 255
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4
  })
  return 0.2126 * r + 0.7152 * g + 0.0722 * b
}
function contrast(a: string, b: string): number {
  const [light = 0, dark = 0] = [luminance(a), luminance(b)].toSorted((x, y) => y - x)
  return (light + 0.05) / (dark + 0.05)
}

describe('the colours of marks', () => {
  it.each(markColourSchema.options)('%s stands out from its own edge by 3 to 1 (WCAG 2.2, 1.4.11)', (colour) => {
    const { hex, edgeHex } = markLooks[colour]
    expect(contrast(hex, edgeHex)).toBeGreaterThanOrEqual(3)
  })

  it('are each told apart by a line pattern of their own, too', () => {
    const patterns = markColourSchema.options.map((colour) => markLooks[colour].dash.join(' '))
    expect(new Set(patterns).size).toBe(markColourSchema.options.length)
  })
})

describe('marks as things to draw', () => {
  it('have an edge under every stroke, wider than the stroke on it', () => {
    const [edge, line] = draw([arrow]).shapes
    if (edge?.kind !== 'path' || line?.kind !== 'path') return expect.fail('an arrow begins with its shaft')
    expect(edge.stroke?.colour).toBe('#FFFFFF')
    expect(line.stroke?.colour).toBe('#D55E00')
    expect(edge.stroke?.widthPx ?? 0).toBeGreaterThan(line.stroke?.widthPx ?? Infinity)
  })

  it('grow with their picture', () => {
    const widths = [size, { widthPx: 8000, heightPx: 6000 }].map((picture) => {
      const shape = draw([arrow], picture).shapes[1]
      return shape?.kind === 'path' ? (shape.stroke?.widthPx ?? 0) : 0
    })
    expect((widths[1] ?? 0) / (widths[0] ?? 1)).toBeCloseTo(2, 9)
  })

  it('end an arrow at its point', () => {
    const head = draw([arrow]).shapes.at(-1)
    expect(head).toMatchObject({ kind: 'path', closed: true, fill: '#D55E00' })
    expect(head?.kind === 'path' && head.points[0]).toEqual(at(900, 100))
  })

  it('draw an ellipse whose points all fit its equation', () => {
    const ring = draw([{ kind: 'ellipse', id: 'e', centre: at(1000, 800), radiusXPx: 300, radiusYPx: 120 }]).shapes[1]
    if (ring?.kind !== 'path') return expect.fail('an ellipse is a path')
    for (const { xPx, yPx } of ring.points)
      expect(((xPx - 1000) / 300) ** 2 + ((yPx - 800) / 120) ** 2).toBeCloseTo(1, 9)
  })

  it('keep a freehand line where it was drawn', () => {
    const points = Array.from({ length: 40 }, (_, k) => at(500 + k * 20, 900 + Math.sin(k / 4) * 60))
    const shape = draw([{ kind: 'freehand', id: 'f', points }]).shapes.at(-1)
    if (shape?.kind !== 'path') return expect.fail('a freehand line is a path')
    // Smoothing may not move it by more than a few widths.
    for (const { xPx, yPx } of shape.points)
      expect(Math.min(...points.map((p) => Math.hypot(p.xPx - xPx, p.yPx - yPx)))).toBeLessThan(60)
  })

  it('write the length of a measured line and the scale line it comes from', () => {
    const { shapes } = draw([
      { kind: 'scale', id: 's', from: at(100, 100), to: at(700, 100), lengthIn: 12 },
      { kind: 'measure', id: 'm', from: at(100, 200), to: at(400, 600), scaleId: 's' },
    ])
    expect(shapes.flatMap((shape) => (shape.kind === 'text' ? shape.text : []))).toEqual(['12 in, S1', '10.00 in (S1)'])
  })

  it('keep words on the picture', () => {
    const shape = draw([{ kind: 'text', id: 't', at: at(3900, 500), text: 'Cap off its bed' }]).shapes[0]
    if (shape?.kind !== 'text') return expect.fail('words are text')
    expect(shape.at.xPx + shape.text.length * shape.sizePx * LETTER_PART).toBeLessThanOrEqual(4000)
    expect(draw([{ kind: 'text', id: 't', at: at(100, 500), text: 'Cap' }]).shapes[0]).toMatchObject({
      at: at(100, 500),
    })
  })

  it('cut obscured areas to the picture', () => {
    const { obscured } = draw([
      { kind: 'obscured', id: 'o', corner: at(3900, 2900), widthPx: 500, heightPx: 500, what: 'plate' },
    ])
    expect(obscured).toEqual([{ leftPx: 3900, topPx: 2900, widthPx: 100, heightPx: 100, what: 'plate' }])
  })
})
