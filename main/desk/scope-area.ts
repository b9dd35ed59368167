import { refuse } from '../../app/contract/app-error.ts'
import type { ScopePatch } from '../../app/contract/scope.ts'
import { isCurrency } from '../../app/scope/currency.ts'
import { scopeSchema, type Scope } from '../../app/scope/scope-record.ts'
import { priceBookTable, scopeOf } from '../store/records/scope.ts'
import type { DeskWorld } from './desk-world.ts'
import { editJob } from './edit-job.ts'
import type { Area } from './handlers.ts'
import { priceBookOf, readPriceFile } from './price-file.ts'
import { needJob } from './snapshot.ts'

const partNames = {
  isOffered: 'whether the packet has it',
  facets: 'its facets',
  stated: 'what is stated',
  changes: 'lines changed by hand',
  own: 'added lines',
  links: 'which price each line has',
  currency: 'the currency',
  percentages: 'percentages',
} as const satisfies Record<keyof Scope, string>

/** The scope of work of a job, and its prices. */
export function scopeArea(world: DeskWorld): Area<'scope'> {
  return {
    'scope.save': ({ jobId, set }) =>
      editJob(world, jobId, (db) => {
        const given = onlyGiven(set)
        const after = scopeSchema.parse({ ...scopeOf(db, jobId).choices, ...given })
        refuseFaults(after)
        const parts = Object.entries(partNames).flatMap(([key, name]) => (key in given ? [name] : []))
        return {
          summary: `Change the scope: ${parts.join(', ')}`,
          writes: [{ record: 'scope', id: jobId, after }],
          result: {},
        }
      }),
    'scope.take-prices': ({ jobId, fileName, base64, ...choices }) => {
      const book = priceBookOf({ fileName, bytes: Buffer.from(base64, 'base64') }, choices)
      return editJob(world, jobId, () => ({
        summary: `Take ${book.rows.length} prices from ${fileName}`,
        writes: [{ record: 'price-book', id: jobId, after: book }],
        result: { prices: book.rows.length, leftOut: book.leftOut },
      }))
    },
    'scope.remove-prices': ({ jobId }) =>
      editJob(world, jobId, (db) => {
        const book =
          priceBookTable.get(db, { jobId, id: jobId }) ?? refuse('not-found', 'This job has no price book by now.')
        return {
          summary: `Remove the prices of ${book.fileName}`,
          writes: [{ record: 'price-book', id: jobId, after: null }],
          result: {},
        }
      }),
  }
}

/** Files of prices, read but not kept. */
export function scopeFilesArea(world: DeskWorld): Area<'scope-files'> {
  return {
    'scope-files.read-prices': ({ jobId, base64, decimalMark }) => {
      needJob(world.library.db, jobId)
      return readPriceFile(Buffer.from(base64, 'base64'), decimalMark)
    },
  }
}

/** A field that is there but undefined, as the window's channel can carry it, is not a change. */
function onlyGiven(set: ScopePatch): ScopePatch {
  return Object.fromEntries(Object.entries(set).filter(([, value]) => value !== undefined))
}

function refuseFaults({ currency, changes, own, links }: Scope): void {
  if (!isCurrency(currency)) {
    refuse('invalid', `"${currency}" is not a currency of ISO 4217.`, {
      about: 'currency',
      help: 'Type its three letters, such as USD or EUR.',
    })
  }
  refuseTwice(
    changes.map(({ bid, key }) => `${bid} ${key}`),
    'changes',
  )
  refuseTwice(
    own.map(({ id }) => id),
    'own',
  )
  refuseTwice(
    links.map(({ key }) => key),
    'links',
  )
}

function refuseTwice(keys: readonly string[], about: string): void {
  if (new Set(keys).size < keys.length) {
    refuse('invalid', 'A line stands twice among what was changed.', {
      about,
      help: 'Look at the scope again and repeat the last change.',
    })
  }
}
