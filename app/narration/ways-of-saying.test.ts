import { describe, expect, it } from 'vitest'
import { marrowQuay } from '../../tests/narration/marrow-quay.ts'
import { readNarration } from './read-narration.ts'

/** Drafts as short words: part, condition, and how many where that is said. How things are said: common practice, no source. */
function said(...texts: readonly string[]): readonly string[] {
  const cues = texts.map((text, at) => ({ startMs: at * 6000, endMs: at * 6000 + 5000, text, speaker: '' }))
  return readNarration(cues, { house: marrowQuay, covering: 'concrete-tile' }).drafts.map((draft) => {
    const extent = draft.extent?.value
    const count = extent !== undefined && 'count' in extent ? ` ${extent.count}` : ''
    return `${draft.component.value} ${draft.condition.value}${count}`
  })
}

describe('ways of saying', () => {
  it('hear what is out of line or off its bed as moved, not as gone', () => {
    expect(said('Two tiles have dropped out of line.')).toEqual(['field-tile slipped 2'])
    expect(said('A ridge tile has come off its bed.')).toEqual(['ridge-tile cap-loose 1'])
    expect(said('Four tiles have blown off this corner.')).toEqual(['field-tile missing 4'])
  })

  it('keep what is only near out of it', () => {
    expect(said('Over by the chimney they smeared sealant on the counter flashing.')).toEqual(['flashing prior-repair'])
    expect(said('The felt is torn under the missing tile.')).toEqual(['underlayment underlayment-exposed'])
    expect(said('Between the two skylights, a cracked tile.')).toEqual(['field-tile diagonal-crack 1'])
  })

  it('count one where one tile is named without an article, and none for “the fastener”', () => {
    expect(said('Tile out, gap three inches.')).toEqual(['field-tile missing 1'])
    expect(said('The fastener has backed out.')).toEqual(['fastener fastener-raised'])
    expect(said('Lifts an inch at ten pounds.', 'One tile.')).toEqual(['field-tile lifts-by-hand 1'])
  })

  it('take up where a crack runs, later in the sentence and in the next', () => {
    expect(said('A tile is cracked, about six inches, and it runs up to the nail.')).toEqual([
      'field-tile crack-to-fastener 1',
    ])
    expect(said('There is a cracked tile.', 'The crack goes into the screw hole.')).toEqual([
      'field-tile crack-to-fastener 1',
    ])
  })

  it('take back what the next words call sound or something else', () => {
    expect(said('Loose cap here.', 'Actually no, it’s tight.')).toEqual([])
    expect(said('Two broken corners.', 'Hmm, no, they’re cut tiles.')).toEqual([])
    expect(said('There is a crack here.', 'Correction, no crack.')).toEqual([])
    expect(said('Five, no six, loose caps.')).toEqual(['ridge-tile cap-loose 6'])
  })

  it('make nothing of hearsay, plans, habits and other things', () => {
    expect(said('They claim the flashing was loose.', 'That crack was there before, they said.')).toEqual([])
    expect(said('I am going to test for loose tiles now.', 'A broken tile would sound different.')).toEqual([])
    expect(said('The strap broke.', 'I slipped on the moss.')).toEqual([])
  })
})
