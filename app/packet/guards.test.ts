import { describe, expect, it } from 'vitest'
import { aFullPacketInput } from '../../tests/builders/full-packet-input.ts'
import { clockCaution } from '../diary/clock-caution.ts'
import { NO_CLOCKS } from '../diary/job-clocks.ts'
import { shippedRules } from '../rules/shipped-rules.ts'
import { buildPacket } from './build-packet.ts'
import { whatThisIs, whatThisIsNot } from './guard-rails.ts'
import { packetOptionsSchema } from './options.ts'
import { wordingFlags } from './wording-guard.ts'

// The guards are this program's own, drawn from contractor and adjuster statutes; each is named below in plain words.
const flaggedIn = (sentence: string) => wordingFlags(sentence).map(({ matched }) => matched)

describe('free text is pointed out when it', () => {
  it.each([
    // Reading a policy, coverage, deductible, what is owed, demands.
    ['reads a policy', 'The policy requires matching tiles.'],
    ['speaks of coverage', 'There is coverage for the ridge.'],
    ['speaks of the deductible', 'We waive your deductible.'],
    ['says what is owed', 'The insurer owes the rest.'],
    ['demands payment', 'We demand payment.'],
    // Acting on the claim.
    ['values the claim', 'The claim amount is on page 2.'],
    ['negotiates', 'We will negotiate your claim.'],
    ['files', 'We file your claim for you.'],
    // Incentives.
    ['offers an inspection for a claim', 'Ask for your free inspection.'],
    ['offers something for a referral', 'A referral fee of $200 is paid.'],
    ['offers a rebate', 'You get a rebate when the roof is done.'],
    ['offers a gift', 'A gift card comes with every inspection.'],
    // A test that only an approved agency makes.
    ['names a test of an approved agency', 'Tested by TAS 106.'],
    // Clocks are information, never a reproach.
    ['says that an insurer is late', 'The insurer is late.'],
    ['says that an insurer missed a day', 'The carrier missed the deadline.'],
    ['says that an answer is overdue', 'The adjuster’s answer is overdue.'],
    ['says that a statute was broken', 'The insurer violated the statute.'],
  ])('%s', (_, sentence) => {
    expect(flaggedIn(sentence)).not.toEqual([])
  })

  it.each([
    'The late afternoon sun shows the lifted course.',
    'A rebated edge was seen at the fascia.',
    'The tile’s gift wrapping was in the gutter.',
    'The roof was overdue for cleaning.',
    'The inspector came late because the ladder had to be fetched.',
  ])('and left alone otherwise: %s', (sentence) => {
    expect(flaggedIn(sentence)).toEqual([])
  })
})

describe('a packet', () => {
  const document = buildPacket(aFullPacketInput())
  const words = (key: string) => JSON.stringify(document.sections.find((section) => section.key === key) ?? '')

  it('says on its cover what it is and is not, and that the owner chooses who gets it', () => {
    expect(words('cover')).toContain(whatThisIs)
    expect(words('cover')).toContain(whatThisIsNot)
    expect(whatThisIsNot).toMatch(/not an adjuster’s report, not an engineer’s opinion and not a coverage opinion/)
    expect(whatThisIsNot).toMatch(/owner chooses who receives/)
  })

  it('has no statutory clock, caution or rule in it', () => {
    const whole = JSON.stringify(document)
    expect(whole).not.toContain(clockCaution)
    for (const { source } of shippedRules) expect(whole).not.toContain(source)
    expect(packetOptionsSchema.parse({}).handovers).toBe('leave-out')
  })
})

describe('statutory clocks', () => {
  it('are off until somebody asks for one', () => {
    expect(NO_CLOCKS).toEqual({ jurisdictions: [], asked: [] })
  })
})
