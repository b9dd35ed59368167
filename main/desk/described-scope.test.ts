import { mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { useScratch } from '../../tests/library/scratch.ts'
import { describedJobSchema } from '../../app/job/described-job.ts'
import { describedScopeWrites, readDescribedPrices } from './described-scope.ts'

const scratch = useScratch()
const jobWith = (scope: object) =>
  describedJobSchema.parse({ format: 'battenbook-job', version: 1, number: 'T-1', scope })

async function folderWith(csv: string): Promise<string> {
  const folder = scratch()
  await mkdir(join(folder, 'prices'), { recursive: true })
  await writeFile(join(folder, 'prices', 'p.csv'), csv)
  return folder
}

describe('the scope of a described job', () => {
  it('takes its prices from the file in prices/ and its facets by letter', async () => {
    const described = jobWith({ prices: 'p.csv', facets: { repair: ['B'] }, currency: 'CAD' })
    const book = await readDescribedPrices(await folderWith('code,unit,price\nridge,ft,2.50\n'), described)
    expect(book).toMatchObject({ fileName: 'p.csv', rows: [{ code: 'ridge', price: '2.50' }] })
    const writes = describedScopeWrites('j', described, { facetIdOf: (letter) => `id-${letter}`, book })
    expect(writes.map(({ record }) => record)).toEqual(['scope', 'price-book'])
    expect(writes[0]?.after).toMatchObject({ currency: 'CAD', facets: { repair: ['id-B'], replacement: null } })
  })

  it('is refused whole when a row of its prices is bad', async () => {
    const described = jobWith({ prices: 'p.csv' })
    await expect(readDescribedPrices(await folderWith('code,unit,price\nridge,ft,-2\n'), described)).rejects.toThrow(
      'p.csv has no row that can be taken. A price cannot be negative: "-2".',
    )
  })

  it('names a currency that there is not', async () => {
    await expect(readDescribedPrices('', jobWith({ currency: 'XQX' }))).rejects.toThrow('scope.currency: "XQX"')
  })

  it('is none where none is described', async () => {
    const described = describedJobSchema.parse({ format: 'battenbook-job', version: 1, number: 'T-1' })
    expect(await readDescribedPrices('', described)).toBeNull()
    expect(describedScopeWrites('j', described, { facetIdOf: () => null, book: null })).toEqual([])
  })
})
