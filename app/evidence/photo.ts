import { z } from 'zod'
import { cameraIdSchema, facetIdSchema, photoIdSchema } from '../job/ids.ts'
import { componentKeySchema, conditionKeySchema, photoRoleSchema } from './catalog/keys.ts'
import { photoTimeSchema, writtenTimeSchema } from './photo-time.ts'
import { stillSchema } from './still.ts'

/** Something about a file that could not be read or believed, or what else it holds (`contents`), in words for the office. */
export const fileProblemSchema = z.object({
  about: z.enum([
    'picture',
    'preview',
    'time',
    'position',
    'direction',
    'orientation',
    'camera',
    'metadata',
    'contents',
  ]),
  text: z.string(),
})
export type FileProblem = z.output<typeof fileProblemSchema>

/** Where the camera says it was. Only finite values in range get here; the rest becomes a `FileProblem`. */
export const cameraPositionSchema = z.object({
  latDeg: z.number().min(-90).max(90),
  lonDeg: z.number().min(-180).max(180),
  altitudeM: z.number().nullable(),
  /** Horizontal error the camera states, metres. */
  errorM: z.number().positive().nullable(),
})
export type CameraPosition = z.output<typeof cameraPositionSchema>

/** Where the camera says it pointed: degrees clockwise from true or magnetic north. */
export const cameraDirectionSchema = z.object({
  azimuthDeg: z.number().min(0).lt(360),
  reference: z.enum(['true', 'magnetic', 'not-stated']),
})

/** Types of files that are taken in as pictures; what each needs to be decoded stands with the previews. */
export const pictureTypeSchema = z.enum([
  'image/jpeg',
  'image/png',
  'image/webp',
  'image/tiff',
  'image/heic',
  'image/heic-sequence',
  'image/heif',
  'image/heif-sequence',
  'image/avif',
  'image/x-adobe-dng',
])

/** The facts a picture file brings, read once when it is taken in and never changed. */
export const photoFileSchema = z.object({
  sha256: z.string().regex(/^[0-9a-f]{64}$/),
  bytes: z.number().int().nonnegative(),
  /** The name the camera gave the file. */
  fileName: z.string(),
  mediaType: z.string(),
  /** Size as it should be looked at (orientation applied), null where the header can't be read. */
  widthPx: z.number().int().positive().nullable(),
  heightPx: z.number().int().positive().nullable(),
  /** EXIF orientation 1 to 8, still to be applied to the stored pixels; 1 where the container turns the picture itself. */
  orientation: z.number().int().min(1).max(8),
  camera: z.object({ make: z.string(), model: z.string(), serial: z.string() }),
  written: writtenTimeSchema,
  position: cameraPositionSchema.nullable(),
  direction: cameraDirectionSchema.nullable(),
  problems: z.array(fileProblemSchema),
})
export type PhotoFile = z.output<typeof photoFileSchema>

/** Where a person put a photo whose time is not known: after and before which others. One of the two is always there. */
export const placedBetweenSchema = z.object({
  afterId: photoIdSchema.nullable(),
  beforeId: photoIdSchema.nullable(),
})
export type PlacedBetween = z.output<typeof placedBetweenSchema>

/** What people say of a photo. */
export const photoTagsSchema = z.object({
  facetId: facetIdSchema.nullable().default(null),
  component: componentKeySchema.nullable().default(null),
  condition: conditionKeySchema.nullable().default(null),
  role: photoRoleSchema.nullable().default(null),
  caption: z.string().max(2000).default(''),
  /** Why the photo stays out of the packet; null when it is in. Either way it stays in custody. */
  leftOutBecause: z.string().max(400).nullable().default(null),
  /** Which of the two, where a change of clocks repeats the hour in which the photo was taken. */
  repeatedHour: z.exactOptional(z.enum(['first', 'second'])),
  /** Its place among the others, where its time is not known; never turned into a time. */
  placedBetween: z.exactOptional(placedBetweenSchema),
})
export type PhotoTags = z.output<typeof photoTagsSchema>

/** A photo of a job: the file's facts, where it is kept, what people say of it and when it was taken. */
export const photoSchema = z.object({
  id: photoIdSchema,
  number: z.number().int().positive(),
  cameraId: cameraIdSchema.nullable(),
  file: photoFileSchema,
  tags: photoTagsSchema,
  time: photoTimeSchema,
  takenInAtMs: z.number().int(),
  preview: z.enum(['ready', 'none']),
  /** Set where the picture is a frame that a person took out of a video; null for a photo. */
  still: stillSchema.nullable().default(null),
  /** Mean brightness of the picture, 0 black to 1 white; measured where a check of its time needs it. */
  brightness: z.exactOptional(z.number().min(0).max(1)),
})
export type Photo = z.output<typeof photoSchema>

/** "P-007": how people name a photo. */
export function photoLabel(number: number): string {
  return `P-${String(number).padStart(3, '0')}`
}
