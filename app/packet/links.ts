import { photoRoleLabels } from '../evidence/catalog/labels.ts'
import { findingLabel, type Finding } from '../evidence/finding.ts'
import { photoLabel, type Photo } from '../evidence/photo.ts'
import { readingLabel } from '../evidence/reading-label.ts'
import type { Reading } from '../fieldtest/reading.ts'
import type { FacetId } from '../job/ids.ts'
import type { Facet } from '../roof/facet.ts'
import { anchorOfFacet, anchorOfFile, anchorOfFinding, anchorOfPhoto, anchorOfPin, anchorOfReading } from './anchors.ts'
import type { Text } from './document.ts'
import type { PacketContext } from './packet-context.ts'
import { joined, plain } from './text.ts'

/** "F-12", going to the finding. */
export function findingLink(finding: Finding): Text {
  return [{ text: findingLabel(finding.number), link: anchorOfFinding(finding) }]
}

/** "F-1, F-4", each going to its finding. */
export function findingLinks(findings: readonly Finding[]): Text {
  return joined(findings.map(findingLink))
}

/** The findings that a photo shows, each once, by number. */
export function findingsShown(photo: Photo, { findingsByPhoto }: PacketContext): readonly Finding[] {
  return [...new Set((findingsByPhoto.get(photo.id) ?? []).map(({ finding }) => finding))]
}

/** "A", going to the facet's line; a dash for none. */
export function facetLink(facet: Facet | undefined): Text {
  return facet === undefined ? plain('-') : [{ text: facet.letter, link: anchorOfFacet(facet) }]
}

/** "R-4", going to the reading. */
export function readingLink(reading: Reading): Text {
  return [{ text: readingLabel(reading.number), link: anchorOfReading(reading) }]
}

/** "P-007", going to the photo's card, or to its line in custody when the packet does not show it. */
export function photoLink(photo: Photo): Text {
  const shown = photo.tags.leftOutBecause === null
  return [{ text: photoLabel(photo.number), link: shown ? anchorOfPhoto(photo) : anchorOfFile(photo) }]
}

/** "pin 12", going to it on the plan; words where the finding has no pin. */
export function pinLink(finding: Finding): Text {
  return finding.pin === null
    ? [{ text: 'no pin', style: 'quiet' }]
    : [{ text: `pin ${finding.number}`, link: anchorOfPin(finding) }]
}

/** "P-007 close-up, P-008 mid view": the photos of a finding with the part each plays; left-out ones say so. */
export function photoLinksOf(finding: Finding, context: PacketContext): Text {
  const shown = finding.photos.flatMap(({ photoId, role }): readonly Text[] => {
    const photo = context.photoById.get(photoId)
    if (photo === undefined) return []
    const leftOut = photo.tags.leftOutBecause === null ? '' : ', left out of the packet'
    return [[...photoLink(photo), { text: ` ${photoRoleLabels[role].toLowerCase()}${leftOut}` }]]
  })
  return shown.length === 0 ? [{ text: 'none', style: 'quiet' }] : joined(shown)
}

/** "facet A (front, left of the door)" with the letter going to the facet; words where there is no facet. */
export function facetWithName(facetId: FacetId | null, context: PacketContext): Text {
  const facet = facetId === null ? undefined : context.facetById.get(facetId)
  if (facet === undefined) return [{ text: 'no facet stated', style: 'quiet' }]
  const name = facet.name.trim()
  return [...plain('facet '), ...facetLink(facet), ...(name === '' ? [] : plain(` (${name})`))]
}
