import { describe, expect, it } from 'vitest'
import { wordingFlags } from './wording-guard.ts'

/** Sentences that are outside a contractor's part, with words that have to be pointed out. */
const flagged: readonly (readonly [sentence: string, words: string])[] = [
  ['There is coverage for this loss.', 'coverage'],
  ['Insurance coverage applies to the tarp.', 'coverage'],
  ['The damage is covered.', 'damage is covered'],
  ['Water inside is covered under the policy.', 'covered under the policy'],
  ['This is a covered loss.', 'covered loss'],
  ['The storm is not covered', 'storm is not covered'],
  ['The policy pays for the whole slope.', 'policy pays'],
  ['Under your policy the roof comes off.', 'Under your policy'],
  ['The policy language is clear.', 'policy language'],
  ['We can absorb your deductible.', 'deductible'],
  ['The owner is owed $12,000.', 'owed'],
  ['The carrier owes for the ridge.', 'owes'],
  ['Actual cash value was used.', 'Actual cash value'],
  ['The roof is a total loss.', 'a total loss'],
  ['The roof is totaled.', 'totaled'],
  ['The north slope was totalled by the storm', 'totalled'],
  ['The insurer must pay.', 'insurer must'],
  ['Your insurance company should replace all slopes.', 'insurance company should'],
  ['The adjuster is required to include this.', 'adjuster is required'],
  ['We demand payment within ten days.', 'We demand'],
  ['This is a demand for immediate payment.', 'demand for immediate payment'],
  ['They acted in bad faith.', 'bad faith'],
  ['We will negotiate your claim.', 'negotiate your claim'],
  ['Sign the assignment of benefits.', 'assignment of benefits'],
  ['We will get your roof approved.', 'get your roof approved'],
  ['Ask us about a free roof!', 'free roof'],
  ['Free inspections all week.', 'Free inspections'],
  ['There is no cost to you.', 'no cost to you'],
  ['All tiles must be replaced.', 'must be replaced'],
  ['The slope needs to be completely replaced.', 'needs to be completely replaced'],
  ['It requires a full roof replacement.', 'requires a full roof replacement'],
  ['The crack was caused by wind.', 'caused by'],
  ['Breakage caused directly by foot traffic.', 'caused directly by'],
  ['Tiles slipped due to the hurricane.', 'due to the hurricane'],
  ['Damage resulting from high winds.', 'resulting from high winds'],
  ['This proves that the storm lifted it.', 'proves that'],
  ['The attachment fails the code.', 'fails the code'],
  ['A TAS 106 was performed.', 'TAS 106'],
  ['The carrier’s policy doesn’t matter; the insurer\u2019s adjuster must agree', 'adjuster must'],
]

/** Sentences of the trade that share words with the ones above and are fine. */
const allowed: readonly string[] = [
  'Roof covering: concrete tile, medium profile.',
  'The covering is about 20 years old.',
  'The valley is covered with moss.',
  'Ridge is tarp covered on arrival.',
  'The opening was covered the same day with a tarp.',
  'The damage was covered with a sheet until the visit.',
  'The roof is covered in clay tile.',
  'Covered porch at the back.',
  'Policy number 12-345.',
  'Recorded under the policy number given by the owner.',
  'Granule coverage is thin on the west slope.',
  'Adhesive coverage per tile: 8 in by 4 in.',
  'Tile coverage per square follows from the exposure.',
  'This is not a coverage opinion.',
  'The counted tiles totaled 45 on both slopes.',
  'Total area 1,240 sq ft.',
  'Total of 12 tiles.',
  'Replacement of three tiles is proposed.',
  'Tiles can be replaced one by one where stock exists.',
  'Consistent with wind; also consistent with foot traffic.',
  'Cause not determined by this survey.',
  'Slope C was not walked due to wind.',
  'The visit was postponed because of the storm.',
  'Rust due to salt air.',
  'Owing to rain the visit ended early.',
  'Insurer: as given by the owner. Claim number 44-1.',
  'The adjuster was present and walked the front slope.',
  'The insurer asked for photos of the ridge.',
  'The deck has settled at the valley.',
  'A debris-free roof on arrival; leak free roof before, says the owner.',
  'Free end of the flashing is bent.',
  'Water path possible. No present leak seen.',
  'The building official decides on the code.',
  'Adjust the ladder before climbing.',
  'The repair proves hard where the profile is not stocked.',
  '',
]

describe('wording outside a contractor’s part', () => {
  it.each(flagged)('points out: %s', (sentence, words) => {
    expect(wordingFlags(sentence).map((flag) => flag.matched)).toContain(words)
  })

  it.each(allowed)('leaves alone: %s', (sentence) => {
    expect(wordingFlags(sentence)).toEqual([])
  })

  it('says why, and offers plain words instead', () => {
    const [flag] = wordingFlags('The crack was caused by wind.')
    expect(flag?.why).toMatch(/further than a roof survey/)
    expect(flag?.instead).toMatch(/consistent with/)
  })

  it('is even-handed: a stated cause is pointed out whichever way it argues', () => {
    const words = (text: string) => wordingFlags(text).map((flag) => flag.matched)
    expect(words('caused by wind')).toEqual(words('caused by foot traffic'))
  })

  it('gives the place of each word in the text and never the same words twice', () => {
    const text = 'The policy covers it. The deductible is owed.'
    const flags = wordingFlags(text)
    expect(flags.map((flag) => text.slice(flag.at, flag.at + flag.matched.length))).toEqual([
      'policy covers',
      'deductible',
      'owed',
    ])
  })
})
