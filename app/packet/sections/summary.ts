import { causes } from '../../evidence/catalog/causes.ts'
import { components } from '../../evidence/catalog/components.ts'
import { extentWords } from '../../evidence/catalog/extent-words.ts'
import { causeKeySchema } from '../../evidence/catalog/keys.ts'
import { consequenceLabels, findingKindLabels } from '../../evidence/catalog/labels.ts'
import { consequenceSchema, findingKindSchema, type Finding } from '../../evidence/finding.ts'
import { facetGeometry, roofTotals } from '../../roof/facet-geometry.ts'
import type { Block, Section, TableBlock, Text } from '../document.ts'
import { howMuchWords, whatWords } from '../finding-words.ts'
import { areaFigure } from '../format/areas.ts'
import { facetLink, findingLink, findingLinks } from '../links.ts'
import type { PacketContext } from '../packet-context.ts'
import { tally, type TallyRow } from '../../evidence/tally.ts'
import { counted, joined, ledBy, plain } from '../text.ts'
import { column, heading, paragraph, titledSection } from './section.ts'

/** One page: what was looked at, what was found in numbers, what follows. Every number links to its findings. */
export function summarySection(context: PacketContext): Section {
  const blocks = [
    paragraph(inspectedWords(context)),
    ...(context.facets.length === 0 ? [] : [facetTable(context)]),
    ...damageBlocks(context),
    ...alsoRecorded(context),
    ...whatFollows(context),
  ]
  return { ...titledSection('summary', 'Summary', blocks), compact: true }
}

function inspectedWords({ facets, findings, photos, readings }: PacketContext): string {
  const { areaSqFt } = roofTotals(facets)
  const roof =
    facets.length === 0
      ? 'No facets are drawn on the plan.'
      : `The plan has ${counted(facets.length, 'facet')}, ${areaFigure(areaSqFt)} sq ft along the slope.`
  const records = [
    counted(findings.length, 'finding'),
    counted(photos.length, 'photo'),
    counted(readings.length, 'reading'),
  ]
  return `${roof} The record holds ${records.join(', ')}.`
}

function facetTable(context: PacketContext): TableBlock {
  const linksOr = (findings: readonly Finding[]) => (findings.length === 0 ? plain('none') : findingLinks(findings))
  return {
    kind: 'table',
    summary: 'Facets, how much of each was looked at, and the findings on each',
    columns: [
      column('Facet', 4.9),
      column('Area, sq ft', 1.4, 'end'),
      column('Looked at', 1.2, 'end'),
      column('Damage findings', 2.9),
      column('Other findings', 1.85),
      column('Found sound', 1.75),
    ],
    rows: context.facets.map((facet) => {
      const here = context.findings.filter(({ facetId }) => facetId === facet.id)
      const name = facet.name.trim()
      return {
        cells: [
          [...facetLink(facet), ...(name === '' ? [] : plain(` ${name}`))],
          plain(areaFigure(facetGeometry(facet).areaSqFt)),
          plain(facet.inspected.percent === null ? 'not stated' : `${facet.inspected.percent} %`),
          linksOr(here.filter(({ kind }) => kind === 'damage')),
          linksOr(here.filter(({ kind }) => kind !== 'damage' && kind !== 'sound')),
          linksOr(here.filter(({ kind }) => kind === 'sound')),
        ],
      }
    }),
  }
}

function damageBlocks({ findings }: PacketContext): readonly Block[] {
  const damage = findings.filter(({ kind }) => kind === 'damage')
  if (damage.length === 0) return [heading('Damage'), paragraph('No damage finding is recorded.')]
  return [
    heading('Damage, in numbers'),
    {
      kind: 'table',
      summary: 'Damage by component and condition: what was counted exactly, and what was said otherwise',
      columns: [column('What', 3.9), column('Counted exactly', 2.6), column('Said otherwise, not added', 5)],
      rows: tally(damage).map((row) => ({
        cells: [plain(whatWords(row)), countedCell(row), apartCell(row)],
      })),
    },
    paragraph(
      'Only exact counts are added, and only within a line: one piece can show more than one condition.',
      'small',
    ),
  ]
}

function countedCell({ counted: exact, component }: TallyRow): Text {
  if (exact === null) return plain('-')
  const words = extentWords({ kind: 'exactly', count: exact.count }, components[component])
  return [...plain(`${words} (`), ...findingLinks(exact.findings), ...plain(')')]
}

function apartCell({ apart }: TallyRow): Text {
  if (apart.length === 0) return plain('-')
  return joined(
    apart.map((finding) => [...plain(`${howMuchWords(finding)} (`), ...findingLink(finding), ...plain(')')]),
    '; ',
  )
}

function alsoRecorded({ findings }: PacketContext): readonly Block[] {
  const items = findingKindSchema.options.flatMap((kind): readonly Text[] => {
    const these = findings.filter((finding) => kind !== 'damage' && finding.kind === kind)
    if (these.length === 0) return []
    return [
      ledBy(
        `${findingKindLabels[kind]}:`,
        joined(
          these.map((finding) => [...plain(`${inShort(finding)} (`), ...findingLink(finding), ...plain(')')]),
          '; ',
        ),
      ),
    ]
  })
  return items.length === 0 ? [] : [heading('Also recorded'), { kind: 'list', items }]
}

function inShort(finding: Finding): string {
  const what = whatWords(finding)
  return finding.extent.kind === 'not-stated' ? what : `${what}, ${howMuchWords(finding)}`
}

function whatFollows(context: PacketContext): readonly Block[] {
  const { findings } = context
  const line = (lead: string, these: readonly Finding[]): readonly Text[] =>
    these.length === 0 ? [] : [ledBy(`${lead}:`, findingLinks(these))]
  const items: readonly Text[] = [
    ...consequenceSchema.options.flatMap((key) =>
      line(
        sentenceCase(consequenceLabels[key]),
        findings.filter(({ consequences }) => consequences.includes(key)),
      ),
    ),
    ...line(
      'Urgent',
      findings.filter(({ urgent }) => urgent),
    ),
    ...line(
      'Temporary measure taken',
      findings.filter(({ temporaryMeasure }) => temporaryMeasure.trim() !== ''),
    ),
    ...opinions(findings),
    ...elsewhereLine(context),
  ]
  return items.length === 0 ? [] : [heading('What follows from it'), { kind: 'list', items }]
}

function opinions(findings: readonly Finding[]): readonly Text[] {
  const damage = findings.filter(({ kind }) => kind === 'damage')
  const parts = causeKeySchema.options.flatMap((key): readonly Text[] => {
    const these = damage.filter(({ cause }) => cause.cause === key)
    return these.length === 0
      ? []
      : [[...plain(`${causes[key].label.toLowerCase()} (`), ...findingLinks(these), ...plain(')')]]
  })
  return parts.length === 0 ? [] : [ledBy('Inspector’s opinion on cause, by damage finding:', joined(parts, '; '))]
}

/** Field tests and matching stock share a line, which only leads to where they are told. */
function elsewhereLine({ readings, sheet }: PacketContext): readonly Text[] {
  const both = readings.filter(({ liftIn, forceLbf }) => liftIn !== null && forceLbf !== null).length
  const tests = ledBy('Field tests:', [
    { text: counted(readings.length, 'reading'), link: 'field-tests' },
    { text: `, ${both} with both lift and force.` },
  ])
  const stock = ledBy('Matching stock:', [{ text: 'what is known', link: 'property-and-roof' }])
  const parts = [...(readings.length === 0 ? [] : [tests]), ...(sheet.covering.stockNote.trim() === '' ? [] : [stock])]
  return parts.length === 0 ? [] : [joined(parts, ' ')]
}

function sentenceCase(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1)
}
