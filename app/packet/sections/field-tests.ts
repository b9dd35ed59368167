import { basisWords } from '../../evidence/catalog/basis.ts'
import { componentLabel } from '../../evidence/catalog/components.ts'
import { readingLabel } from '../../evidence/reading-label.ts'
import type { Reading } from '../../fieldtest/reading.ts'
import { anchorOfReading } from '../anchors.ts'
import type { Block, Section, TableBlock, Text } from '../document.ts'
import { facetLink, findingLink, photoLink, readingLink } from '../links.ts'
import type { PacketContext } from '../packet-context.ts'
import { joined, ledBy, plain } from '../text.ts'
import { column, heading, paragraph, titledSection } from './section.ts'

/** Readings of a hand-lift survey as they were written down, with what such a survey can't show. No verdict is drawn. */
export function fieldTestsSection(context: PacketContext): Section | null {
  if (context.readings.length === 0) return null
  const without = context.readings.filter(({ liftIn, forceLbf }) => liftIn === null || forceLbf === null).length
  return titledSection('field-tests', 'Field tests', [
    paragraph(
      'A hand-lift survey: the nose of a tile is lifted by hand or with a gauge, and its rise and the force are written down.',
    ),
    readingTable(context),
    ...instrumentsUsed(context),
    paragraph(
      without === 0
        ? 'Every reading has both lift and force.'
        : `Without a lift or a force, and so not to be weighed against any figure: ${without} of ${context.readings.length} readings.`,
    ),
    heading('What these readings do not show'),
    { kind: 'list', items: cautions.map(plain) },
  ])
}

const cautions: readonly string[] = [
  'A tile that rises is not held at that moment. Since when, and why, a lift does not show: it may never have been well fastened or bonded, it may have aged, been walked on or repaired, or been loosened by the lifting.',
  'Without a record from before the storm, looseness alone cannot be tied to one event.',
  `The trade often repeats that the nose of a mechanically fastened tile should rise no more than 2 in under less than 35 lbf [${basisWords['common-practice']}]. No standard was found that states it, and no verdict is drawn from it here.`,
  'The Florida protocol for checking tile attachment is a quality check of newly laid tile by approved agencies, with set sample sizes [Florida Test Protocols, 2020 edition; published]. These readings are not that test.',
  'Pulling can itself break a tile or its bond.',
  'Only the tiles listed were lifted. The readings say nothing of other tiles.',
]

function readingTable(context: PacketContext): TableBlock {
  return {
    kind: 'table',
    summary: 'Hand-lift readings as written down',
    columns: [
      column('Reading', 1),
      column('Facet', 0.8),
      column('Part', 1.3),
      column('Lift, in', 0.9, 'end'),
      column('Force, lbf', 1, 'end'),
      column('Method', 1),
      column('Finding', 1),
      column('Photos', 1.2),
      column('Note', 4),
    ],
    rows: context.readings.map((reading) => ({ anchor: anchorOfReading(reading), cells: cellsOf(reading, context) })),
  }
}

function cellsOf(reading: Reading, context: PacketContext): readonly Text[] {
  const finding = reading.findingId === null ? undefined : context.findingById.get(reading.findingId)
  const photos = reading.photoIds.flatMap((id) => context.photoById.get(id) ?? [])
  return [
    [{ text: readingLabel(reading.number), style: 'strong' }],
    facetLink(reading.facetId === null ? undefined : context.facetById.get(reading.facetId)),
    plain(componentLabel(reading.component)),
    recorded(reading.liftIn),
    recorded(reading.forceLbf),
    plain(reading.method === 'gauge' ? 'gauge' : 'by hand'),
    finding === undefined ? plain('-') : findingLink(finding),
    photos.length === 0 ? plain('none') : joined(photos.map(photoLink)),
    plain(reading.note.trim()),
  ]
}

function recorded(value: number | null): Text {
  return value === null ? [{ text: 'not recorded', style: 'quiet' }] : plain(String(value))
}

/** Each instrument once, with the readings that were taken with it. */
function instrumentsUsed({ readings }: PacketContext): readonly Block[] {
  const names = [...new Set(readings.map(({ instrument }) => instrument.trim()))].filter((name) => name !== '')
  if (names.length === 0) return []
  const used = names.map((name) => {
    const taken = readings.filter(({ instrument }) => instrument.trim() === name)
    return [...plain(`${name} (`), ...joined(taken.map(readingLink)), ...plain(')')]
  })
  return [paragraph(ledBy(used.length === 1 ? 'Instrument:' : 'Instruments:', [...joined(used, '; '), ...plain('.')]))]
}
