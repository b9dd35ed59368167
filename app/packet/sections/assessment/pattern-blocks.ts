import { handCheckPattern, handCheckWords } from '../../../assessment/hand-check-pattern.ts'
import { facetsLookedAt, sidePattern, zonePattern, type Pattern } from '../../../assessment/pattern.ts'
import {
  apartSentence,
  groupWorking,
  PATTERN_CAUTIONS,
  patternSentence,
  ratioWords,
  testWorking,
} from '../../../assessment/pattern-words.ts'
import { windForSides, windSideLabels } from '../../../assessment/wind-side.ts'
import type { Facet } from '../../../roof/facet.ts'
import { zoneLabels } from '../../../roof/zones/zone-words.ts'
import type { Block, Text } from '../../document.ts'
import { facetLink } from '../../links.ts'
import type { PacketContext } from '../../packet-context.ts'
import { joined, ledBy, plain } from '../../text.ts'
import { column, heading, paragraph } from '../section.ts'

/** Where findings of damage lie against the area that was looked at, by zone and by side of the wind. */
export function patternBlocks(context: PacketContext): readonly Block[] {
  const { findings, input, zone } = context
  if (!findings.some(({ kind }) => kind === 'damage')) return []
  const wind = windForSides(input.caseFile, zone)
  const checks = handCheckPattern(input.caseFile.survey.checks)
  return [
    heading('Where findings lie', true),
    ...comparison('By zone of the roof', zonePattern(context, context.zones), zoneLabels),
    ...comparison('By side of the wind', sidePattern(context, wind), windSideLabels),
    ...(wind.kind === 'known' ? [paragraph(wind.sentence, 'small')] : []),
    ...(checks === null ? [] : [paragraph(ledBy('Tiles checked by hand.', plain(handCheckWords(checks))))]),
    slopes(context),
    { kind: 'list', items: PATTERN_CAUTIONS.map(plain) },
  ]
}

function comparison<Key extends string>(
  title: string,
  pattern: Pattern<Key>,
  labels: Readonly<Record<Key, string>>,
): readonly Block[] {
  if (pattern.kind === 'refused') {
    return [paragraph(ledBy(`${title}: not compared.`, plain(pattern.sentences.join(' '))))]
  }
  const apart = apartSentence(pattern)
  return [
    {
      kind: 'group',
      blocks: [
        paragraph(ledBy(`${title}.`, plain(patternSentence(pattern, labels)))),
        {
          kind: 'table',
          summary: `${title}: observed and expected findings`,
          columns: [
            column('Part', 3),
            column('Looked at, sq ft', 2, 'end'),
            column('Observed', 2, 'end'),
            column('Expected', 2, 'end'),
            column('Ratio', 1, 'end'),
            column('Tiles counted', 2, 'end'),
            column('Tiles expected', 2, 'end'),
          ],
          rows: pattern.groups.map((group) => ({
            cells: [
              labels[group.key],
              group.lookedAtSqFt.toFixed(1),
              String(group.findings),
              group.expected.toFixed(1),
              ratioWords(group.ratio),
              String(group.tiles),
              group.tilesExpected.toFixed(1),
            ].map(plain),
          })),
        },
      ],
    },
    {
      kind: 'list',
      items: [
        ...pattern.groups.map((group) => groupWorking(labels[group.key], group, pattern)),
        testWorking(pattern.test),
        ...(apart === null ? [] : [apart]),
      ].map(plain),
    },
  ]
}

/** Slopes without findings tell as much as the others, and those that nobody looked at tell nothing. */
function slopes(context: PacketContext): Block {
  const { withoutFindings, notLookedAt, notStated } = facetsLookedAt(context)
  return {
    kind: 'facts',
    columns: 1,
    rows: [
      { label: 'Looked at, without findings of damage', value: letters(withoutFindings, true) },
      { label: 'Not looked at', value: letters(notLookedAt, false) },
      { label: 'Not stated how much was looked at', value: letters(notStated, false) },
    ],
  }
}

function letters(facets: readonly Facet[], withShare: boolean): Text {
  if (facets.length === 0) return plain('none')
  return joined(
    facets.map((facet): Text => [
      ...facetLink(facet),
      ...(withShare ? plain(` (${facet.inspected.percent ?? 0} % of it)`) : []),
    ]),
  )
}
