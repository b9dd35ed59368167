import { z } from 'zod'
import { attachmentSchema, type Attachment } from '../../app/evidence/attachment.ts'
import { cameraSchema, type Camera } from '../../app/evidence/camera.ts'
import { findingSchema, type Finding } from '../../app/evidence/finding.ts'
import { photoSchema, type Photo } from '../../app/evidence/photo.ts'
import { readingSchema, type Reading } from '../../app/fieldtest/reading.ts'
import { jobSchema, type Job } from '../../app/job/job.ts'
import { facetSchema, type Facet } from '../../app/roof/facet.ts'
import { planImageSchema, type PlanImage } from '../../app/roof/plan-image.ts'
import { fakeDigest, serial } from './serial.ts'

/** 14 March 2026, 18:00:00 UTC: the morning of an invented inspection is counted from here. */
export const WALK_STARTED_MS = Date.UTC(2026, 2, 14, 18, 0, 0)

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ'

/** A job with a filled-in sheet about an invented house. Fields of `sheet` replace whole parts of the sheet. */
export function aJob(given: Partial<z.input<typeof jobSchema>> = {}): Job {
  const n = serial()
  const { sheet, ...rest } = given
  return jobSchema.parse({
    id: `job-${n}`,
    number: `2026-${n}`,
    createdAtMs: WALK_STARTED_MS - 86_400_000,
    frame: {},
    ...rest,
    sheet: {
      property: {
        address: '14 Example Lane',
        city: 'Sampleton',
        region: 'FL',
        postalCode: '00000',
        timeZone: 'America/New_York',
        frontAzimuthDeg: 180,
      },
      owner: { name: 'Ada Owner' },
      insurance: { insurer: 'Example Mutual', policyNumber: 'PN-1', claimNumber: 'CN-1' },
      loss: { date: '2026-03-10', cause: 'wind' },
      inspection: {
        dates: ['2026-03-14'],
        method: ['walked'],
        weather: 'Dry, light wind.',
        inspector: 'Ira Inspector',
        inspectorLicence: 'RC-000',
      },
      covering: { class: 'concrete-tile', profile: 'medium profile' },
      contractor: { name: 'Example Roofing', licence: 'CC-000' },
      ...sheet,
    },
  })
}

/** A 30 ft by 20 ft facet at 5:12, all of it looked at, placed so that facets made one after the other don't overlap. */
export function aFacet(given: Partial<z.input<typeof facetSchema>> = {}): Facet {
  const n = serial()
  const left = (n % 300) * 40
  return facetSchema.parse({
    id: `facet-${n}`,
    letter: `${LETTERS[n % 26] ?? 'A'}${n}`,
    outline: [
      { xFt: left, yFt: 0 },
      { xFt: left + 30, yFt: 0 },
      { xFt: left + 30, yFt: 20 },
      { xFt: left, yFt: 20 },
    ],
    pitchRise: 5,
    downslopeAzimuthDeg: 180,
    inspected: { percent: 100 },
    ...given,
  })
}

/** A camera of an invented make. */
export function aCamera(given: Partial<z.input<typeof cameraSchema>> = {}): Camera {
  const n = serial()
  return cameraSchema.parse({
    id: `camera-${n}`,
    make: 'Example',
    model: 'Field 1',
    serial: `S${n}`,
    clock: {},
    ...given,
  })
}

/** A photo taken during the walk, with time and offset written by the camera. `file` and `tags` replace single fields. */
export function aPhoto(
  given: Omit<Partial<z.input<typeof photoSchema>>, 'file' | 'tags'> & {
    file?: Partial<z.input<typeof photoSchema>['file']>
    tags?: Partial<z.input<typeof photoSchema>['tags']>
  } = {},
): Photo {
  const n = serial()
  const { file, tags, ...rest } = given
  const second = String(n % 60).padStart(2, '0')
  return photoSchema.parse({
    id: `photo-${n}`,
    number: n,
    cameraId: null,
    time: {
      basis: 'camera-offset',
      offsetMinutes: -240,
      correctionMs: 0,
      instantMs: WALK_STARTED_MS + (n % 60) * 1000,
    },
    takenInAtMs: WALK_STARTED_MS + 7_200_000,
    preview: 'ready',
    ...rest,
    file: {
      sha256: fakeDigest(n),
      bytes: 4_000_000 + n,
      fileName: `IMG_${String(n).padStart(4, '0')}.JPG`,
      mediaType: 'image/jpeg',
      widthPx: 4000,
      heightPx: 3000,
      orientation: 1,
      camera: { make: 'Example', model: 'Field 1', serial: '' },
      written: {
        tag: 'DateTimeOriginal',
        raw: `2026:03:14 14:00:${second}`,
        local: `2026-03-14T14:00:${second}`,
        offsetMinutes: -240,
        gpsUtcMs: null,
      },
      position: null,
      direction: null,
      problems: [],
      ...file,
    },
    tags: { ...tags },
  })
}

/** A damage finding that is not yet placed, counted or photographed: fields that a test is about are given. */
export function aFinding(given: Partial<z.input<typeof findingSchema>> = {}): Finding {
  const n = serial()
  return findingSchema.parse({
    id: `finding-${n}`,
    number: n,
    kind: 'damage',
    component: 'field-tile',
    condition: 'slipped',
    ...given,
  })
}

/** A hand-lift reading with both lift and force. */
export function aReading(given: Partial<z.input<typeof readingSchema>> = {}): Reading {
  const n = serial()
  return readingSchema.parse({ id: `reading-${n}`, number: n, liftIn: 1.5, forceLbf: 12, ...given })
}

/** A document kept with the job. `file` replaces single fields. */
export function anAttachment(given: { file?: Partial<Attachment['file']>; why?: string } = {}): Attachment {
  const n = serial()
  const picture = aPhoto().file
  return attachmentSchema.parse({
    id: `attachment-${n}`,
    typeLabel: 'PDF document',
    why: given.why ?? 'Not a picture.',
    takenInAtMs: WALK_STARTED_MS + 7_200_000,
    file: { ...picture, fileName: `permit-${n}.pdf`, mediaType: 'application/pdf', ...given.file },
  })
}

/** A rendered picture of 800 by 600 pixels under the plan, its middle at the plan's origin, not scaled yet. */
export function aPlanImage(given: Partial<z.input<typeof planImageSchema>> = {}): PlanImage {
  const n = serial()
  return planImageSchema.parse({
    id: `plan-image-${n}`,
    file: { kind: 'attachment', id: `attachment-of-image-${n}` },
    widthPx: 800,
    heightPx: 600,
    kind: 'rendered',
    label: `Site picture ${n}`,
    source: 'made for this test',
    held: { image: { x: 400, y: 300 }, plan: { xFt: 0, yFt: 0 } },
    ...given,
  })
}
