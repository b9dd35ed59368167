import { isAgencyTest } from '../../../fieldtest/criteria/criteria.ts'
import { ruleWords, type Criterion } from '../../../fieldtest/criteria/criterion.ts'
import { PROTOCOL_NAME, protocolLimits } from '../../../fieldtest/criteria/florida-field-protocol.ts'
import type { FieldSurvey } from '../../../fieldtest/survey.ts'
import type { Block, ListBlock } from '../../document.ts'
import { plain } from '../../text.ts'
import { heading, paragraph } from '../section.ts'

/** What readings are held against: the rule with its figures, scope, source and cautions. */
export function criterionBlocks(criterion: Criterion, survey: FieldSurvey): readonly Block[] {
  const isProtocol = criterion.use === 'approved-agency'
  const name = isProtocol && isAgencyTest(survey) ? `${criterion.name} (${PROTOCOL_NAME})` : criterion.name
  const { agency, listedResistanceLbf } = survey
  const dates = [
    criterion.effectiveFrom === '' ? '' : `from ${criterion.effectiveFrom}`,
    criterion.effectiveUntil === '' ? '' : `until ${criterion.effectiveUntil}`,
  ].filter((part) => part !== '')
  return [
    heading('Criterion', true),
    {
      kind: 'facts',
      columns: 1,
      rows: [
        { label: 'Name', value: [{ text: name, style: 'strong' }] },
        { label: 'Rule', value: plain(`${ruleWords(criterion.rule).replace(/\.$/, '')} [${criterion.status}].`) },
        ...(criterion.rule.kind === 'share-of-listed'
          ? [
              {
                label: 'Listed resistance',
                value: plain(listedResistanceLbf === null ? 'not entered' : `${listedResistanceLbf} lbf`),
              },
            ]
          : []),
        { label: 'Scope', value: plain(criterion.scope) },
        { label: 'Source', value: plain(criterion.source) },
        ...(dates.length === 0 ? [] : [{ label: 'In effect', value: plain(dates.join(' ')) }]),
        ...(isProtocol
          ? [
              {
                label: 'Testing agency',
                value: plain(`${agency.name}; approval ${agency.approval}; report ${agency.report}`),
              },
            ]
          : []),
      ],
    },
    ...(isProtocol ? [] : criterion.cautions.map((caution) => paragraph(caution, 'caution'))),
    paragraph('A criterion is not the building code, and a reading says nothing about compliance with it.', 'small'),
  ]
}

const always: readonly string[] = [
  'A tile that rises is not held at that moment. Since when, and why, a lift does not show: it may never have been well fastened or bonded, it may have aged, been walked on or repaired, or been loosened by the lifting.',
  'Pulling can itself break a tile or its bond, and so changes what the next person finds. A tile is photographed before it is pulled.',
  'Only the tiles, areas and squares listed were tested. Nothing is carried over to other tiles, areas or facets.',
]

/** Limits of field tests; where no approved agency tested, the Florida protocol is told as background and not by its name. */
export function backgroundBlocks(isAgency: boolean): ListBlock {
  const lead = isAgency
    ? []
    : [
        'The Florida protocol for checking tile attachment in the field is background here: a test of newly laid tile by approved agencies [Florida Test Protocols, 2020 edition; published]. These readings are not that test. Its sampling rule and its 3 % are used below and above only as yardsticks.',
      ]
  return { kind: 'list', items: [...always, ...lead, ...protocolLimits].map(plain) }
}
