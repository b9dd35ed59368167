import { z } from 'zod'
import { photoIdSchema } from '../job/ids.ts'
import { markColourSchema } from './markup/colours.ts'

/** A place on a photo as it should be looked at (orientation applied), in pixels of the original from its top left corner. */
export const picturePointSchema = z.object({
  xPx: z.number().min(0).max(65_535),
  yPx: z.number().min(0).max(65_535),
})
export type PicturePoint = z.output<typeof picturePointSchema>

export const markWeightSchema = z.enum(['fine', 'normal', 'bold'])
export type MarkWeight = z.output<typeof markWeightSchema>

const markIdSchema = z.string().regex(/^[A-Za-z0-9_-]{1,64}$/)
const look = {
  id: markIdSchema,
  colour: markColourSchema.default('vermilion'),
  weight: markWeightSchema.default('normal'),
}
const sidePx = z.number().positive().max(65_535)

/** What an obscured area hides. */
export const obscuredSchema = z.enum(['face', 'plate', 'other'])

/** Most marks on one photo, and most points of a freehand line. */
export const MOST_MARKS = 200
export const MOST_POINTS = 1500

/**
 * One mark. `scale` is a length known in the picture, such as a rule lying in it; a `measure` takes its length from one.
 * `obscured` hides a rectangle in every copy that leaves the office.
 */
export const markSchema = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('arrow'), ...look, from: picturePointSchema, to: picturePointSchema }),
  z.object({
    kind: z.literal('ellipse'),
    ...look,
    centre: picturePointSchema,
    radiusXPx: sidePx,
    radiusYPx: sidePx,
  }),
  z.object({ kind: z.literal('freehand'), ...look, points: z.array(picturePointSchema).min(2).max(MOST_POINTS) }),
  z.object({ kind: z.literal('text'), ...look, at: picturePointSchema, text: z.string().trim().min(1).max(200) }),
  z.object({
    kind: z.literal('scale'),
    ...look,
    from: picturePointSchema,
    to: picturePointSchema,
    lengthIn: z.number().positive().max(12_000),
    /** What has this length: "12-inch steel rule". */
    of: z.string().trim().max(120).default(''),
  }),
  z.object({
    kind: z.literal('measure'),
    ...look,
    from: picturePointSchema,
    to: picturePointSchema,
    scaleId: markIdSchema,
  }),
  z.object({
    kind: z.literal('obscured'),
    id: markIdSchema,
    corner: picturePointSchema,
    widthPx: sidePx,
    heightPx: sidePx,
    what: obscuredSchema,
  }),
])
export type Mark = z.output<typeof markSchema>
export type MarkKind = Mark['kind']
export type ScaleMark = Extract<Mark, { kind: 'scale' }>
export type MeasureMark = Extract<Mark, { kind: 'measure' }>
export type ObscuredMark = Extract<Mark, { kind: 'obscured' }>

/** A scale line shorter than this gives no length worth printing, pixels. */
const SHORTEST_SCALE_PX = 20

/** Marks from the lowest to the topmost. Each has an identity of its own, and a measured line has its scale line. */
export const marksSchema = z
  .array(markSchema)
  .max(MOST_MARKS)
  .superRefine((marks, context) => {
    const scales = new Set(marks.flatMap((mark) => (mark.kind === 'scale' ? mark.id : [])))
    if (new Set(marks.map(({ id }) => id)).size < marks.length)
      context.addIssue({ code: 'custom', message: 'Two marks have the same identity.' })
    marks.forEach((mark, index) => {
      const complain = (message: string) => context.addIssue({ code: 'custom', path: [index], message })
      if (mark.kind === 'measure' && !scales.has(mark.scaleId))
        complain('This measured line has no scale line. Draw the known length first.')
      if (
        mark.kind === 'scale' &&
        Math.hypot(mark.to.xPx - mark.from.xPx, mark.to.yPx - mark.from.yPx) < SHORTEST_SCALE_PX
      )
        complain(`A scale line has to be at least ${SHORTEST_SCALE_PX} pixels long in the original.`)
    })
  })

/** What is drawn over one photo. The original stays as it came. */
export const markupSchema = z.object({ photoId: photoIdSchema, marks: marksSchema })
export type Markup = z.output<typeof markupSchema>

/** True when the markup hides something. */
export function hidesSomething(markup: Markup | undefined): boolean {
  return markup?.marks.some(({ kind }) => kind === 'obscured') ?? false
}

/** Marks without one; measured lines that rest on it go with it. */
export function withoutMark(marks: readonly Mark[], id: string): readonly Mark[] {
  return marks.filter((mark) => mark.id !== id && !(mark.kind === 'measure' && mark.scaleId === id))
}
