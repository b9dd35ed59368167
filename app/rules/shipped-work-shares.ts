import { type WorkShareRule, workShareRuleSchema } from './rule.ts'

const SECTIONS =
  'A roof section is a part of the roof divided by an expansion joint, a parapet or dividing wall, flashing other than a valley, a difference in height, the kind of roof or the legal description; hips and ridges divide nothing (definition from memory; joint and wall confirmed by a trade-association article).'

const EXCEPTION =
  'Where the roof or section was built, repaired or replaced in compliance with the 2007 Florida Building Code or a later one and 25 percent or more is worked on, only the part worked on need meet the current code (F.S. 553.844(5), 2022, published). The 2007 code took effect on 1 March 2009 (published in an engineering firm’s article that quotes the statute).'

/** The share of work that is shipped, as quoted at second hand; what was not seen or not confirmed stands in its words and cautions. */
export const shippedWorkShares: readonly WorkShareRule[] = [
  workShareRuleSchema.parse({
    kind: 'work-share',
    key: 'fl-25-percent',
    jurisdiction: 'US-FL',
    title: '25 percent of a roof or roof section in 12 months',
    says: 'Not more than 25 percent of the total roof area or of a roof section may be repaired, replaced or recovered in any 12-month period unless the whole roofing system or section is brought to the code.',
    source:
      'Florida Building Code, Existing Building, 706.1.1 (2017 and later; 708.1.1 in 2014, 611.1.1 in 2007), as quoted in several places',
    link: '',
    status: 'published, seen at second hand',
    asOf: '2026-11-25',
    effectiveFrom: '2009-03-01',
    cautions: [
      'The rule speaks of the area that is worked on for any reason, not of the area that is damaged.',
      'Earlier work counts by the day of work under a permit; the office enters it.',
      'From 2017 on the whole system or section is replaced to conform; before, the rest had to conform (trade-association article of 2018).',
      'Whether tile that is lifted and set again counts, and whether used tile without a current product approval may be laid, was put to the Building Commission as question DS 2020-022; its answer was not seen.',
      'Whether work on undamaged parts that a repair needs counts was changed between editions; the present wording was not confirmed.',
      'Check the current code and local practice with the building official or a licensed professional.',
    ],
    data: {
      morePercent: 25,
      withinMonths: 12,
      sections: SECTIONS,
      exception: { permitFrom: '2009-03-01', atLeastPercent: 25, says: EXCEPTION },
    },
  }),
]
