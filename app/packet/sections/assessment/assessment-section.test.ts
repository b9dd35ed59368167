import { describe, expect, it } from 'vitest'
import { aCaseFile } from '../../../../tests/builders/case-file.ts'
import { sectionText } from '../../../../tests/builders/document-parts.ts'
import { aPacketInput } from '../../../../tests/builders/packet-input.ts'
import { aFacet, aFinding } from '../../../../tests/builders/records.ts'
import { buildPacket } from '../../build-packet.ts'

const south = aFacet({ letter: 'A', downslopeAzimuthDeg: 180 })
const north = aFacet({ letter: 'B', downslopeAzimuthDeg: 0, inspected: { percent: 40 } })
const shut = aFacet({ letter: 'C', downslopeAzimuthDeg: 0, inspected: { percent: 0 } })
const findings = Array.from({ length: 10 }, () =>
  aFinding({ facetId: south.id, extent: { kind: 'exactly', count: 2 } }),
)

function textFor(given: Parameters<typeof aCaseFile>[0]): string {
  const caseFile = aCaseFile(given)
  const wind = { fromDeg: 170, source: 'Neighbour’s weather station, read by the owner' }
  const input = aPacketInput({ caseFile: { ...caseFile, assessment: { ...caseFile.assessment, wind } } })
  return sectionText(buildPacket(input), 'assessment')
}

describe('the assessment in the packet', () => {
  it('is left out where nothing was found', () => {
    expect(textFor({ facets: [south] })).toBe('')
  })

  it('prints sums with their parts, the test with its method, and who stated the wind', () => {
    const text = textFor({ facets: [south, north, shut], findings })
    expect(text).toMatch(/2 \(F-\d+\) \+ 2 \(F-\d+\)/)
    expect(text).toContain('Exact multinomial test over 11 outcomes')
    expect(text).toContain('Wind as stated by a person: from 170° (S). Source: Neighbour’s weather station')
    expect(text).toContain('Cause not determined by this survey.')
  })

  it('names the slopes without findings and those that nobody looked at', () => {
    const text = textFor({ facets: [south, north, shut], findings })
    expect(text).toMatch(/Looked at, without findings of damage\W*B \(40 % of it\)/)
    expect(text).toMatch(/Not looked at\W*C/)
  })

  it('compares nothing while it is not stated how much was looked at', () => {
    const text = textFor({ facets: [south, { ...north, inspected: { percent: null, note: '' } }], findings })
    expect(text).toContain('By side of the wind: not compared. State how much was looked at of facet B')
    expect(text).not.toContain('multinomial')
  })
})
