import { describe, expect, it } from 'vitest'
import { packetOptionsSchema } from '../../app/packet/options.ts'
import { aCaseFile } from '../../tests/builders/case-file.ts'
import { hipHouse } from '../../tests/builders/hip-house.ts'
import { aPacketInput } from '../../tests/builders/packet-input.ts'
import { aPricedScope } from '../../tests/builders/priced-scope.ts'
import { jobLayout, libraryLayout } from '../library/layout.ts'
import { bundleFiles } from './bundle-files.ts'

const places = jobLayout(libraryLayout('library'), 'job')

function filesWith({ cost, isOffered = true }: { cost: boolean; isOffered?: boolean }) {
  const input = aPacketInput({
    caseFile: aCaseFile({ facets: hipHouse(), scope: aPricedScope({ isOffered }) }),
    options: packetOptionsSchema.parse({ cost }),
  })
  const files = { photos: [], markups: [], attachments: [], videos: [], places }
  return bundleFiles({ input, files, pdf: '', marked: [] })
}

const textOf = (files: ReturnType<typeof filesWith>) =>
  files.map((file) => ('bytes' in file ? file.bytes.toString('utf8') : '')).join('\n')

describe('the scope in an evidence bundle', () => {
  it('is a table of its own for a recipient who gets the cost', () => {
    const files = filesWith({ cost: true })
    expect(files.map(({ name }) => name)).toContain('scope.csv')
    expect(textOf(files)).toContain('612.35')
  })

  it('is kept back from others, and with it every price', () => {
    const files = filesWith({ cost: false })
    expect(files.map(({ name }) => name)).not.toContain('scope.csv')
    expect(textOf(files)).not.toContain('612.35')
  })

  it('is not there while the office does not offer it', () => {
    expect(filesWith({ cost: true, isOffered: false }).map(({ name }) => name)).not.toContain('scope.csv')
  })
})
