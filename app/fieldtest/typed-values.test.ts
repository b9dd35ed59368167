import { describe, expect, it } from 'vitest'
import { readForce } from './typed-force.ts'
import { readLift } from './typed-lift.ts'

describe('a force as it is typed', () => {
  it.each(['35', '35 lbf', '35lb', ' 35 pounds ', '35,0 lbf'])('reads %s as pounds', (text) => {
    expect(readForce(text)).toEqual({ kind: 'read', forceLbf: 35, typed: '', caution: null })
  })

  // NIST SP 811: 1 lbf = 4.4482216152605 N, so 35 lbf = 155.6878 N.
  it('takes newtons and keeps what was typed', () => {
    const read = readForce('155.6878 N')
    expect(read.kind === 'read' ? read.forceLbf : null).toBeCloseTo(35, 4)
    expect(read).toMatchObject({ typed: '155.6878 N' })
  })

  // NIST SP 811: 1 kgf = 9.80665 N; 15.9 kgf = 155.93 N = 35.05 lbf.
  it('only offers kilograms as pounds', () => {
    const offer = readForce('15.9 kgf')
    expect(offer.kind === 'offer' ? offer.forceLbf : null).toBeCloseTo(35.053, 3)
    expect(offer).toMatchObject({ kind: 'offer', sentence: expect.stringContaining('35.1 lbf') })
    expect(readForce('16 kg').kind).toBe('offer')
  })

  it.each(['', 'by hand', 'Hand', 'no force', '-'])('takes "%s" for no force read', (text) => {
    expect(readForce(text)).toEqual({ kind: 'none' })
  })

  it('refuses what is no force, negative or beyond belief, and points out what is unusual', () => {
    for (const text of ['strong', '-5', '5 ft', '5000']) expect(readForce(text).kind).toBe('refused')
    expect(readForce('200')).toMatchObject({ kind: 'read', caution: expect.stringContaining('Check the figure') })
  })
})

describe('a lift as it is typed', () => {
  it.each([
    ['2.25', 2.25],
    ['2 1/4', 2.25],
    ['2,25 in', 2.25],
    ['3/4"', 0.75],
    ['57.15 mm', 2.25],
    ['0', 0],
  ] as const)('reads %s', (text, liftIn) => {
    const read = readLift(text)
    expect(read.kind === 'read' ? read.liftIn : null).toBeCloseTo(liftIn, 10)
  })

  it('refuses a negative lift with a sentence', () => {
    expect(readLift('-0.5')).toEqual({
      kind: 'refused',
      sentence: 'A lift cannot be negative. Write 0 where the nose did not rise.',
    })
    expect(readLift('−1/2').kind).toBe('refused')
  })

  it('refuses what is beyond belief and points out what is unusual', () => {
    expect(readLift('60').kind).toBe('refused')
    expect(readLift('2 lbf').kind).toBe('refused')
    expect(readLift('14')).toMatchObject({ kind: 'read', caution: expect.stringContaining('unusual') })
  })
})
