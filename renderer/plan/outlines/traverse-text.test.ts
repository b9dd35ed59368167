import { describe, expect, it } from 'vitest'
import { closeTraverse } from '../../../app/roof/traverse.ts'
import { parseTurn, partTraverseLines, readTraverse } from './traverse-text.ts'

describe('pasted sides', () => {
  it('are parted into length and turn, in either order', () => {
    expect(partTraverseLines('42\' 6" R\nL 18 ft\r\n12.5 left 45\n\n30\t+30\n7.4 m az 200; 12-6 L')).toEqual([
      { length: '42\' 6"', turn: 'R' },
      { length: '18 ft', turn: 'L' },
      { length: '12.5', turn: 'left 45' },
      { length: '30', turn: '+30' },
      { length: '7.4 m', turn: 'az 200' },
      { length: '12-6', turn: 'L' },
    ])
  })

  it('need no space after an inch mark', () => {
    expect(partTraverseLines('42\' 6"R')).toEqual([{ length: '42\' 6"', turn: 'R' }])
  })

  it('keep a dash of feet and inches out of the turn', () => {
    expect(partTraverseLines('24-6')).toEqual([{ length: '24-6', turn: '' }])
  })

  it('stay whole where they say nothing that can be read', () => {
    expect(partTraverseLines('about 40')).toEqual([{ length: 'about 40', turn: '' }])
  })
})

describe('turns', () => {
  it('are square unless they say otherwise, right above zero', () => {
    expect(['R', 'left', 'R 45', 'l30', '-22.5', '+10', '', 'straight'].map(parseTurn)).toEqual(
      [90, -90, 45, -30, -22.5, 10, 0, 0].map((deg) => ({ kind: 'turn', deg })),
    )
  })

  it('can be azimuths', () => {
    expect(parseTurn('az 200.5°')).toEqual({ kind: 'azimuth', deg: 200.5 })
    expect(parseTurn('azimuth 360')).toEqual({ kind: 'azimuth', deg: 0 })
  })

  it('are refused where they turn back or say nothing', () => {
    expect(['180', 'R 200', 'az 400', 'up the hill'].map(parseTurn)).toEqual([null, null, null, null])
  })
})

describe('a typed traverse', () => {
  it('of a rectangle closes', () => {
    const read = readTraverse(partTraverseLines('40 R\n20 R\n40 R\n20 R'))
    if (!read.ok) throw new Error(read.sentence)
    const laid = closeTraverse(read.sides, 0)
    expect(laid).toMatchObject({ kind: 'laid-out', perimeterFt: 120, closing: { oneIn: null } })
  })

  it('passes over empty lines and names the first side that is at fault', () => {
    expect(readTraverse([{ length: '', turn: '' }])).toEqual({ ok: true, sides: [] })
    expect(readTraverse(partTraverseLines('40 R\nwide'))).toMatchObject({ ok: false, row: 1 })
    expect(readTraverse([{ length: '40', turn: 'back' }])).toMatchObject({
      ok: false,
      row: 0,
      sentence: expect.stringContaining('Side 1'),
    })
  })
})
