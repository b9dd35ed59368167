import { jobRepair } from '../../../assessment/job-repair.ts'
import { type FacetRepair, repairAssumptions, repairVerdictWords } from '../../../assessment/repair/repair.ts'
import { needAgainstStock, rangeWords, repairWorking } from '../../../assessment/repair/repair-words.ts'
import type { Block, Text } from '../../document.ts'
import { facetLink, findingLinks } from '../../links.ts'
import type { PacketContext } from '../../packet-context.ts'
import { plain, stated } from '../../text.ts'
import { column, heading, paragraph } from '../section.ts'

/** What a repair by single tiles takes against matching tile that is known to exist, and how that was counted. */
export function repairBlocks(context: PacketContext): readonly Block[] {
  const { caseFile } = context.input
  const { assessment } = caseFile
  const repair = jobRepair(caseFile)
  if (repair.verdict === 'nothing-to-do') return sources(context)
  return [
    heading('Repair by single tiles', true),
    paragraph(`${repairVerdictWords[repair.verdict]} ${needAgainstStock(repair)}`),
    ...(repair.lacks.length === 0
      ? []
      : [paragraph('Missing before this can be judged:'), { kind: 'list' as const, items: repair.lacks.map(plain) }]),
    ...(repair.facets.length === 0 ? [] : [repairTable(repair.facets, context)]),
    ...repair.facets.map((one) => paragraph(repairWorking(one, assessment), 'small')),
    paragraph('Taken for granted:'),
    { kind: 'list', items: repairAssumptions(assessment).map(plain) },
    ...sources(context),
  ]
}

function repairTable(facets: readonly FacetRepair[], { facetById }: PacketContext): Block {
  return {
    kind: 'table',
    summary: 'Tiles that a repair takes, by facet',
    columns: [
      column('Facet', 0.7),
      column('Replace', 1, 'end'),
      column('Set again', 1, 'end'),
      column('Lifted', 1.2, 'end'),
      column('May break', 1.2, 'end'),
      column('New tiles', 1.2, 'end'),
      column('Not counted', 1.8),
    ],
    rows: facets.map(({ facet, replace, reset, lifted, broken, needed, notCounted }) => ({
      cells: [
        facetLink(facetById.get(facet.id)),
        plain(String(replace)),
        plain(String(reset)),
        plain(rangeWords(lifted)),
        plain(broken === null ? '-' : rangeWords(broken)),
        plain(needed === null ? '-' : rangeWords(needed)),
        notCounted.length === 0 ? plain('-') : findingLinks(notCounted),
      ],
    })),
  }
}

/** Matching tile, searches for it and what is known of the profile, each with who says so and the documents that show it. */
function sources(context: PacketContext): readonly Block[] {
  const { stock, searches, profile } = context.input.caseFile.assessment
  return [
    ...(stock.length === 0
      ? []
      : [
          heading('Matching tile known of'),
          listTable(
            'Matching tile, by whom counted and where',
            ['Tiles', 'Where', 'Counted by', 'On', 'Note', 'Documents'],
            stock.map(({ pieces, where, by, on, note, attachmentIds }) => [
              plain(pieces === null ? 'not counted' : String(pieces)),
              ...[where, by, on ?? '', note].map(stated),
              documents(attachmentIds, context),
            ]),
          ),
        ]),
    ...(searches.length === 0
      ? []
      : [
          heading('Searches for matching tile'),
          listTable(
            'Searches for matching tile',
            ['Where', 'By', 'On', 'Answer', 'Documents'],
            searches.map(({ where, by, on, answer, attachmentIds }) => [
              ...[where, by, on ?? '', answer].map(stated),
              documents(attachmentIds, context),
            ]),
          ),
        ]),
    ...(profile.statement.trim() === ''
      ? []
      : [
          heading('The tile’s profile'),
          paragraph(profile.statement),
          paragraph([{ text: 'Documents: ' }, ...documents(profile.attachmentIds, context)], 'small'),
        ]),
  ]
}

function listTable(summary: string, titles: readonly string[], rows: readonly (readonly Text[])[]): Block {
  return {
    kind: 'table',
    summary,
    columns: titles.map((title) => column(title, /^(Tiles|On)$/.test(title) ? 0.9 : 1.6)),
    rows: rows.map((cells) => ({ cells: [...cells] })),
  }
}

function documents(ids: readonly string[], { input }: PacketContext): Text {
  const names = input.attachments.flatMap(({ id, file }) => (ids.includes(id) ? [file.fileName] : []))
  return names.length === 0 ? [{ text: 'none', style: 'quiet' }] : plain(`${names.join(', ')} (in Custody)`)
}
