import { z } from 'zod'
import { decimalTextSchema } from './decimal.ts'
import { scopeUnitSchema } from './units.ts'

/** Rows that a book may have; a book is kept whole in its job. */
export const MOST_PRICES = 2000

/** One price as it was read from a book. */
export const priceRowSchema = z.object({
  /** Line of the file. */
  line: z.number().int().positive(),
  code: z.string().min(1).max(60),
  description: z.string().max(400),
  unit: scopeUnitSchema,
  /** Price of one unit. */
  price: decimalTextSchema,
})
export type PriceRow = z.output<typeof priceRowSchema>

/** Which mark stands before the decimals of a price. */
export const decimalMarkSchema = z.enum(['point', 'comma'])
export type DecimalMark = z.output<typeof decimalMarkSchema>

/** The prices of a job: the contractor's own file, what it was, and the rows that were taken from it. */
export const priceBookSchema = z.object({
  fileName: z.string().min(1).max(255),
  sha256: z.string().regex(/^[0-9a-f]{64}$/),
  decimalMark: decimalMarkSchema,
  rows: z.array(priceRowSchema).max(MOST_PRICES),
  /** Rows of the file that could not be taken and were left out on the person's word. */
  leftOut: z.number().int().min(0),
})
export type PriceBook = z.output<typeof priceBookSchema>
