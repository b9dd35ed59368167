import { z } from 'zod'

/** A file of the open library that a screen may show, named by identity and never by path. */
export const fileRefSchema = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('thumbnail'), id: z.string() }),
  z.object({ kind: z.literal('preview'), id: z.string() }),
  /** A photo in its full size in a form that browsers show: the original, or a JPEG made from it. */
  z.object({ kind: z.literal('full'), id: z.string() }),
  z.object({ kind: z.literal('original'), id: z.string() }),
  z.object({ kind: z.literal('video'), id: z.string() }),
  z.object({ kind: z.literal('attachment'), id: z.string() }),
  z.object({ kind: z.literal('packet'), id: z.string() }),
  z.object({ kind: z.literal('bundle'), id: z.string() }),
  z.object({ kind: z.literal('draft'), id: z.string() }),
  /** An image under the plan, by the image's record. */
  z.object({ kind: z.literal('underlay'), id: z.string() }),
])
export type FileRef = z.output<typeof fileRefSchema>

/** The address under which both hosts serve a file: `/files/<kind>/<id>`. */
export function fileAddress(ref: FileRef): string {
  return `/files/${ref.kind}/${encodeURIComponent(ref.id)}`
}

/** Reads an address made by `fileAddress`; null for anything else. */
export function parseFileAddress(pathname: string): FileRef | null {
  const match = /^\/files\/([a-z]+)\/([A-Za-z0-9_-]{1,64})$/.exec(pathname)
  if (match === null) return null
  const parsed = fileRefSchema.safeParse({ kind: match[1], id: match[2] })
  return parsed.success ? parsed.data : null
}
