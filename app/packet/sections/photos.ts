import { photoRoleLabels } from '../../evidence/catalog/labels.ts'
import { photoLabel, type Photo } from '../../evidence/photo.ts'
import { stillWords } from '../../evidence/still.ts'
import { anchorOfCameras, anchorOfFile, anchorOfPhoto } from '../anchors.ts'
import type { PhotoCard, Section, Text } from '../document.ts'
import { shortHash } from '../format/files.ts'
import { facetWithName, findingLink, findingLinks, findingsShown, readingLink } from '../links.ts'
import type { PacketContext } from '../packet-context.ts'
import { photoInset } from '../photo-inset.ts'
import { markLines, marksAlt, marksOf } from '../photo-marks.ts'
import { clockCorrectionWords, photoSubject, positionWords, whenTakenWords } from '../photo-words.ts'
import { counted, joined, plain } from '../text.ts'
import { paragraph, titledSection } from './section.ts'

/** Every photo of the packet by number, each with its facet, findings, time, place and the beginning of its SHA-256. */
export function photosSection(context: PacketContext): Section {
  const { photos, leftOut, input } = context
  const out: Text =
    leftOut.length === 0
      ? []
      : [
          { text: ' ' },
          { text: `${counted(leftOut.length, 'photo')} left out, named in Custody with the reason.`, link: 'custody' },
        ]
  const words = 'Pictures are reduced copies of the originals. Full digests stand in Custody.'
  return titledSection('photos', 'Photos', [
    paragraph([...plain(photos.length === 0 ? 'No photo is shown.' : words), ...out], 'small'),
    ...(photos.length === 0
      ? []
      : [
          {
            kind: 'photo-cards' as const,
            perPage: input.options.photosPerPage,
            cards: photos.map((photo) => cardOf(photo, context)),
          },
        ]),
  ])
}

function cardOf(photo: Photo, context: PacketContext): PhotoCard {
  const label = photoLabel(photo.number)
  const subject = photoSubject(photo)
  const { drawing, offPlanFt } = photoInset(photo, context)
  return {
    photoId: photo.id,
    anchor: anchorOfPhoto(photo),
    ...marksOf(photo, context),
    alt: `Photo ${label}: ${subject}${marksAlt(context.markupByPhoto.get(photo.id))}`,
    title: [{ text: label, style: 'strong' }, ...plain(` ${subject}`)],
    lines: [
      whereLine(photo, context),
      shownLine(photo, context),
      ...poorlyLine(photo, context),
      ...markLines(photo, context),
      ...(photo.preview === 'ready' ? [] : [plain('can’t be shown; the original is in the evidence bundle')]),
      ...(photo.still === null ? [] : [plain(stillWords(photo.still))]),
      plain(whenTakenWords(photo, context.photoById)),
      ...correctionLine(photo),
      plain(
        `${positionWords(photo) ?? 'position not recorded'}${offPlanFt === null ? '' : `, ${Math.round(offPlanFt)} ft off the plan`}`,
      ),
      [{ text: 'SHA-256 ' }, { text: shortHash(photo.file.sha256), style: 'mono', link: anchorOfFile(photo) }],
    ],
    inset: drawing,
  }
}

function whereLine({ tags }: Photo, context: PacketContext): Text {
  const facet = tags.facetId === null ? undefined : context.facetById.get(tags.facetId)
  const role = tags.role === null ? [] : [plain(photoRoleLabels[tags.role].toLowerCase())]
  if (facet !== undefined) return joined([facetWithName(facet.id, context), ...role])
  return tags.role === 'elevation' || tags.role === 'document' ? joined(role) : joined([plain('no facet'), ...role])
}

function shownLine(photo: Photo, context: PacketContext): Text {
  const findings = (context.findingsByPhoto.get(photo.id) ?? []).map(({ finding, role }) => [
    ...findingLink(finding),
    ...(role === photo.tags.role ? [] : plain(` ${photoRoleLabels[role].toLowerCase()}`)),
  ])
  const readings = (context.readingsByPhoto.get(photo.id) ?? []).map(readingLink)
  const links = [...findings, ...readings]
  return links.length === 0 ? plain('in no finding') : joined(links)
}

function poorlyLine(photo: Photo, context: PacketContext): readonly Text[] {
  const poorly = findingsShown(photo, context).filter(({ showsPoorly }) => showsPoorly)
  return poorly.length === 0 ? [] : [[...plain('shows poorly in the picture: '), ...findingLinks(poorly)]]
}

/** The reason for a correction stands with its camera. */
function correctionLine(photo: Photo): readonly Text[] {
  const words = clockCorrectionWords(photo)
  return words === null ? [] : [[...plain(`${words}, see `), { text: 'Custody', link: anchorOfCameras }]]
}
