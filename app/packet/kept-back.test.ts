import { describe, expect, it } from 'vitest'
import { markupSchema } from '../evidence/markup.ts'
import { keptBackHashes, keptBackPhotos, keptBackText } from './kept-back.ts'
import { readSeal, sealText } from './seal.ts'

const corner = { xPx: 1, yPx: 1 }
const hiding = markupSchema.parse({
  photoId: 'p1',
  marks: [{ kind: 'obscured', id: 'o', corner, widthPx: 9, heightPx: 9, what: 'plate' }],
})
const pointing = markupSchema.parse({ photoId: 'p2', marks: [{ kind: 'arrow', id: 'a', from: corner, to: corner }] })

describe('originals kept at the office', () => {
  it('are those of photos with obscured areas, unless they are sent along', () => {
    const caseFile = { markups: [hiding, pointing] }
    expect([...keptBackPhotos(caseFile, { obscuredOriginals: 'keep-back' })]).toEqual(['p1'])
    expect(keptBackPhotos(caseFile, { obscuredOriginals: 'include' }).size).toBe(0)
  })

  it('are listed by hash in a text that reads back', () => {
    const [a, b] = ['a'.repeat(64), 'b'.repeat(64)]
    const text = keptBackText([
      { sha256: a, name: 'originals/one.jpg' },
      { sha256: b, name: 'originals/two words.jpg' },
    ])
    expect(keptBackHashes(text)).toEqual([a, b])
    expect(keptBackHashes('')).toEqual([])
  })

  it('are part of the seal; one without them reads as before', () => {
    const [logHead, filesDigest, keptBackDigest] = ['1', '2', '3'].map((digit) => digit.repeat(64))
    if (logHead === undefined || filesDigest === undefined || keptBackDigest === undefined) return expect.fail()
    for (const seal of [
      { logHead, filesDigest, keptBackDigest },
      { logHead, filesDigest, keptBackDigest: null },
    ])
      expect(readSeal(`x ${sealText(seal)} y`)).toEqual(seal)
    expect(readSeal(`battenbook-seal log=${logHead} files=${filesDigest}`)?.keptBackDigest).toBeNull()
  })
})
