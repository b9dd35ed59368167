import { z } from 'zod'
import { jobIdSchema } from '../job/ids.ts'
import { decimalMarkSchema, priceBookSchema } from '../scope/price-book.ts'
import { readBookSchema } from '../scope/read-price-book.ts'
import { scopeSchema } from '../scope/scope-record.ts'
import { read, write } from './procedure.ts'

const inJob = { jobId: jobIdSchema }
const done = z.object({})

/** The scope of a job with its prices, as snapshots carry it; those frozen before there was one have none. */
export const jobScopeSchema = z
  .object({ choices: scopeSchema.prefault({}), book: priceBookSchema.nullable().default(null) })
  .prefault({})

/** Parts of the scope, without the defaults that would empty the others. */
export const scopePatchSchema = z
  .object({
    isOffered: scopeSchema.shape.isOffered.removeDefault(),
    facets: scopeSchema.shape.facets.unwrap(),
    stated: scopeSchema.shape.stated.unwrap(),
    changes: scopeSchema.shape.changes.removeDefault(),
    own: scopeSchema.shape.own.removeDefault(),
    links: scopeSchema.shape.links.removeDefault(),
    currency: scopeSchema.shape.currency.removeDefault(),
    percentages: scopeSchema.shape.percentages.removeDefault(),
  })
  .partial()
export type ScopePatch = z.output<typeof scopePatchSchema>

/** A file of prices as it stands on the disk, so that its hash is the file's own. */
const priceFile = {
  fileName: z.string().min(1).max(255),
  base64: z.base64().max(4_000_000, 'A price book has at most 3 MB.'),
  /** The mark before decimals, where a person has chosen it. */
  decimalMark: decimalMarkSchema.nullable().default(null),
}

export const scopeProcedures = {
  /** Reads a file of prices in CSV and keeps nothing of it. */
  'scope-files.read-prices': read(z.object({ ...inJob, ...priceFile }), readBookSchema),
}

/** Edits of the scope; each is one step of undo. */
export const scopeEdits = {
  /** Changes the parts of the scope that are given. */
  'scope.save': write(z.object({ ...inJob, set: scopePatchSchema }), done),
  /** Takes the prices of a file. Refused while rows can't be taken, unless the person says that the others are enough. */
  'scope.take-prices': write(
    z.object({ ...inJob, ...priceFile, withoutBadRows: z.boolean().default(false) }),
    z.object({ prices: z.number().int(), leftOut: z.number().int() }),
  ),
  /** Lets go of the prices. Which price each line had is remembered. */
  'scope.remove-prices': write(z.object(inJob), done),
}
