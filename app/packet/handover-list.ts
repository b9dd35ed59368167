import type { Handover } from '../diary/handovers.ts'
import type { Job } from '../job/job.ts'
import type { PacketDocument } from './document.ts'
import { whatThisIsNot } from './guard-rails.ts'
import { instantWords } from './format/times.ts'
import type { PacketOptions } from './options.ts'
import { handoverTable } from './sections/handover-blocks.ts'
import { paragraph, titledSection } from './sections/section.ts'
import { statedRows } from './text.ts'

/** What a printed list of handovers is made from. */
interface HandoverList {
  readonly job: Job
  readonly handovers: readonly Handover[]
  readonly paper: PacketOptions['paper']
  readonly madeAtMs: number
  /** IANA zone in which the time of the list is given. */
  readonly zone: string
  readonly operator: string
}

/** A list of documents received and handed over, to print and to sign. It holds nothing else of the diary. */
export function handoverList({ job, handovers, paper, madeAtMs, zone, operator }: HandoverList): PacketDocument {
  const { property, owner, contractor } = job.sheet
  return {
    paper,
    title: 'Documents received and handed over',
    jobLabel: `Job ${job.number}`,
    revisionLabel: `As of ${instantWords(madeAtMs, zone)}`,
    author: contractor.name.trim() || operator,
    createdAtMs: madeAtMs,
    watermark: null,
    sections: [
      titledSection('handovers', 'Documents received and handed over', [
        {
          kind: 'facts',
          columns: 2,
          rows: statedRows([
            { label: 'Owner', value: owner.name },
            {
              label: 'Address',
              value: [property.address, property.city].filter((part) => part.trim() !== '').join(', '),
            },
            { label: 'Contractor', value: contractor.name },
            { label: 'Licence', value: contractor.licence },
          ]),
        },
        handovers.length === 0 ? paragraph('None are noted.') : handoverTable(handovers),
        paragraph(whatThisIsNot, 'small'),
        {
          kind: 'signature',
          lines: [
            { label: 'Received by', value: '' },
            { label: 'Handed over by', value: '' },
            { label: 'Place and date', value: '' },
          ],
        },
      ]),
    ],
  }
}
