import { jobRepair, jobWorkShares } from '../../../assessment/job-repair.ts'
import type { SectionShare } from '../../../assessment/work-share.ts'
import {
  exceptionSentence,
  OFFICIAL_DECIDES,
  sharePercent,
  shareSentence,
  shareWorking,
  workArea,
} from '../../../assessment/work-share-words.ts'
import { groupedNumber } from '../../../evidence/catalog/grouped-number.ts'
import type { WorkShareRule } from '../../../rules/rule.ts'
import type { Block } from '../../document.ts'
import type { PacketContext } from '../../packet-context.ts'
import { plain } from '../../text.ts'
import { column, heading, paragraph } from '../section.ts'

/** The share of work on each section against the chosen rule, with its source and cautions. Nothing while none is chosen. */
export function workShareBlocks({ input }: PacketContext): readonly Block[] {
  const { caseFile } = input
  const { rule } = caseFile.assessment
  const shares = jobWorkShares(caseFile, jobRepair(caseFile))
  if (rule === null || shares === null) return []
  return [
    heading('Share of work', true),
    paragraph(rule.says),
    {
      kind: 'facts',
      columns: 1,
      rows: [
        { label: 'Source', value: plain(rule.source) },
        { label: 'Standing', value: plain(`${rule.status}; looked at ${rule.asOf}`) },
        { label: 'Sections', value: plain(rule.data.sections) },
        ...(rule.data.exception === null ? [] : [{ label: 'Exception', value: plain(rule.data.exception.says) }]),
      ],
    },
    sharesTable(shares),
    ...shares.flatMap((share) => sentences(share, rule)),
    paragraph(OFFICIAL_DECIDES, 'caution'),
    { kind: 'list', items: rule.cautions.map(plain) },
  ]
}

function sharesTable(shares: readonly SectionShare[]): Block {
  return {
    kind: 'table',
    summary: 'Area of work over area of each roof section',
    columns: [
      column('Section', 2.4),
      column('Area, sq ft', 1.2, 'end'),
      column('Work, sq ft', 1.2, 'end'),
      column('Earlier, sq ft', 1.2, 'end'),
      column('Share', 1.1, 'end'),
    ],
    rows: shares.map(({ section, plannedSqFt, earlierSqFt, percent, verdict }) => ({
      cells: [
        plain(section.name),
        plain(groupedNumber(section.areaSqFt, 1)),
        plain(workArea(plannedSqFt)),
        plain(groupedNumber(earlierSqFt, 1)),
        plain(verdict === 'not-known' ? 'not known' : sharePercent(percent)),
      ],
    })),
  }
}

function sentences(share: SectionShare, rule: WorkShareRule): readonly Block[] {
  const exception = exceptionSentence(share.exception, rule)
  return [
    paragraph([shareSentence(share, rule), ...(exception === null ? [] : [exception])].join(' ')),
    paragraph([shareWorking(share), ...share.lacks].join(' '), 'small'),
  ]
}
