import type { Camera, ClockComparison } from '../../evidence/camera.ts'
import type { Photo } from '../../evidence/photo.ts'
import { stillWords } from '../../evidence/still.ts'
import { videoLabel } from '../../evidence/video-label.ts'
import { anchorOfCameras, anchorOfFile } from '../anchors.ts'
import type { Block, Section, TableBlock, Text } from '../document.ts'
import { bytesFigure } from '../format/files.ts'
import { correctionWords, photoTimeWords } from '../format/times.ts'
import { photoLink } from '../links.ts'
import type { PacketContext } from '../packet-context.ts'
import { supportingPictures } from '../supporting-pictures.ts'
import { counted, joined, plain, stated } from '../text.ts'
import { verifyingSteps } from '../verifying.ts'
import { handoverBlocks } from './handover-blocks.ts'
import { videoBlocks } from './custody-videos.ts'
import { column, heading, paragraph, titledSection } from './section.ts'

/** Every file with its full SHA-256, what is left out and why, clock corrections, and how to check all of it. */
export function custodySection(context: PacketContext): Section {
  const { photos, input } = context
  return titledSection('custody', 'Custody', [
    paragraph(
      'Originals are kept byte for byte as the cameras wrote them and were hashed when they were taken in. A hash shows that a file has not changed since then; it does not say who took it or when.',
    ),
    paragraph([{ text: 'Evidence log, head hash ' }, { text: input.headHash, style: 'mono' }], 'small'),
    { kind: 'heading', level: 2, text: 'Cameras', anchor: anchorOfCameras, inOutline: true },
    ...cameraBlocks(context),
    ...comparisonBlocks(context),
    ...correctionBlocks(context),
    heading('Photos in the packet', true),
    photos.length === 0 ? paragraph('None.') : fileTable(photos, context),
    ...leftOutBlocks(context),
    ...videoBlocks(context),
    ...keptBackBlocks(context),
    ...supportingBlocks(context),
    ...attachmentBlocks(context),
    ...handoverBlocks(context),
    ...fileRemarks(context),
    {
      kind: 'group',
      blocks: [heading('How to verify', true), { kind: 'list', items: verifyingSteps.map(plain) }],
    },
  ])
}

function cameraName({ make, model, serial }: Pick<Camera, 'make' | 'model' | 'serial'>): string {
  const name = [make, model]
    .map((part) => part.trim())
    .filter((part) => part !== '')
    .join(' ')
  return `${name === '' ? 'make not written' : name}${serial.trim() === '' ? '' : `, serial ${serial.trim()}`}`
}

function cameraLabel(photo: Photo, { input }: PacketContext): string {
  const index = input.caseFile.cameras.findIndex(({ id }) => id === photo.cameraId)
  return index < 0 ? 'camera not known' : `camera ${index + 1}`
}

function cameraBlocks({ input, photos, leftOut }: PacketContext): readonly Block[] {
  const { cameras } = input.caseFile
  if (cameras.length === 0) return [paragraph('No camera wrote its name into a file.')]
  const all = [...photos, ...leftOut]
  return [
    {
      kind: 'table',
      summary: 'Cameras and the corrections of their clocks',
      columns: [
        column('Camera', 1),
        column('Make, model, serial', 3),
        column('Photos', 0.8, 'end'),
        column('Clock correction', 1.6),
        column('Why', 5.5),
      ],
      rows: cameras.map((camera, i) => ({
        cells: [
          plain(String(i + 1)),
          plain(cameraName(camera)),
          plain(String(all.filter(({ cameraId }) => cameraId === camera.id).length)),
          plain(camera.clock.correctionMs === 0 ? 'none' : correctionWords(camera.clock.correctionMs)),
          camera.clock.correctionMs === 0 ? plain(camera.clock.why.trim()) : stated(camera.clock.why),
        ],
      })),
    },
  ]
}

/** The comparisons that corrections rest on, both times kept. */
function comparisonBlocks({ input, photoById }: PacketContext): readonly Block[] {
  const compared = input.caseFile.cameras.flatMap((camera, at) =>
    (camera.clock.comparisons ?? []).map((comparison) => ({ comparison, camera: at + 1 })),
  )
  if (compared.length === 0) return []
  const line = 'Between two comparisons of one camera the correction runs in a straight line; outside them it stays.'
  return [
    heading('How clocks were compared'),
    paragraph(line, 'small'),
    {
      kind: 'table',
      summary: 'Comparisons of cameras with other clocks',
      columns: [
        column('Camera', 1),
        column('How', 3),
        column('Camera wrote', 2),
        column('The other clock', 3),
        column('Add', 1.5),
      ],
      rows: compared.map(({ comparison, camera }) => {
        const photo = comparison.photoId === null ? undefined : photoById.get(comparison.photoId)
        return {
          cells: [
            plain(String(camera)),
            [
              ...plain(comparedBy[comparison.by]),
              ...(photo === undefined ? [] : [...plain(', '), ...photoLink(photo)]),
            ],
            plain(comparison.cameraLocal.replace('T', ' ')),
            stated(comparison.trueWords),
            plain(correctionWords(comparison.correctionMs)),
          ],
        }
      }),
    },
  ]
}

const comparedBy = {
  'clock-photo': 'photo of a clock',
  'linked-photo': 'the same moment on another camera',
  'gps-time': 'its own GPS time',
  typed: 'typed',
} as const satisfies Record<ClockComparison['by'], string>

function correctionBlocks({ photos }: PacketContext): readonly Block[] {
  const corrected = photos.filter(({ time, still }) => time.correctionMs !== 0 && still === null)
  if (corrected.length === 0) return []
  return [
    heading('Corrected times'),
    {
      kind: 'table',
      summary: 'What the camera wrote, the correction, and the time that follows',
      columns: [column('Photo', 1), column('Camera wrote', 2), column('Correction', 1.5), column('Time used', 6)],
      rows: corrected.map((photo) => ({
        cells: [
          photoLink(photo),
          stated(photo.file.written.raw ?? ''),
          plain(correctionWords(photo.time.correctionMs)),
          plain(photoTimeWords(photo.time)),
        ],
      })),
    },
  ]
}

function fileTable(photos: readonly Photo[], context: PacketContext): TableBlock {
  return {
    kind: 'table',
    summary: 'Original files with their SHA-256',
    columns: [column('Photo', 0.9), column('Original file', 3.2), column('SHA-256', 6.6)],
    rows: photos.map((photo) => ({
      anchor: anchorOfFile(photo),
      cells: [
        photoLink(photo),
        plain(`${fileWords(photo)}, ${bytesFigure(photo.file.bytes)} bytes, ${cameraLabel(photo, context)}`),
        digest(photo.file.sha256),
      ],
    })),
  }
}

/** The name the camera gave the file; of a still, where it comes from. */
function fileWords({ file, still }: Photo): string {
  return still === null ? file.fileName : stillWords(still)
}

function leftOutBlocks(context: PacketContext): readonly Block[] {
  const { leftOut } = context
  if (leftOut.length === 0) return []
  return [
    heading('Photos left out of the packet', true),
    paragraph(`${counted(leftOut.length, 'photo')}, kept with the job.`, 'small'),
    {
      kind: 'table',
      summary: 'Photos left out, why, and their SHA-256',
      columns: [column('Photo', 0.9), column('Original file and reason', 3.2), column('SHA-256', 6.6)],
      rows: leftOut.map((photo) => ({
        anchor: anchorOfFile(photo),
        cells: [
          photoLink(photo),
          plain(`${fileWords(photo)}: ${photo.tags.leftOutBecause?.trim() || 'no reason given'}`),
          digest(photo.file.sha256),
        ],
      })),
    },
  ]
}

/** Which originals are not in the bundle, and why; their hashes stand in the lists above. */
function keptBackBlocks({ photos, leftOut, keptBack }: PacketContext): readonly Block[] {
  const kept = [...photos, ...leftOut].filter(({ id }) => keptBack.has(id))
  if (kept.length === 0) return []
  return [
    heading('Originals kept at the office'),
    paragraph([
      ...plain('Areas of these photos were obscured at the office in every copy given out. '),
      ...plain(
        'Their originals are kept there unchanged and are not in the evidence bundle; their SHA-256 is listed: ',
      ),
      ...joined(kept.map(photoLink)),
      ...plain('.'),
    ]),
  ]
}

function supportingBlocks({ input }: PacketContext): readonly Block[] {
  const pictures = supportingPictures(input)
  if (pictures.length === 0) return []
  return [
    heading('Supporting pictures', true),
    paragraph(
      'Pictures that the roof plan was drawn over. They are no photos of the inspection and show no finding.',
      'small',
    ),
    {
      kind: 'table',
      summary: 'Pictures under the roof plan, what they are, and their SHA-256',
      columns: [column('Picture', 4.1), column('SHA-256', 6.6)],
      rows: pictures.map(({ fileName, bytes, sha256, words }) => ({
        cells: [plain(`${fileName}, ${bytesFigure(bytes)} bytes. ${words}.`), digest(sha256)],
      })),
    },
  ]
}

function attachmentBlocks({ input }: PacketContext): readonly Block[] {
  const underPlan = new Set<string>(input.planImages.map(({ file }) => file.id))
  const others = input.attachments.filter(({ id }) => !underPlan.has(id))
  if (others.length === 0) return []
  return [
    heading('Attachments', true),
    {
      kind: 'table',
      summary: 'Other files kept with the job, and their SHA-256',
      columns: [column('File', 4.1), column('SHA-256', 6.6)],
      rows: others.map(({ file, typeLabel, tags }) => ({
        cells: [
          plain(
            `${file.fileName}, ${typeLabel}, ${bytesFigure(file.bytes)} bytes`.concat(describing(tags.description)),
          ),
          digest(file.sha256),
        ],
      })),
    },
  ]
}

function describing(description: string): string {
  return description.trim() === '' ? '' : `: ${description.trim()}`
}

function fileRemarks({ photos, leftOut, input }: PacketContext): readonly Block[] {
  const items = [
    ...[...photos, ...leftOut].flatMap((photo) =>
      photo.file.problems.map(({ text }) => [...photoLink(photo), ...plain(`: ${text}`)]),
    ),
    ...input.videos.flatMap(({ number, file }) =>
      file.problems.map(({ text }) => plain(`${videoLabel(number)}: ${text}`)),
    ),
  ]
  return items.length === 0
    ? []
    : [
        heading('Remarks on the files: what else they hold, what could not be read or believed'),
        { kind: 'list', items },
      ]
}

function digest(sha256: string): Text {
  return [{ text: sha256, style: 'mono' }]
}
