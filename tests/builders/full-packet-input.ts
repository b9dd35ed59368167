import { explanatoryNoteKeys } from '../../app/evidence/catalog/notes.ts'
import { findingKindSchema, type Extent } from '../../app/evidence/finding.ts'
import type { PacketInput } from '../../app/packet/packet-input.ts'
import { aCaseFile } from './case-file.ts'
import { aLog, aPacketInput } from './packet-input.ts'
import { aCamera, aFacet, aFinding, aJob, anAttachment, aPhoto, aReading } from './records.ts'

/** One extent of every kind there is. */
export const everyExtent: readonly Extent[] = [
  { kind: 'exactly', count: 3 },
  { kind: 'at-least', count: 4 },
  { kind: 'about', count: 12 },
  { kind: 'several' },
  { kind: 'examples' },
  { kind: 'whole-facet' },
  { kind: 'length', lengthFt: 14.5 },
  { kind: 'area', areaSqFt: 40 },
  { kind: 'not-stated' },
]

/** A job with every kind of finding and extent, photos in, left out, corrected and without time, readings and documents. */
export function aFullPacketInput(): PacketInput {
  const job = aJob({ frame: { anchor: { latDeg: 27.95, lonDeg: -82.45 } } })
  const camera = aCamera({ clock: { correctionMs: 3_600_000, why: 'One hour slow against a phone in P-001.' } })
  const front = aFacet({ letter: 'A', name: 'front' })
  const back = aFacet({ letter: 'B', inspected: { percent: 40, note: 'Wet above the porch.' } })
  const garage = aFacet({ letter: 'C', inspected: {} })
  const elevation = aPhoto({ tags: { role: 'elevation', caption: 'Street front' } })
  const corrected = aPhoto({
    cameraId: camera.id,
    tags: { facetId: front.id, role: 'close' },
    time: {
      basis: 'camera-offset',
      offsetMinutes: -240,
      correctionMs: 3_600_000,
      instantMs: Date.UTC(2026, 2, 14, 19),
    },
    file: {
      position: { latDeg: 27.95, lonDeg: -82.45, altitudeM: null, errorM: 5 },
      direction: { azimuthDeg: 90, reference: 'magnetic' },
    },
  })
  const untimed = aPhoto({ time: { basis: 'unknown', offsetMinutes: null, correctionMs: 0, instantMs: null } })
  const leftOut = aPhoto({ tags: { leftOutBecause: 'Taken by mistake.' } })
  const photos = [elevation, corrected, untimed, leftOut]
  const kinds = findingKindSchema.options.map((kind, i) =>
    aFinding({
      kind,
      condition: kind === 'sound' ? 'sound' : 'slipped',
      extent: { kind: 'exactly', count: i + 1 },
      facetId: front.id,
      pin: { kind: 'point', at: { xFt: i, yFt: i } },
      photos: [{ photoId: corrected.id, role: 'close' }],
    }),
  )
  const extents = everyExtent.map((extent) =>
    aFinding({ component: 'ridge-tile', condition: 'cap-loose', extent, facetId: back.id }),
  )
  const told = aFinding({
    condition: 'lifts-by-hand',
    extent: { kind: 'exactly', count: 2 },
    degree: 'lifts by hand',
    observation: 'Nose rises evenly',
    crackPath: 'to-fastener',
    measurements: [{ what: 'lift-in', value: 1.25, by: 'hand' }],
    cause: {
      cause: 'wind',
      indicatorsSeen: ['bright metal'],
      indicatorsLookedForNotSeen: ['debris'],
      otherExplanations: [{ explanation: 'worn hole', whyLessLikely: 'hole round' }],
      note: 'Edge of the slope.',
    },
    consequences: ['water-path-possible', 'opening-exposed'],
    photos: [
      { photoId: corrected.id, role: 'mid' },
      { photoId: leftOut.id, role: 'close' },
    ],
    lookedAt: { fastener: 'One screw, head raised.' },
    showsPoorly: true,
    temporaryMeasure: 'Pushed back in place.',
    urgent: true,
    noteKeys: [...explanatoryNoteKeys],
  })
  const open = aFinding({ cause: { cause: 'undetermined' } })
  const log = aLog([
    { type: 'job-opened', number: job.number },
    ...photos.map(({ id, number, file: { fileName, sha256, bytes } }) => ({
      type: 'photo-taken-in' as const,
      photoId: id,
      number,
      fileName,
      sha256,
      bytes,
    })),
    { type: 'double-seen', photoId: elevation.id, fileName: 'COPY.JPG', sha256: elevation.file.sha256 },
    {
      type: 'edited',
      summary: 'Job sheet changed',
      changes: [{ record: 'sheet', id: job.id, before: null, after: null }],
    },
    { type: 'problem-overruled', problem: 'Facet C has no overview photo.', reason: 'Not reachable.' },
    { type: 'packet-issued', revision: 1, pdfSha256: elevation.file.sha256, bundleName: 'r1.zip' },
  ])
  return aPacketInput({
    caseFile: aCaseFile({
      job,
      cameras: [camera],
      facets: [back, front, garage],
      photos: [leftOut, untimed, corrected, elevation],
      findings: [...kinds, ...extents, told, open],
      readings: [
        aReading({ facetId: front.id, findingId: told.id, photoIds: [corrected.id] }),
        aReading({ forceLbf: null }),
      ],
    }),
    attachments: [anAttachment()],
    log,
    revision: 2,
  })
}
