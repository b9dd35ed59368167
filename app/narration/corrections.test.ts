import { describe, expect, it } from 'vitest'
import { marrowQuay } from '../../tests/narration/marrow-quay.ts'
import type { Extent } from '../evidence/finding.ts'
import { readNarration } from './read-narration.ts'

/** Part, extent and measures of each draft. How people correct themselves: common practice, no source. */
function meant(...texts: readonly string[]): readonly string[] {
  const cues = texts.map((text, at) => ({ startMs: at * 6000, endMs: at * 6000 + 5000, text, speaker: '' }))
  return readNarration(cues, { house: marrowQuay, covering: 'concrete-tile' }).drafts.map(
    ({ component, extent, measurements }) =>
      [
        component.value,
        extent === null ? '' : amount(extent.value),
        ...measurements.map(({ value }) => `${value.what} ${value.value}/${value.forceLbf ?? '-'}`),
      ].join(' '),
  )
}

function amount(extent: Extent): string {
  if ('count' in extent) return `${extent.kind} ${extent.count}`
  return extent.kind === 'length'
    ? `${extent.lengthFt} ft`
    : extent.kind === 'area'
      ? `${extent.areaSqFt} sq ft`
      : extent.kind
}

describe('corrections in the same breath', () => {
  it('put a number, its unit and its noun right', () => {
    expect(meant('Felt showing, three, sorry, four square feet of it.')).toEqual(['underlayment 4 sq ft'])
    expect(meant('The drip edge is bent for ten feet, no, I paced it off, twelve feet.')).toEqual(['drip-edge 12 ft'])
    expect(meant('Step flashing is lifted, three feet, wait, the tape says four.')).toEqual(['step-flashing 4 ft'])
    expect(meant('About six, well, closer to nine tiles have slipped.')).toEqual(['field-tile about 9'])
    expect(meant('Three ridge caps are loose, no, four.')).toEqual(['ridge-tile exactly 4'])
  })

  it('put a measure right and keep its force', () => {
    expect(meant('One tile lifts an inch, hold on, one and a half inches, at nine pounds.')).toEqual([
      'field-tile exactly 1 lift-in 1.5/9',
    ])
    expect(meant('It lifts two inches at ten pounds, sorry, twelve pounds.')).toEqual(['field-tile  lift-in 2/12'])
  })

  it('put a place right, and leave a number that was only almost said', () => {
    expect(meant('Two caps gone on the hip, no, on the ridge.')).toEqual(['ridge-tile exactly 2'])
    expect(meant('Several, I almost said ten but I did not count, several tiles have slipped.')).toEqual([
      'field-tile several',
    ])
  })

  it('take nothing for a correction that denies or counts by itself', () => {
    expect(meant('I lifted one field tile by hand, no gauge on me, about an inch.')).toEqual([
      'field-tile exactly 1 lift-in 1/-',
    ])
    expect(meant('Two tiles slipped, four ridge caps loose.')).toEqual(['field-tile exactly 2', 'ridge-tile exactly 4'])
  })
})

describe('corrections by the next sentence', () => {
  it('take the place of what was said before', () => {
    expect(meant('Two hip caps are loose.', 'Correction, three hip caps are loose, one was hidden.')).toEqual([
      'hip-tile exactly 3',
    ])
    expect(meant('Five tiles are missing.', 'Make it six, I overlooked one.')).toEqual(['field-tile exactly 6'])
    expect(meant('Five tiles have slipped.', 'Of those, one of them is by my foot, actually.')).toEqual([
      'field-tile exactly 5',
    ])
  })

  it('leave a draft alone where a thought of its own is taken back', () => {
    expect(meant('Five tiles are missing.', 'I would do the whole roof, but leave that out.')).toEqual([
      'field-tile exactly 5',
    ])
  })
})
