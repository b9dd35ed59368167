import { photoLabel, type Photo } from '../../evidence/photo.ts'
import { lossCauseLabels } from '../../evidence/catalog/labels.ts'
import type { Block, FactsBlock, Section } from '../document.ts'
import { dateWords, instantWords } from '../format/times.ts'
import { howItIsWritten, whatThisIs, whatThisIsNot } from '../guard-rails.ts'
import { photoLink } from '../links.ts'
import type { PacketContext } from '../packet-context.ts'
import { marksOf } from '../photo-marks.ts'
import { joined, plain, stated } from '../text.ts'
import { paragraph } from './section.ts'

/** What this is and is not, whose roof, who looked at it, and which state of the record it was made from. */
export function coverSection(context: PacketContext): Section {
  const { input } = context
  return {
    key: 'cover',
    title: 'Cover',
    start: 'new-page',
    blocks: [
      { kind: 'heading', level: 1, text: 'Roof condition record', inOutline: false },
      paragraph(whatThisIs, 'lead'),
      paragraph(whatThisIsNot),
      factsOfHouse(context),
      ...picture(context),
      factsOfRecord(context),
      paragraph(howItIsWritten, 'small'),
      ...(input.revision === null
        ? [paragraph('This is a draft. It has not been issued and may change.', 'caution')]
        : []),
    ],
  }
}

function factsOfHouse({ sheet, input }: PacketContext): FactsBlock {
  const { property, owner, insurance, loss, inspection, contractor } = sheet
  const dates = inspection.dates.map(dateWords).join('; ')
  const cause = loss.cause === 'not-stated' ? '' : ` (${lossCauseLabels[loss.cause].toLowerCase()}, as reported)`
  return {
    kind: 'facts',
    columns: 2,
    rows: [
      { label: 'Property', value: stated(addressWords(property)) },
      { label: 'Owner', value: stated(owner.name) },
      { label: 'Date of loss', value: stated(loss.date === null ? '' : `${dateWords(loss.date)}${cause}`) },
      { label: 'Inspected', value: stated(dates) },
      { label: 'Insurer', value: stated(insurance.insurer) },
      { label: 'Claim number', value: stated(insurance.claimNumber) },
      { label: 'Policy number', value: stated(insurance.policyNumber) },
      { label: 'Job', value: plain(input.caseFile.job.number) },
      { label: 'Contractor', value: stated(contractor.name) },
      { label: 'Contractor’s licence', value: stated(contractor.licence) },
      { label: 'Inspector', value: stated(inspection.inspector) },
      { label: 'Inspector’s licence', value: stated(inspection.inspectorLicence) },
    ],
  }
}

/** The address on one line, empty parts left out. */
function addressWords(property: PacketContext['sheet']['property']): string {
  const place = [property.region, property.postalCode].map((part) => part.trim()).filter((part) => part !== '')
  return [property.address.trim(), property.city.trim(), place.join(' ')].filter((part) => part !== '').join(', ')
}

function picture(context: PacketContext): readonly Block[] {
  const photo = coverPhoto(context.photos)
  if (photo === undefined) return []
  const caption = photo.tags.caption.trim()
  return [
    {
      kind: 'picture',
      photoId: photo.id,
      ...marksOf(photo, context),
      alt: `Photo ${photoLabel(photo.number)}: ${caption === '' ? 'the house' : caption}`,
      caption: joined([photoLink(photo), ...(caption === '' ? [] : [plain(caption)])], ' '),
      heightIn: { least: 2.6, most: 5.4 },
    },
  ]
}

/** The first side of the house, else the first overview, that can be shown. */
function coverPhoto(photos: readonly Photo[]): Photo | undefined {
  const shown = photos.filter(({ preview }) => preview === 'ready')
  return shown.find(({ tags }) => tags.role === 'elevation') ?? shown.find(({ tags }) => tags.role === 'overview')
}

function factsOfRecord({ input, revisionLabel, zone }: PacketContext): FactsBlock {
  const hash = input.headHash === '' ? stated('') : ([{ text: input.headHash, style: 'mono' }] as const)
  const made = instantWords(input.issuedAtMs, zone)
  return {
    kind: 'facts',
    columns: 1,
    rows: [
      {
        label: 'Revision',
        value: plain(`${revisionLabel}, ${input.revision === null ? 'made' : 'issued'} ${made} by ${input.operator}`),
      },
      { label: 'Evidence log, head hash', value: hash },
      { label: 'Made with', value: plain(`Battenbook ${input.programVersion}`) },
    ],
  }
}
