import { describe, expect, it } from 'vitest'
import { type Mark, markSchema, marksSchema, MOST_POINTS } from '../../../app/evidence/markup.ts'
import { drawnMark, handlesOf, movedMark, restackedMarks, withHandle } from './mark-edits.ts'

const picture = { widthPx: 1000, heightPx: 800 }
const at = (xPx: number, yPx: number) => ({ xPx, yPx })
const style = { colour: 'yellow', weight: 'fine' } as const
const draw = (kind: Mark['kind'], path: readonly { xPx: number; yPx: number }[], scaleId: string | null = null) =>
  drawnMark({ ...style, id: 'n', kind, path, scaleId, picture })

describe('drawing a mark', () => {
  it('makes what the tool is for', () => {
    const path = [at(100, 100), at(150, 120), at(300, 260)]
    expect(draw('arrow', path)).toMatchObject({
      from: at(100, 100),
      to: at(300, 260),
      colour: 'yellow',
      weight: 'fine',
    })
    expect(draw('ellipse', path)).toMatchObject({ centre: at(200, 180), radiusXPx: 100, radiusYPx: 80 })
    expect(draw('obscured', path)).toMatchObject({ corner: at(100, 100), widthPx: 200, heightPx: 160, what: 'face' })
    expect(draw('freehand', path)).toMatchObject({ points: path })
    expect(draw('text', path.slice(0, 1))).toMatchObject({ at: at(100, 100) })
  })

  it('takes the corners of a drag in any direction', () => {
    expect(draw('obscured', [at(300, 260), at(100, 100)])).toMatchObject({ corner: at(100, 100), widthPx: 200 })
  })

  it('makes nothing of a slip of the hand, nor a measured line without a known length', () => {
    expect(draw('arrow', [at(100, 100), at(102, 101)])).toBeNull()
    expect(draw('measure', [at(100, 100), at(300, 100)])).toBeNull()
    expect(draw('measure', [at(100, 100), at(300, 100)], 's')).toMatchObject({ scaleId: 's' })
  })

  it('stays on the picture and within the most points', () => {
    expect(draw('arrow', [at(500, 500), at(5000, -20)])).toMatchObject({ to: at(1000, 0) })
    const long = draw(
      'freehand',
      Array.from({ length: 9000 }, (_, k) => at(k / 10, 400)),
    )
    expect(long?.kind === 'freehand' && long.points).toHaveLength(MOST_POINTS)
    expect(long?.kind === 'freehand' && long.points.at(-1)).toEqual(at(899.9, 400))
  })
})

describe('changing a mark', () => {
  const arrow = markSchema.parse({ kind: 'arrow', id: 'a', from: at(100, 100), to: at(300, 200) })

  it('moves it whole, no farther than the picture goes', () => {
    expect(movedMark(arrow, { x: 20, y: -30 }, picture)).toMatchObject({ from: at(120, 70), to: at(320, 170) })
    expect(movedMark(arrow, { x: 5000, y: -5000 }, picture)).toMatchObject({ from: at(800, 0), to: at(1000, 100) })
  })

  it('moves each end by its handle', () => {
    expect(handlesOf(arrow).map(({ key }) => key)).toEqual(['from', 'to'])
    expect(withHandle(arrow, 'to', at(400, 400))).toMatchObject({ from: at(100, 100), to: at(400, 400) })
    const area = markSchema.parse({
      kind: 'obscured',
      id: 'o',
      corner: at(10, 10),
      widthPx: 5,
      heightPx: 5,
      what: 'face',
    })
    expect(withHandle(area, 'size', at(60, 5))).toMatchObject({ widthPx: 50, heightPx: 1 })
  })

  it('restacks it by one, and leaves it at the ends', () => {
    const marks = marksSchema.parse(['a', 'b', 'c'].map((id) => ({ ...arrow, id })))
    const order = (all: readonly Mark[]) => all.map(({ id }) => id).join('')
    expect(order(restackedMarks(marks, 'a', 1))).toBe('bac')
    expect(order(restackedMarks(marks, 'c', -1))).toBe('acb')
    expect(order(restackedMarks(marks, 'c', 1))).toBe('abc')
  })
})
