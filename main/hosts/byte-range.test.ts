import { describe, expect, it } from 'vitest'
import { contentRange, readByteRange } from './byte-range.ts'

// The examples are those of RFC 9110 section 14.1.2, for a representation of 10,000 bytes.
describe('readByteRange', () => {
  it.each([
    ['bytes=0-499', { first: 0, last: 499 }],
    ['bytes=500-999', { first: 500, last: 999 }],
    ['bytes=-500', { first: 9500, last: 9999 }],
    ['bytes=9500-', { first: 9500, last: 9999 }],
    ['bytes=9500-20000', { first: 9500, last: 9999 }],
    ['bytes=-20000', { first: 0, last: 9999 }],
  ])('%s', (header, range) => {
    expect(readByteRange(header, 10_000)).toEqual(range)
  })

  it.each([null, undefined, '', 'bytes=0-0,-1', 'lines=1-2', 'bytes=-', 'bytes=5-2'])(
    'gives the whole file for %s, which may be passed over',
    (header) => {
      expect(readByteRange(header, 10_000)).toBeNull()
    },
  )

  it.each(['bytes=10000-', 'bytes=-0'])('%s lies outside the file', (header) => {
    expect(readByteRange(header, 10_000)).toBe('unsatisfiable')
    expect(contentRange('unsatisfiable', 10_000)).toBe('bytes */10000')
  })

  it('is told as section 14.4 writes it', () => {
    expect(contentRange({ first: 42, last: 1233 }, 1234)).toBe('bytes 42-1233/1234')
  })
})
