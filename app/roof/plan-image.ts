import { z } from 'zod'
import { attachmentIdSchema, photoIdSchema, planImageIdSchema } from '../job/ids.ts'
import { azimuthDegSchema, planPointSchema } from '../job/places.ts'
import { type ImagePoint, placeImage, type PlacedImage } from './image-scale.ts'

/** What an image under the plan is, so that nobody takes a rendering for a picture of the house. */
export const planImageKindSchema = z.enum(['aerial', 'rendered', 'sketch'])
export type PlanImageKind = z.output<typeof planImageKindSchema>

/** The words for each kind, as lists and packets name it. */
export const planImageKindWords = {
  aerial: 'Aerial picture',
  rendered: 'Rendered picture',
  sketch: 'Sketch or drawing',
} as const satisfies Record<PlanImageKind, string>

const pixelsSchema = z.number().min(-1_000_000).max(1_000_000)
const imagePointSchema = z.object({ x: pixelsSchema, y: pixelsSchema })

/** A line between two marks on the image, and its level length as somebody measured it. */
const knownLineSchema = z.object({
  from: imagePointSchema,
  to: imagePointSchema,
  lengthFt: z.number().positive('The length of the marked line has to be above zero.').max(10_000),
})
export type KnownLine = z.output<typeof knownLineSchema>

/** A picture that a person lays under the plan to draw over it. It is no evidence, but is kept and hashed as a file of the job. */
export const planImageSchema = z.object({
  id: planImageIdSchema,
  /** Where its bytes are: a file kept for this, or a photo of the job that has the same bytes. */
  file: z.discriminatedUnion('kind', [
    z.object({ kind: z.literal('attachment'), id: attachmentIdSchema }),
    z.object({ kind: z.literal('photo'), id: photoIdSchema }),
  ]),
  /** Size as it is looked at. */
  widthPx: z.number().int().positive(),
  heightPx: z.number().int().positive(),
  kind: planImageKindSchema,
  label: z.string().trim().min(1, 'Give the image a name, such as "Aerial, spring".').max(120),
  /** Where it comes from, in a person's words; empty means "not stated". */
  source: z.string().trim().max(400).default(''),
  isShown: z.boolean().default(true),
  opacityPercent: z.number().int().min(10).max(100).default(60),
  /** Null until somebody has given a length on it: until then its size is a guess. */
  knownLine: knownLineSchema.nullable().default(null),
  /** True azimuth of the image's up direction. */
  imageUpAzimuthDeg: azimuthDegSchema.default(0),
  /** One place on the image and where it is on the plan. */
  held: z.object({ image: imagePointSchema, plan: planPointSchema }),
})
export type PlanImage = z.output<typeof planImageSchema>

/** How wide an image is taken to be before a length on it is known, feet. */
const GUESSED_WIDTH_FT = 120

/** Under this many pixels, marking one end a pixel off changes every length by more than half a percent. */
const SHORT_LINE_PX = 200

/** The image as it lies under the plan; before a length on it is known, at a guessed size. */
export function layPlanImage(image: PlanImage, upAzimuthDeg: number): PlacedImage {
  const { knownLine, widthPx, imageUpAzimuthDeg, held } = image
  return placeImage({ knownLine: knownLine ?? guessedLine(widthPx), imageUpAzimuthDeg, upAzimuthDeg, held })
}

function guessedLine(widthPx: number): KnownLine {
  // Ten pixels are the least that can be laid; a narrower image is taken as part of one that wide.
  const acrossPx = Math.max(widthPx, 10)
  return { from: { x: 0, y: 0 }, to: { x: acrossPx, y: 0 }, lengthFt: GUESSED_WIDTH_FT }
}

/** Why marks on a line shorter than this make a poor scale, with what it does to lengths; null when the line is long enough. */
export function shortLineSentence({ from, to, lengthFt }: KnownLine): string | null {
  const px = lengthPx(from, to)
  if (px >= SHORT_LINE_PX) return null
  return `The marked line is only ${Math.round(px)} pixels long: a mark one pixel off makes every length ${percentWords(100 / px)} wrong, which is ${inchWords((lengthFt * 12) / px)} on this line. Mark a longer line.`
}

/** What marking one end a pixel off does to lengths, in words. */
export function pixelErrorWords({ from, to }: KnownLine): string {
  const percent = 100 / lengthPx(from, to)
  return `A mark one pixel off changes every length by ${percentWords(percent)}: ${inchWords((50 * 12 * percent) / 100)} in 50 ft.`
}

/** Two lengths measured along different directions tell a view taken at a slant: its scale differs between them. */
export function slantSentence(image: PlanImage, second: KnownLine): string | null {
  if (image.knownLine === null) return null
  const first = image.knownLine.lengthFt / lengthPx(image.knownLine.from, image.knownLine.to)
  const offPercent = 100 * (second.lengthFt / lengthPx(second.from, second.to) / first - 1)
  const marksPercent = 100 / lengthPx(image.knownLine.from, image.knownLine.to) + 100 / lengthPx(second.from, second.to)
  if (Math.abs(offPercent) <= Math.max(1, 2 * marksPercent)) return null
  return `This line comes out ${percentWords(Math.abs(offPercent))} ${offPercent > 0 ? 'shorter' : 'longer'} on the image than the scale says. One of the two lengths is wrong, or the image was taken at a slant and can't be laid under the plan.`
}

function lengthPx(from: ImagePoint, to: ImagePoint): number {
  return Math.hypot(to.x - from.x, to.y - from.y)
}

function percentWords(percent: number): string {
  return `${percent >= 10 ? Math.round(percent) : Math.round(percent * 10) / 10} %`.replace(/^0 %/, 'under 0.1 %')
}

function inchWords(inches: number): string {
  return inches < 0.1 ? 'under 0.1 in' : `${inches >= 10 ? Math.round(inches) : Math.round(inches * 10) / 10} in`
}
