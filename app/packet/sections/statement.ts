import { inspectionMethodLabels } from '../../evidence/catalog/labels.ts'
import type { Facet } from '../../roof/facet.ts'
import type { Block, Section } from '../document.ts'
import { dateWords } from '../format/times.ts'
import { limitsOfInspection, whatThisIs, whatThisIsNot, workAtHeight } from '../guard-rails.ts'
import type { PacketContext } from '../packet-context.ts'
import { plain, stated } from '../text.ts'
import { heading, paragraph, titledSection } from './section.ts'

/** Who looked at the roof and how, the limits of it, the inspector's overall opinion in their own words, and the signature. */
export function statementSection(context: PacketContext): Section {
  const { inspection, contractor } = context.sheet
  return titledSection('statement', 'Statement', [
    paragraph(`${whatThisIs} ${whatThisIsNot}`),
    methodFacts(context),
    paragraph(workAtHeight, 'caution'),
    heading('Limits of the inspection'),
    { kind: 'list', items: [...notAllSeen(context.facets), ...limitsOfInspection].map(plain) },
    ...overallOpinion(inspection.overallOpinion),
    {
      kind: 'group',
      blocks: [
        heading('Signature'),
        paragraph(
          'The observations and measurements in this record are as I made them on the dates given. Opinions are marked as such and are mine.',
        ),
        {
          kind: 'signature',
          lines: [
            { label: 'Inspector', value: withLicence(inspection.inspector, inspection.inspectorLicence) },
            { label: 'Contractor', value: withLicence(contractor.name, contractor.licence) },
            { label: 'Signature', value: '' },
            { label: 'Date', value: '' },
          ],
        },
      ],
    },
  ])
}

function withLicence(name: string, licence: string): string {
  return licence.trim() === '' ? name.trim() : `${name.trim()}, licence ${licence.trim()}`
}

function methodFacts({ sheet }: PacketContext): Block {
  const { inspection, contractor } = sheet
  const contact = [contractor.address, contractor.phone, contractor.email]
    .filter((part) => part.trim() !== '')
    .join(', ')
  return {
    kind: 'facts',
    columns: 1,
    rows: [
      { label: 'Inspected by', value: stated(inspection.inspector) },
      { label: 'On', value: stated(inspection.dates.map(dateWords).join('; ')) },
      { label: 'Method', value: stated(inspection.method.map((key) => inspectionMethodLabels[key]).join('; ')) },
      { label: 'Weather', value: stated(inspection.weather) },
      { label: 'Marks on arrival', value: stated(inspection.marksOnArrival) },
      {
        label: 'Contractor',
        value: stated([contractor.name, contact].filter((part) => part.trim() !== '').join(', ')),
      },
    ],
  }
}

function notAllSeen(facets: readonly Facet[]): readonly string[] {
  return facets.flatMap(({ letter, inspected }) => {
    if (inspected.percent === null) return [`How much of facet ${letter} was looked at is not stated.`]
    if (inspected.percent >= 100) return []
    const note = inspected.note.trim()
    return [
      `${inspected.percent} % of facet ${letter} was looked at${note === '' ? '; the reason is not stated.' : `: ${note}`}`,
    ]
  })
}

function overallOpinion(opinion: string): readonly Block[] {
  if (opinion.trim() === '') return []
  return [heading('Overall opinion of the inspector, in their words', true), paragraph(opinion.trim())]
}
