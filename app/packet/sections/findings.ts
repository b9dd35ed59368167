import { basisWords, conditionsBasis } from '../../evidence/catalog/basis.ts'
import type { Finding } from '../../evidence/finding.ts'
import type { Facet } from '../../roof/facet.ts'
import { findingZone, shortZone } from '../../roof/zones/finding-zone.ts'
import type { Block, GroupBlock, Section, TableBlock } from '../document.ts'
import { howMuchWords, whatWords } from '../finding-words.ts'
import { facetLink, findingLink, pinLink } from '../links.ts'
import type { PacketContext } from '../packet-context.ts'
import { ledBy, plain } from '../text.ts'
import { findingBlocks, type FindingBlocks } from './one-finding.ts'
import { column, heading, paragraph, titledSection } from './section.ts'

/** All findings at a glance, then one by one under their facets. Facets without findings say so. */
export function findingsSection(context: PacketContext): Section {
  const { findings, facets } = context
  if (findings.length === 0) {
    return titledSection('findings', 'Findings', [paragraph('No finding is recorded.')])
  }
  return titledSection('findings', 'Findings', [
    glance(context),
    paragraph(
      `Parts and conditions are named as inspectors usually name them [${basisWords[conditionsBasis]}].`,
      'small',
    ),
    ...facets.flatMap((facet) => onFacet(facet, context)),
    ...onNoFinding(context),
    ...elsewhere(context),
  ])
}

function glance(context: PacketContext): TableBlock {
  const hasZones = context.zones.kind === 'drawn'
  return {
    kind: 'table',
    summary: 'All findings by number',
    columns: [
      column('Finding', 1),
      column('Facet', 1),
      column('What', 5),
      column('How much', 4),
      ...(hasZones ? [column('Zone', 2.8)] : []),
      column('Pin', 1.2),
      column('Photos', 1, 'end'),
    ],
    rows: context.findings.map((finding) => ({
      cells: [
        findingLink(finding),
        facetLink(finding.facetId === null ? undefined : context.facetById.get(finding.facetId)),
        plain(whatWords(finding)),
        plain(howMuchWords(finding)),
        ...(hasZones ? [plain(shortZone(findingZone(finding, context.zones)))] : []),
        pinLink(finding),
        plain(String(finding.photos.length)),
      ],
    })),
  }
}

function onFacet(facet: Facet, context: PacketContext): readonly Block[] {
  const here = findingsOn(facet, context)
  if (here.length === 0) return []
  const noDamage = here.some(({ kind }) => kind === 'damage') ? '' : ' No damage finding is recorded here.'
  return underHeading(
    [heading(`Facet ${facetName(facet)}`, true), paragraph(`${inspectedWords(facet)}${noDamage}`)],
    here.map((finding) => findingBlocks(finding, context)),
  )
}

function findingsOn({ id }: Facet, { findings }: PacketContext): readonly Finding[] {
  return findings.filter(({ facetId }) => facetId === id)
}

function facetName({ letter, name }: Facet): string {
  return name.trim() === '' ? letter : `${letter}, ${name.trim()}`
}

/** Facets without findings, a line each. */
function onNoFinding(context: PacketContext): readonly Block[] {
  const facets = context.facets.filter((facet) => findingsOn(facet, context).length === 0)
  if (facets.length === 0) return []
  return [
    heading('Facets without a finding', true),
    { kind: 'list', items: facets.map((facet) => ledBy(`${facetName(facet)}:`, plain(inspectedWords(facet)))) },
  ]
}

/** A heading stays with the beginning of the first finding under it. */
function underHeading(top: GroupBlock['blocks'], under: readonly FindingBlocks[]): readonly Block[] {
  return under.flatMap(({ start, rest }, i): readonly Block[] => [
    { kind: 'group', blocks: i === 0 ? [...top, ...start] : start },
    ...rest,
  ])
}

function inspectedWords({ inspected }: Facet): string {
  const note = inspected.note.trim()
  const share =
    inspected.percent === null
      ? 'How much of it was looked at is not stated.'
      : `${inspected.percent} % of it was looked at.`
  return note === '' ? share : `${share} ${note}`
}

function elsewhere(context: PacketContext): readonly Block[] {
  const loose = context.findings.filter(({ facetId }) => facetId === null || !context.facetById.has(facetId))
  if (loose.length === 0) return []
  return underHeading(
    [heading('Not placed on a facet', true), paragraph('For these findings no facet is stated.')],
    loose.map((finding) => findingBlocks(finding, context)),
  )
}
