import { describe, expect, it } from 'vitest'
import { marrowQuay } from '../../tests/narration/marrow-quay.ts'
import { readNarration } from './read-narration.ts'

/** Part and condition of each draft. How speech recognition mishears the trade's words: common practice, no source. */
function heard(text: string): readonly string[] {
  const cues = [{ startMs: 0, endMs: 5000, text, speaker: '' }]
  return readNarration(cues, { house: marrowQuay, covering: 'concrete-tile' }).drafts.map(
    ({ component, condition }) => `${component.value} ${condition.value}`,
  )
}

describe('misheard words', () => {
  it('are taken by their sound where two words stand for a part', () => {
    expect(heard('two rate tiles are gone')).toEqual(['rake-tile missing'])
    expect(heard('the filled title has a crack from the nail to the edge')).toEqual(['field-tile crack-to-fastener'])
    expect(heard('head wall flushing is bent up two feet')).toEqual(['headwall-flashing flashing-deformed'])
    expect(heard('eve closer is loose for twelve feet')).toEqual(['eave-closure closure-loose'])
  })

  it('are put together where a long word was parted into short ones', () => {
    expect(heard('a fast inner is backed out half an inch')).toEqual(['fastener fastener-raised'])
    expect(heard('under lay mint is showing about six square feet')).toEqual(['underlayment underlayment-exposed'])
    expect(heard('the pipe pen a tray shun has a cracked mortar collar')).toEqual([
      'pipe-penetration mortar-cracked-at-pipe',
    ])
  })

  it('are taken for a piece after a number, for a verb before its particle, and for mortar where caps lie in it', () => {
    expect(heard('a couple of towels have slid down')).toEqual(['field-tile slipped'])
    expect(heard('this tile lips up two inches at nine pounds')).toEqual(['field-tile lifts-by-hand'])
    expect(heard('the motor under the ridge caps is cracked')).toEqual(['mortar-bed cap-mortar-cracked'])
  })

  it('stay what they are where they make sense by themselves', () => {
    expect(heard('the motor on the gate is broken')).toEqual([])
    expect(heard('we rated these titles last year')).toEqual([])
    expect(heard('let us mosey on around to the back of the house')).toEqual([])
    expect(heard('it took a lot of towels to dry this off')).toEqual([])
  })
})
