import { describe, expect, it } from 'vitest'
import { howToVerifyText } from './verifying.ts'
import { wordingFlags } from './wording-guard.ts'

describe('HOW-TO-VERIFY.txt', () => {
  const text = howToVerifyText({
    jobNumber: '2026-1',
    revisionLabel: 'Revision 2',
    headHash: 'ab'.repeat(32),
    videosLeftOut: [],
    programVersion: '0.1.0',
  })

  it('names the job, the revision and the whole head hash', () => {
    expect(text).toContain('Job 2026-1, Revision 2')
    expect(text).toContain('ab'.repeat(32))
  })

  it('numbers the steps, with the standard tool and the program', () => {
    expect(text).toMatch(/^1\. Unpack/m)
    expect(text).toMatch(/^2\. .*sha256sum -c manifest\.sha256/m)
    expect(text).toMatch(/^4\. .*battenbook verify BUNDLE/m)
  })

  it('says what a hash does not show, and stays inside a contractor’s part', () => {
    expect(text).toContain('It does not say who made')
    expect(wordingFlags(text)).toEqual([])
  })
})
