import Database from 'better-sqlite3'
import { describe, expect, it } from 'vitest'
import { z } from 'zod'
import type { ReadDb } from '../database.ts'
import { keepingRows } from './kept-rows.ts'

const rowSchema = z.object({ id: z.string(), text: z.string() })

function readings() {
  const read: string[] = []
  const keep = keepingRows((found) => {
    const row = rowSchema.parse(found)
    if (row.text === 'broken') throw new Error('This row cannot be read.')
    read.push(`${row.id} ${row.text}`)
    return { said: row.text }
  })
  return { read, keep }
}

const openDb = () => ({ connection: new Database(':memory:') }) as unknown as ReadDb

describe('rows that were read before', () => {
  it('are read again only where one of their values has changed', () => {
    const { read, keep } = readings()
    const db = openDb()
    const first = keep(db, 'job', [
      { id: 'a', text: 'one' },
      { id: 'b', text: 'two' },
    ])
    const second = keep(db, 'job', [
      { id: 'a', text: 'one' },
      { id: 'b', text: 'three' },
    ])
    expect(second).toEqual([{ said: 'one' }, { said: 'three' }])
    expect(second[0]).toBe(first[0])
    expect(read).toEqual(['a one', 'b two', 'b three'])
  })

  it('are refused when they no longer fit, though they did before', () => {
    const { keep } = readings()
    const db = openDb()
    keep(db, 'job', [{ id: 'a', text: 'one' }])
    expect(() => keep(db, 'job', [{ id: 'a', text: 'broken' }])).toThrow('cannot be read')
    expect(() => keep(db, 'job', [{ id: 'a', text: 'broken' }])).toThrow('cannot be read')
  })

  it('are refused when they are no rows at all', () => {
    const { keep } = readings()
    expect(() => keep(openDb(), 'job', [null])).toThrow(z.ZodError)
    expect(() => keep(openDb(), 'job', [{ id: 7, text: 'one' }])).toThrow(z.ZodError)
  })

  it('are never mistaken for those of another library or job', () => {
    const { read, keep } = readings()
    const rows = [{ id: 'a', text: 'one' }]
    keep(openDb(), 'job', rows)
    keep(openDb(), 'job', rows)
    expect(read).toEqual(['a one', 'a one'])
  })

  it('are let go when three other jobs were asked for since', () => {
    const { read, keep } = readings()
    const db = openDb()
    const ask = (jobId: string) => keep(db, jobId, [{ id: `${jobId}-a`, text: 'one' }])
    for (const jobId of ['w', 'x', 'y', 'w', 'z', 'w', 'x']) ask(jobId)
    expect(read).toEqual(['w-a one', 'x-a one', 'y-a one', 'z-a one', 'x-a one'])
  })
})
