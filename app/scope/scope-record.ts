import { z } from 'zod'
import { facetIdSchema } from '../job/ids.ts'
import { currencySchema } from './currency.ts'
import { decimalTextSchema } from './decimal.ts'
import type { PriceBook } from './price-book.ts'
import { scopeUnitSchema } from './units.ts'

const words = (max: number) => z.string().max(max).default('')
const lineKeySchema = z.string().min(1).max(80)

/** The two bids that stand side by side. */
export const bidSchema = z.enum(['repair', 'replacement'])
export type Bid = z.output<typeof bidSchema>
export const bids = bidSchema.options

export const bidLabels = { repair: 'Repair', replacement: 'Replacement' } as const satisfies Record<Bid, string>

/** What a person changed of a line that follows by rule. The computed quantity is not in it: it stays what it is. */
const lineChangeSchema = z.object({
  bid: bidSchema,
  key: lineKeySchema,
  leftOutBecause: z
    .string()
    .trim()
    .min(3, 'Say in a few words why the line is left out.')
    .max(400)
    .nullable()
    .default(null),
  byHand: z
    .object({ quantity: decimalTextSchema, why: words(400) })
    .nullable()
    .default(null),
})
export type LineChange = z.output<typeof lineChangeSchema>

/** A line that a person added, and where its quantity comes from. */
const ownLineSchema = z
  .object({
    id: z.string().min(1).max(64),
    words: z.string().trim().min(1, 'Say what the work is.').max(200),
    unit: scopeUnitSchema,
    repair: decimalTextSchema.nullable().default(null),
    replacement: decimalTextSchema.nullable().default(null),
    source: z.string().trim().min(1, 'Say where the quantity comes from.').max(400),
  })
  .refine(({ repair, replacement }) => repair !== null || replacement !== null, {
    message: 'Give the quantity for one of the two bids at least.',
    path: ['repair'],
  })
export type OwnLine = z.output<typeof ownLineSchema>

/** A percentage that a person adds to a bid, printed as a line of its own. */
const percentageSchema = z.object({
  id: z.string().min(1).max(64),
  name: z.string().trim().min(1, 'Name it, such as overhead or sales tax.').max(80),
  percent: decimalTextSchema,
  /** Taken of the lines alone, or of the lines with the percentages above it. */
  of: z.enum(['lines', 'so-far']).default('lines'),
})
export type Percentage = z.output<typeof percentageSchema>

const facetChoiceSchema = z.array(facetIdSchema).max(500).nullable().default(null)

/** What a person chose and stated for a job's scope. Lines that follow by rule are computed, never stored. */
export const scopeSchema = z.object({
  /** Whether the packet has the scope. */
  isOffered: z.boolean().default(false),
  /** Facets that each bid is for; null: all. */
  facets: z.object({ repair: facetChoiceSchema, replacement: facetChoiceSchema }).prefault({}),
  stated: z
    .object({
      /** Weight of the covering as laid, pounds a square; null: the usual figure, labelled as an assumption. */
      weightLbPerSquare: decimalTextSchema.nullable().default(null),
      weightSource: words(200),
      fastenersPerPiece: z.number().int().min(1).max(20).nullable().default(null),
      battens: z.enum(['not-stated', 'laid', 'none']).default('not-stated'),
      /** What caps and pieces are set in; by what the sheet says of the fastening, unless a person says otherwise. */
      setting: z.enum(['by-sheet', 'mortar', 'foam', 'neither']).default('by-sheet'),
    })
    .prefault({}),
  changes: z.array(lineChangeSchema).max(400).default([]),
  own: z.array(ownLineSchema).max(200).default([]),
  /** Which price a line has, by the book's code; a code of null: none, even where one has the line's own key. */
  links: z
    .array(z.object({ key: lineKeySchema, code: z.string().min(1).max(60).nullable() }))
    .max(600)
    .default([]),
  currency: currencySchema.default('USD'),
  percentages: z.array(percentageSchema).max(10).default([]),
})
export type Scope = z.output<typeof scopeSchema>

/** A job's scope with its prices. */
export interface JobScope {
  readonly choices: Scope
  readonly book: PriceBook | null
}

/** A scope in which nobody has chosen anything yet. */
export function emptyScope(): Scope {
  return scopeSchema.parse({})
}
