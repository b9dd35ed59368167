import { z } from 'zod'
import { attachmentIdSchema, diaryEntryIdSchema } from '../job/ids.ts'
import { diaryTimeSchema } from './diary-time.ts'

const line = (max: number) => z.string().trim().max(max).default('')

/** What a packet's revision is known by, taken over when it is handed to somebody. */
const handedPacketSchema = z.object({
  id: z.string().min(1).max(64),
  revision: z.number().int().positive(),
  pdfSha256: z.string().regex(/^[0-9a-f]{64}$/),
  /** Hash of the last entry of the evidence log when the revision was issued. */
  headHash: z.string().regex(/^[0-9a-f]{64}$/),
})

const handedItemSchema = z.object({ what: line(500), packet: handedPacketSchema.nullable().default(null) })
export type HandedItem = z.output<typeof handedItemSchema>

const common = {
  at: diaryTimeSchema,
  /** What was said or happened, in own words. */
  text: line(20_000),
  attachmentIds: z.array(attachmentIdSchema).max(50).default([]),
}

const receivedSchema = z.object({
  ...common,
  kind: z.literal('received'),
  from: line(200),
  what: line(1000),
  medium: line(200),
})

const handedOverSchema = z.object({
  ...common,
  kind: z.literal('handed-over'),
  from: line(200),
  to: line(200),
  items: z.array(handedItemSchema).max(100).default([]),
  medium: line(200),
  /** Name of whoever signed for it; empty when nobody did. */
  signedBy: line(200),
})

/** What an entry says. The kinds differ in what must be known about them. */
export const diaryContentSchema = z.discriminatedUnion('kind', [
  z.object({ ...common, kind: z.literal('visit'), people: line(400) }),
  z.object({
    ...common,
    kind: z.literal('call'),
    person: line(200),
    direction: z.enum(['they-called', 'we-called', 'not-stated']).default('not-stated'),
  }),
  receivedSchema,
  handedOverSchema,
  z.object({ ...common, kind: z.literal('reminder'), isDone: z.boolean().default(false) }),
  z.object({ ...common, kind: z.literal('note') }),
])
export type DiaryContent = z.output<typeof diaryContentSchema>
export type DiaryKind = DiaryContent['kind']

/** Plain words for each kind, in the order of a list. */
export const diaryKindLabels = {
  visit: 'Visit',
  call: 'Call',
  received: 'Document received',
  'handed-over': 'Handed over',
  reminder: 'Reminder',
  note: 'Note',
} as const satisfies Record<DiaryKind, string>

/** One entry of a job's diary. A correction keeps what stood before; an entry is struck out, never removed. */
export const diaryEntrySchema = z.object({
  id: diaryEntryIdSchema,
  /** D-7 is 7; given once, never used again. */
  number: z.number().int().positive(),
  content: diaryContentSchema,
  madeAtMs: z.number().int(),
  madeBy: z.string(),
  struck: z.object({ because: z.string(), atMs: z.number().int(), by: z.string() }).nullable().default(null),
  /** What the entry said before each correction, oldest first. */
  earlier: z
    .array(
      z.object({
        content: diaryContentSchema,
        replacedAtMs: z.number().int(),
        replacedBy: z.string(),
        because: z.string(),
      }),
    )
    .max(200)
    .default([]),
})
export type DiaryEntry = z.output<typeof diaryEntrySchema>

/** "D-7". */
export function diaryLabel(number: number): string {
  return `D-${number}`
}

/** What an entry still lacks to be of use, by field, or null. */
export function contentFault(content: DiaryContent): { readonly field: string; readonly sentence: string } | null {
  switch (content.kind) {
    case 'visit':
      return content.people === '' && content.text === ''
        ? { field: 'people', sentence: 'Say who was there, or what the visit was about.' }
        : null
    case 'call':
      return content.person === '' ? { field: 'person', sentence: 'Say who was on the line.' } : null
    case 'received':
      return content.what === '' ? { field: 'what', sentence: 'Say what was received.' } : null
    case 'handed-over':
      if (content.to === '') return { field: 'to', sentence: 'Say who it was handed to.' }
      return content.items.every(({ what, packet }) => what === '' && packet === null)
        ? { field: 'items', sentence: 'Say what was handed over.' }
        : null
    case 'reminder':
    case 'note':
      return content.text === '' ? { field: 'text', sentence: 'Write a few words.' } : null
  }
}
