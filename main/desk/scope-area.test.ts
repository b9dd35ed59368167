import { createHash } from 'node:crypto'
import { describe, expect, it } from 'vitest'
import { withJob } from '../../tests/library/a-job.ts'
import { useScratch } from '../../tests/library/scratch.ts'

const scratch = useScratch()
const bytesOf = (text: string) => Buffer.from(text, 'utf8')
const file = (text: string | Buffer) => ({
  fileName: 'our-prices.csv',
  base64: Buffer.from(text).toString('base64'),
})
const good =
  '\uFEFFcode;description;unit;unit price\r\nridge;"Caps; laid";ft;18,25\r\n\r\ncovering;Tile;square;1.612,35\r\n'

describe('the scope at the desk', () => {
  it('changes parts and leaves the others, each one step of undo with its words', () =>
    withJob(scratch, async ({ desk, jobId }) => {
      await desk.ask('scope.save', { jobId, set: { currency: 'EUR' } })
      await desk.ask('scope.save', { jobId, set: { isOffered: true } })
      const { scope, history } = await desk.ask('jobs.open', { jobId })
      expect(scope).toMatchObject({ choices: { currency: 'EUR', isOffered: true }, book: null })
      expect(history.undo).toBe('Change the scope: whether the packet has it')
      await desk.ask('history.undo', { jobId })
      await desk.ask('history.undo', { jobId })
      expect((await desk.ask('jobs.open', { jobId })).scope.choices).toMatchObject({
        currency: 'USD',
        isOffered: false,
      })
    }))

  it.each([
    [{ currency: 'XQX' }, 'is not a currency'],
    [{ own: [{ id: 'a', words: 'x', unit: 'each', source: 's' }] }, 'Give the quantity for one of the two bids'],
    [{ own: [{ id: 'a', words: 'x', unit: 'each', repair: '1', source: ' ' }] }, 'Say where the quantity comes from'],
    [{ changes: [{ bid: 'repair', key: 'k', leftOutBecause: '' }] }, 'why the line is left out'],
    [{ changes: [{ bid: 'repair', key: 'k', byHand: { quantity: '-2' } }] }, 'A figure has at most'],
    [
      {
        changes: [
          { bid: 'repair', key: 'k' },
          { bid: 'repair', key: 'k' },
        ],
      },
      'stands twice',
    ],
  ])('refuses %j', (set, words) =>
    withJob(scratch, async ({ desk, jobId }) => {
      const reply = await desk.desk.call('scope.save', { jobId, set })
      expect(reply).toMatchObject({ ok: false, error: { code: 'invalid', message: expect.stringContaining(words) } })
    }),
  )

  it('takes prices with the name and hash of the file, and lets them go, undoably', () =>
    withJob(scratch, async ({ desk, jobId }) => {
      expect(await desk.ask('scope.take-prices', { jobId, ...file(good) })).toEqual({ prices: 2, leftOut: 0 })
      const { scope, history } = await desk.ask('jobs.open', { jobId })
      expect(history.undo).toBe('Take 2 prices from our-prices.csv')
      expect(scope.book).toEqual({
        fileName: 'our-prices.csv',
        sha256: createHash('sha256').update(bytesOf(good)).digest('hex'),
        decimalMark: 'comma',
        leftOut: 0,
        rows: [
          { line: 2, code: 'ridge', description: 'Caps; laid', unit: 'ft', price: '18.25' },
          { line: 4, code: 'covering', description: 'Tile', unit: 'square', price: '1612.35' },
        ],
      })
      await desk.ask('scope.remove-prices', { jobId })
      expect((await desk.ask('jobs.open', { jobId })).scope.book).toBeNull()
      await desk.ask('history.undo', { jobId })
      expect((await desk.ask('jobs.open', { jobId })).scope.book?.rows).toHaveLength(2)
    }))

  it('previews a file without keeping anything of it', () =>
    withJob(scratch, async ({ desk, jobId }) => {
      const read = await desk.ask('scope-files.read-prices', { jobId, ...file(good) })
      expect(read).toMatchObject({ good: 2, decimalMark: 'comma', lacks: [] })
      expect((await desk.ask('jobs.open', { jobId })).scope.book).toBeNull()
    }))

  it('keeps good rows of a file with bad ones only when the person says so', () =>
    withJob(scratch, async ({ desk, jobId }) => {
      const mixed = 'code,unit,price\nridge,ft,18.25\nhip,ft,=1+1\n'
      const reply = await desk.desk.call('scope.take-prices', { jobId, ...file(mixed) })
      expect(reply).toMatchObject({
        ok: false,
        error: { message: "1 of 2 rows of our-prices.csv can't be taken.", help: expect.stringContaining('Line 3') },
      })
      expect(await desk.ask('scope.take-prices', { jobId, ...file(mixed), withoutBadRows: true })).toEqual({
        prices: 1,
        leftOut: 1,
      })
    }))

  it.each([
    ['no columns', 'ridge,18.25\nhip,2\n', 'No column is titled "code"'],
    ['no rows', 'code,unit,price\n', 'no rows after its titles'],
    ['nothing', '', 'No column is titled "code"'],
    ['a quote that never ends', 'code,unit,price\nridge,"ft,18.25\n', 'can’t be read as a table'],
    ['only bad rows', 'code,unit,price\nridge,ft,0\n', 'has no row that can be taken'],
  ])('refuses a file with %s', (_, text, words) =>
    withJob(scratch, async ({ desk, jobId }) => {
      const asked = { jobId, ...file(text), withoutBadRows: true }
      const reply = await desk.desk.call('scope.take-prices', asked)
      expect(reply).toMatchObject({ ok: false, error: { code: 'invalid', message: expect.stringContaining(words) } })
    }),
  )

  it('reads an old Windows file too: its currency sign does not spoil the price', () =>
    withJob(scratch, async ({ desk, jobId }) => {
      const old = Buffer.concat([
        Buffer.from('code,unit,price\nridge,ft,'),
        Buffer.from([0x80]),
        Buffer.from('18.25\n'),
      ])
      const read = await desk.ask('scope-files.read-prices', { jobId, ...file(old) })
      expect(read.rows[0]).toMatchObject({ cells: ['ridge', 'ft', '€18.25'], price: { price: '18.25' } })
    }))
})
