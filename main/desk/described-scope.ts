import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { refuse } from '../../app/contract/app-error.ts'
import type { DescribedJob } from '../../app/job/described-job.ts'
import { isCurrency } from '../../app/scope/currency.ts'
import type { PriceBook } from '../../app/scope/price-book.ts'
import { scopeSchema } from '../../app/scope/scope-record.ts'
import { withFileWords } from '../library/file-failure.ts'
import type { Write } from '../store/record-edits.ts'
import { priceBookOf } from './price-file.ts'

/**
 * Reads the price book that a described job names in its folder `prices/`.
 *
 * @throws AppFailure `invalid` when a row of it can't be taken, or `missing-folder` when it is not there
 */
export async function readDescribedPrices(folder: string, { scope }: DescribedJob): Promise<PriceBook | null> {
  if (scope !== null && !isCurrency(scope.currency)) {
    refuse('invalid', `job.json, scope.currency: "${scope.currency}" is not a currency of ISO 4217.`, {
      about: 'scope.currency',
    })
  }
  const fileName = scope?.prices ?? null
  if (fileName === null) return null
  const path = join(folder, 'prices', fileName)
  const bytes = await withFileWords(path, () => readFile(path))
  return priceBookOf({ fileName, bytes }, { decimalMark: null, withoutBadRows: false })
}

/** The records of a described job's scope: facets named by letter become identities. */
export function describedScopeWrites(
  jobId: string,
  { scope }: DescribedJob,
  given: { readonly facetIdOf: (letter: string) => string | null; readonly book: PriceBook | null },
): readonly Write[] {
  if (scope === null) return []
  const { prices: _named, facets, ...rest } = scope
  const idsOf = (letters: readonly string[] | null) =>
    letters === null ? null : letters.flatMap((letter) => given.facetIdOf(letter) ?? [])
  const after = scopeSchema.parse({
    ...rest,
    facets: { repair: idsOf(facets.repair), replacement: idsOf(facets.replacement) },
  })
  return [
    { record: 'scope', id: jobId, after },
    ...(given.book === null ? [] : [{ record: 'price-book', id: jobId, after: given.book } as const]),
  ]
}
