import { describe, expect, it } from 'vitest'
import { readNarration } from '../../app/narration/read-narration.ts'
import { textPieces } from './highlights.ts'

const text = 'Two ridge caps are loose, they lift an inch.'
const { drafts } = readNarration([{ startMs: 0, endMs: 1, text, speaker: '' }], {
  house: { facets: [], outlines: [], upAzimuthDeg: 0, frontAzimuthDeg: null },
  covering: 'concrete-tile',
})

describe('textPieces', () => {
  it('marks the words of each field and loses none', () => {
    const pieces = textPieces(text, 0, drafts)
    expect(pieces.map((piece) => piece.text).join('')).toBe(text)
    expect(pieces.filter(({ field }) => field !== null)).toEqual([
      { text: 'Two', field: 'extent' },
      { text: 'ridge caps', field: 'component' },
      { text: 'loose', field: 'condition' },
      { text: 'lift', field: 'condition' },
      { text: 'an inch', field: 'measurement' },
    ])
  })

  it('marks nothing in another cue', () => {
    expect(textPieces(text, 1, drafts)).toEqual([{ text, field: null }])
  })
})
