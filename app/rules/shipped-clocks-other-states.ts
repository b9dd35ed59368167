import type { Rule } from './rule.ts'
import { shippedClock, type ShippedRow } from './shipped-row.ts'

const TEXAS_CATASTROPHE =
  'In a weather catastrophe or major disaster the times of this chapter are extended (Tex. Ins. Code 542.059, second hand; that it is 15 days is from memory).'

const texas: readonly ShippedRow[] = (
  [
    {
      key: 'tx-acknowledge',
      title: 'Acknowledge, start the investigation, ask for items',
      says: 'Within 15 days of notice of a claim its receipt is acknowledged, the investigation started and items asked for.',
      trigger: 'notice of the claim',
      count: 15,
      unit: 'calendar-days',
      source: 'Tex. Ins. Code 542.055, statute text',
      status: 'published',
      cautions: ['A surplus-lines insurer has 30 business days.'],
    },
    {
      key: 'tx-acknowledge-surplus',
      title: 'Acknowledge, surplus lines',
      says: 'A surplus-lines insurer has 30 business days from notice of a claim.',
      trigger: 'notice of the claim',
      count: 30,
      unit: 'business-days',
      source: 'Tex. Ins. Code 542.055, statute text',
      status: 'published',
    },
    {
      key: 'tx-decide',
      title: 'Acceptance or rejection in writing',
      says: 'A claim is accepted or rejected in writing within 15 business days after all items asked for are received.',
      trigger: 'all items received',
      count: 15,
      unit: 'business-days',
      source: 'Tex. Ins. Code 542.056, several consistent accounts',
      status: 'published, seen at second hand',
      cautions: [
        'Where arson is suspected it is 30 days. With reasons given in writing 45 days may be added.',
        'The start counts from the day on which all items are in, which parties can see differently.',
      ],
    },
    {
      key: 'tx-decide-arson',
      title: 'Acceptance or rejection, arson suspected',
      says: 'Where arson is suspected the claim is accepted or rejected in writing within 30 days after all items are received.',
      trigger: 'all items received',
      count: 30,
      unit: 'calendar-days',
      source: 'Tex. Ins. Code 542.056, several consistent accounts',
      status: 'published, seen at second hand',
    },
    {
      key: 'tx-pay',
      title: 'Payment after notice of acceptance',
      says: 'Payment follows within five business days after notice that a claim or a part of it is accepted.',
      trigger: 'notice of acceptance',
      count: 5,
      unit: 'business-days',
      source: 'Tex. Ins. Code 542.057',
      status: 'published, seen at second hand',
      cautions: ['A surplus-lines insurer has 20 business days.'],
    },
    {
      key: 'tx-pay-surplus',
      title: 'Payment after notice of acceptance, surplus lines',
      says: 'A surplus-lines insurer has 20 business days after notice of acceptance.',
      trigger: 'notice of acceptance',
      count: 20,
      unit: 'business-days',
      source: 'Tex. Ins. Code 542.057',
      status: 'published, seen at second hand',
    },
    {
      key: 'tx-delay',
      title: 'Delay after all items are received',
      says: 'The statute speaks of interest where a claim is not paid within 60 days after all items are received.',
      trigger: 'all items received',
      count: 60,
      unit: 'calendar-days',
      source: 'Tex. Ins. Code 542.058',
      status: 'published, seen at second hand',
    },
  ] as const
).map((row) => ({
  ...row,
  jurisdiction: 'US-TX',
  cautions: [...('cautions' in row ? row.cautions : []), TEXAS_CATASTROPHE],
}))

const louisiana: readonly ShippedRow[] = (
  [
    {
      key: 'la-pay',
      title: 'Payment after satisfactory proof of loss',
      says: 'Payment follows within 30 days after satisfactory proof of loss.',
      trigger: 'satisfactory proof of loss',
      count: 30,
      unit: 'calendar-days',
      source: 'La. R.S. 22:1892(A)(1), statute text',
      status: 'published',
    },
    {
      key: 'la-start',
      title: 'Start of loss adjustment',
      says: 'Loss adjustment starts within 14 days after notice of loss.',
      trigger: 'notice of loss',
      count: 14,
      unit: 'calendar-days',
      source: 'La. R.S. 22:1892(A)(3), statute text',
      status: 'published',
      cautions: ['In a catastrophe it is 30 days, which can be extended.'],
    },
    {
      key: 'la-start-catastrophe',
      title: 'Start of loss adjustment, catastrophe',
      says: 'In a catastrophe loss adjustment starts within 30 days after notice of loss.',
      trigger: 'notice of loss',
      count: 30,
      unit: 'calendar-days',
      source: 'La. R.S. 22:1892(A)(3), statute text',
      status: 'published',
      cautions: ['This time can be extended.'],
    },
    {
      key: 'la-catastrophe-pay',
      title: 'Residential catastrophe claim: payment',
      says: 'A residential catastrophe claim is paid within 60 days after satisfactory proof of loss.',
      trigger: 'satisfactory proof of loss',
      count: 60,
      unit: 'calendar-days',
      source: 'La. R.S. 22:1892.2, statute text',
      status: 'published',
      effectiveFrom: '2024-07-01',
      cautions: ['For other immovable property it is 90 days.'],
    },
    {
      key: 'la-catastrophe-pay-other',
      title: 'Catastrophe claim on other immovable property: payment',
      says: 'A catastrophe claim on immovable property other than a residence is paid within 90 days after satisfactory proof of loss.',
      trigger: 'satisfactory proof of loss',
      count: 90,
      unit: 'calendar-days',
      source: 'La. R.S. 22:1892.2, statute text',
      status: 'published',
      effectiveFrom: '2024-07-01',
    },
  ] as const
).map((row) => ({ ...row, jurisdiction: 'US-LA' }))

const colorado: readonly ShippedRow[] = [
  {
    key: 'co-rescind',
    jurisdiction: 'US-CO',
    title: 'Rescission of a roofing contract paid from insurance',
    says: 'An owner may rescind a roofing contract that is to be paid from insurance within 72 hours after written notice that the claim is denied in whole or in part.',
    trigger: 'written notice of denial, in whole or in part',
    count: 72,
    unit: 'hours',
    source: 'C.R.S. 6-22-104, statute text',
    status: 'published',
    cautions: ['What was paid is refunded within ten days.'],
  },
  {
    key: 'co-refund',
    jurisdiction: 'US-CO',
    title: 'Refund after rescission',
    says: 'What the owner paid is refunded within ten days after the rescission.',
    trigger: 'rescission of the contract',
    count: 10,
    unit: 'calendar-days',
    source: 'C.R.S. 6-22-104, statute text',
    status: 'published',
  },
]

const georgia: readonly ShippedRow[] = [
  {
    key: 'ga-cancel',
    jurisdiction: 'US-GA',
    title: 'Cancellation after notice that something is not covered',
    says: 'An owner may cancel until midnight of the fifth business day after written notice that all or part of the claim is not covered.',
    trigger: 'written notice to the owner',
    count: 5,
    unit: 'business-days',
    source: 'O.C.G.A. 10-1-393.12, bill as passed',
    status: 'published',
    cautions: [
      'The contract carries a set notice and a form in duplicate.',
      'A bill of 2025 (SB 201, signed 8 May 2025) limits assignments of benefits and contracts after a disaster; its details were not read.',
    ],
  },
]

/** Clocks of states other than Florida, as the reference rows have them. */
export const otherStatesClocks: readonly Rule[] = [
  ...texas.map((row) => shippedClock(row, 'https://statutes.capitol.texas.gov/')),
  ...louisiana.map((row) => shippedClock(row, 'https://legis.la.gov/')),
  ...colorado.map((row) => shippedClock(row, 'https://leg.colorado.gov/colorado-revised-statutes')),
  ...georgia.map((row) => shippedClock(row, 'https://www.legis.ga.gov/')),
]
