import { diaryTimeWords } from '../../diary/diary-time.ts'
import { diaryLabel } from '../../diary/entry.ts'
import { itemWords } from '../../diary/entry-words.ts'
import type { Handover } from '../../diary/handovers.ts'
import type { Block, Text } from '../document.ts'
import type { PacketContext } from '../packet-context.ts'
import { plain, stated } from '../text.ts'
import { column, heading, paragraph } from './section.ts'

/** Documents received and handed over, as part of custody, for recipients who get the list. */
export function handoverBlocks({ input }: PacketContext): readonly Block[] {
  if (input.handovers.length === 0) return []
  return [
    heading('Contacts and documents handed over', true),
    paragraph('As the office noted them. What was said is not part of this record.', 'small'),
    handoverTable(input.handovers),
  ]
}

/** The table of documents received and handed over: when, who, what with its hashes, how, and who signed. */
export function handoverTable(handovers: readonly Handover[]): Block {
  return {
    kind: 'table',
    summary: 'Documents received and handed over',
    columns: [
      column('Entry', 0.7),
      column('When', 2),
      column('From, to', 2.2),
      column('What', 4.2),
      column('How', 1.7),
    ],
    rows: handovers.map((handover) => ({
      cells: [
        plain(diaryLabel(handover.number)),
        plain(diaryTimeWords(handover.content.at)),
        partyCell(handover),
        whatCell(handover),
        howCell(handover),
      ],
    })),
  }
}

function partyCell({ content }: Handover): Text {
  if (content.kind === 'received') return [...plain('Received from '), ...stated(content.from)]
  return [...plain('From '), ...stated(content.from), ...plain(' to '), ...stated(content.to)]
}

function whatCell({ content }: Handover): Text {
  if (content.kind === 'received') return plain(content.what)
  return content.items
    .filter((item) => itemWords(item) !== '')
    .flatMap((item, at): Text => {
      const between = at === 0 ? '' : '; '
      const { packet } = item
      if (packet === null) return plain(`${between}${itemWords(item)}`)
      return [
        { text: `${between}${itemWords(item)}, SHA-256 of its PDF ` },
        { text: packet.pdfSha256, style: 'mono' },
        { text: ', log head ' },
        { text: packet.headHash, style: 'mono' },
      ]
    })
}

function howCell({ content }: Handover): Text {
  const signed = content.kind === 'handed-over' && content.signedBy !== '' ? `, signed by ${content.signedBy}` : ''
  return content.medium === '' && signed !== '' ? plain(signed.slice(2)) : [...stated(content.medium), ...plain(signed)]
}
