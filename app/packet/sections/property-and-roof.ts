import { coveringLabels } from '../../evidence/catalog/labels.ts'
import { editionWords } from '../../roof/zones/zone-words.ts'
import type { Block, FactsBlock, Section } from '../document.ts'
import { directionWords } from '../format/directions.ts'
import { dateWords } from '../format/times.ts'
import type { PacketContext } from '../packet-context.ts'
import { plain, stated, statedRows } from '../text.ts'
import { edgeBlocks } from './edge-table.ts'
import { edgeZoneBlocks } from './edge-zones.ts'
import { facetBlocks } from './facet-table.ts'
import { column, heading, paragraph, titledSection } from './section.ts'

/** The house, the covering, its history, and the roof's facets and edges in figures. */
export function propertyAndRoofSection(context: PacketContext): Section {
  return titledSection('property-and-roof', 'Property and roof', [
    houseFacts(context),
    heading('Covering'),
    coveringFacts(context),
    ...history(context),
    ...facetBlocks(context),
    ...edgeBlocks(context),
    ...edgeZoneBlocks(context),
  ])
}

function houseFacts({ sheet }: PacketContext): FactsBlock {
  const { property, loss } = sheet
  const front = property.frontAzimuthDeg === null ? '' : directionWords(property.frontAzimuthDeg)
  return {
    kind: 'facts',
    columns: 2,
    rows: statedRows([
      { label: 'Front faces', value: front },
      { label: 'Storeys', value: figure(property.storeys) },
      { label: 'Mean roof height', value: figure(property.meanRoofHeightFt, ' ft') },
      { label: 'Wind standard', value: property.windEdition === null ? '' : editionWords(property.windEdition) },
      { label: 'Loss, as reported', value: loss.description },
    ]),
  }
}

function coveringFacts({ sheet }: PacketContext): FactsBlock {
  const { covering } = sheet
  return {
    kind: 'facts',
    columns: 2,
    rows: statedRows([
      { label: 'Class', value: covering.class === 'not-stated' ? '' : coveringLabels[covering.class] },
      { label: 'Profile', value: covering.profile },
      { label: 'Colour', value: covering.colour },
      { label: 'Laid in', value: figure(covering.installedYear) },
      { label: 'Exposure', value: figure(covering.exposureIn, ' in') },
      { label: 'Cover width', value: figure(covering.coverWidthIn, ' in') },
      { label: 'Headlap', value: figure(covering.headlapIn, ' in') },
      { label: 'Fastening', value: covering.fastening },
      { label: 'Underlayment', value: covering.underlayment },
      { label: 'Deck', value: covering.deck },
      { label: 'Matching stock', value: covering.stockNote },
    ]),
  }
}

function figure(value: number | null, unit = ''): string {
  return value === null ? '' : `${value}${unit}`
}

function history({ sheet }: PacketContext): readonly Block[] {
  const rows = [
    ...sheet.permits.map((note) => ({ what: 'Permit', note })),
    ...sheet.priorRepairs.map((note) => ({ what: 'Earlier repair', note })),
  ]
  if (rows.length === 0) return [paragraph('No permits or earlier repairs are on the job sheet.', 'small')]
  return [
    heading('Permits and earlier repairs'),
    {
      kind: 'table',
      summary: 'Permits and earlier repairs as far as known',
      columns: [column('What', 2), column('Date', 2), column('Reference', 2), column('Description', 6)],
      rows: rows.map(({ what, note }) => ({
        cells: [
          plain(what),
          stated(note.date === null ? '' : dateWords(note.date)),
          stated(note.reference),
          stated(note.description),
        ],
      })),
    },
  ]
}
