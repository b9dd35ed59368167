import { describe, expect, it } from 'vitest'
import { protocolMechanical, protocolMortarAdhesive } from './criteria/florida-field-protocol.ts'
import { handLift } from './criteria/hand-lift.ts'
import { judgementWords, judgeReading } from './judge-reading.ts'
import type { Reading } from './reading.ts'

const pull = (forceLbf: number | null, liftIn: number | null, outcome: Reading['outcome'] = 'not-stated') => ({
  forceLbf,
  liftIn,
  outcome,
})

// Common practice, no source: no more than 2 in under less than 35 lbf.
describe('the hand-lift survey', () => {
  const judged = (forceLbf: number | null, liftIn: number | null) =>
    judgeReading(pull(forceLbf, liftIn), handLift, null).kind

  it.each([
    [24, 2.75, 'does-not-meet'],
    [35, 1.25, 'meets'],
    [35, 2, 'meets'],
    [40, 0, 'meets'],
    [35, 2.5, 'at-limit'],
    [20, 2, 'at-limit'],
    [20, 1, 'cannot-judge'],
    [40, 3, 'cannot-judge'],
    [null, 3, 'cannot-judge'],
    [20, null, 'cannot-judge'],
  ] as const)('at %s lbf and %s in: %s', (forceLbf, liftIn, kind) => {
    expect(judged(forceLbf, liftIn)).toBe(kind)
  })

  it('never judges a hand lift without a force, however far the tile rose', () => {
    expect(judgementWords(judgeReading(pull(null, 6), handLift, null))).toBe('cannot be judged: no force recorded')
  })

  it('shows the figures it judged by', () => {
    expect(judgeReading(pull(24, 2.75), handLift, null).working).toBe(
      '2.75 in at 24 lbf: more than 2 in under less than 35 lbf.',
    )
  })
})

// Florida Test Protocols, 2020 edition, TAS 106 sections 3.3 (35 lbf) and 3.4 (80 % of the listed resistance).
describe('the Florida field protocol', () => {
  it('asks mortar-set and adhesive-set tile to hold 35 lbf', () => {
    const judged = (forceLbf: number, outcome: Reading['outcome']) =>
      judgeReading(pull(forceLbf, 0, outcome), protocolMortarAdhesive, null).kind
    expect(judged(35, 'held')).toBe('meets')
    expect(judged(34, 'held')).toBe('cannot-judge')
    expect(judged(34, 'came-loose')).toBe('does-not-meet')
    expect(judged(35, 'came-loose')).toBe('at-limit')
    expect(judged(50, 'broke')).toBe('meets')
    expect(judged(50, 'not-stated')).toBe('cannot-judge')
  })

  it('asks mechanically attached tile to hold 80 % of what its approval lists, and judges nothing without that', () => {
    expect(judgeReading(pull(40, 0, 'held'), protocolMechanical, null)).toMatchObject({ why: 'no-listed' })
    expect(judgeReading(pull(40, 0, 'held'), protocolMechanical, 50)).toEqual({
      kind: 'meets',
      working: '40 lbf against 80 % × 50 lbf listed = 40 lbf: reached, and the tile held.',
    })
    expect(judgeReading(pull(39, 0, 'came-loose'), protocolMechanical, 50).kind).toBe('does-not-meet')
  })
})
