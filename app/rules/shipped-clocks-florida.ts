import type { Rule } from './rule.ts'
import { shippedClock, type ShippedRow } from './shipped-row.ts'

const jurisdiction = 'US-FL'

const DATE_OF_LOSS =
  'The statute says which day is the date of loss: for a hurricane its landfall; for a tornado, windstorm, severe rain or other weather the day it caused the damage, as verified by the national weather agency (F.S. 627.70132(3); the words on the agency are from memory).'
const WHICH_LAW =
  'Policies in force before 16 December 2022 may follow an older law; courts decide which one (a law-firm note of September 2023, second hand).'
const LONGER = 'The regulator can extend this time, and emergency orders do.'

const rows: readonly ShippedRow[] = [
  {
    key: 'fl-notice',
    jurisdiction,
    title: 'Notice of a new or reopened claim',
    says: 'Notice of a new or reopened claim is given within one year after the date of loss.',
    trigger: 'date of loss',
    count: 1,
    unit: 'years',
    source: 'F.S. 627.70132(2), 2024 statute text',
    status: 'published',
    cautions: [DATE_OF_LOSS, WHICH_LAW],
  },
  {
    key: 'fl-supplement',
    jurisdiction,
    title: 'Notice of a supplemental claim',
    says: 'Notice of a supplemental claim is given within 18 months after the date of loss.',
    trigger: 'date of loss',
    count: 18,
    unit: 'months',
    source: 'F.S. 627.70132(2), 2024 statute text',
    status: 'published',
    cautions: [DATE_OF_LOSS, WHICH_LAW],
  },
  {
    key: 'fl-old-notice',
    jurisdiction,
    title: 'Older law: two years',
    says: 'Under the law of 1 July 2021 a time of two years may apply to policies in force before 16 December 2022.',
    trigger: 'date of loss',
    count: 2,
    unit: 'years',
    source: 'Law-firm note of September 2023 on F.S. 627.70132',
    status: 'published, seen at second hand',
    cautions: [DATE_OF_LOSS, 'Courts decide which version applies. Before that law it was three years from landfall.'],
  },
  {
    key: 'fl-old-supplement',
    jurisdiction,
    title: 'Older law: three years',
    says: 'Under the law of 1 July 2021 a time of three years may apply to policies in force before 16 December 2022.',
    trigger: 'date of loss',
    count: 3,
    unit: 'years',
    source: 'Law-firm note of September 2023 on F.S. 627.70132',
    status: 'published, seen at second hand',
    cautions: [DATE_OF_LOSS, 'Courts decide which version applies. Before that law it was three years from landfall.'],
  },
  {
    key: 'fl-acknowledge',
    jurisdiction,
    title: 'Review and acknowledgement of a communication',
    says: 'The insurer reviews and acknowledges a communication on a claim within seven days of its receipt.',
    trigger: 'receipt of the communication',
    count: 7,
    unit: 'calendar-days',
    source: 'F.S. 627.70131(1)(a), 2023 and 2024 statute text',
    status: 'published',
  },
  {
    key: 'fl-investigate',
    jurisdiction,
    title: 'Begin of the investigation',
    says: 'An investigation begins within seven days of receipt of the proof of loss.',
    trigger: 'receipt of the proof of loss',
    count: 7,
    unit: 'calendar-days',
    source: 'F.S. 627.70131(3)(a), 2024 statute text',
    status: 'published',
    cautions: ['The insurer may investigate by photo, video or drone (F.S. 627.70131, second hand).'],
  },
  {
    key: 'fl-inspect',
    jurisdiction,
    title: 'Physical inspection, where there is one',
    says: 'A physical inspection, where there is one, takes place within 30 days of receipt of the proof of loss.',
    trigger: 'receipt of the proof of loss',
    count: 30,
    unit: 'calendar-days',
    source: 'F.S. 627.70131(3)(b), by two law notes',
    status: 'published, seen at second hand',
  },
  {
    key: 'fl-estimate',
    jurisdiction,
    title: 'Copy of a detailed estimate to the policyholder',
    says: 'A detailed estimate that was generated is sent to the policyholder within seven days.',
    trigger: 'the estimate is generated',
    count: 7,
    unit: 'calendar-days',
    source: 'F.S. 627.70131(3)',
    status: 'published, seen at second hand',
  },
  {
    key: 'fl-decide',
    jurisdiction,
    title: 'Decision on a claim or a part of it',
    says: 'A claim or a part of it is paid or denied within 60 days of notice of the initial, reopened or supplemental claim.',
    trigger: 'notice of the claim',
    count: 60,
    unit: 'calendar-days',
    source: 'F.S. 627.70131(7)',
    status: 'published, seen at second hand',
    cautions: ['The regulator can add up to 30 days.', LONGER],
  },
  {
    key: 'fl-cancel',
    jurisdiction,
    title: 'Cancellation of a roof contract after an emergency',
    says: 'A residential owner may cancel a contract for repair or replacement of a roof without penalty, where it is based on events under a Governor’s emergency: within ten days after its execution or until the official start date, whichever comes first.',
    trigger: 'execution of the contract',
    count: 10,
    unit: 'calendar-days',
    source: 'F.S. 489.147(6), words of the statute quoted',
    status: 'published',
    effectiveFrom: '2024-07-01',
    cautions: [
      'An official start date before the day counted here ends the time earlier.',
      'The contract carries a set notice, bold, of at least 18 points, just before the space for the signature; cancellation is by mail with proof (F.S. 489.147(6)(b), law and trade notes).',
      'Bills of 2025 proposed to bind this to 180 days after the declaration and to its area (SB 1076); whether that became law is not confirmed.',
    ],
  },
]

/** Clocks of Florida, as the reference rows have them. */
export const floridaClocks: readonly Rule[] = rows.map((row) =>
  shippedClock(row, 'https://www.leg.state.fl.us/statutes/'),
)
