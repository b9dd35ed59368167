import { describe, expect, it } from 'vitest'
import { aCaseFile } from '../../tests/builders/case-file.ts'
import { aPacketInput } from '../../tests/builders/packet-input.ts'
import { aFacet, aFinding, aJob, aPhoto } from '../../tests/builders/records.ts'
import { makeContext } from './packet-context.ts'
import { photoInset } from './photo-inset.ts'

const anchor = { latDeg: 27.95, lonDeg: -82.45 }
/** 110,818.6 m in a degree of latitude at 27.95 N (WGS84). */
const DEGREE_LAT_FT = 110_818.6 / 0.3048

const facet = aFacet({
  outline: [
    { xFt: -15, yFt: -10 },
    { xFt: 15, yFt: -10 },
    { xFt: 15, yFt: 10 },
    { xFt: -15, yFt: 10 },
  ],
})

function insetAt(northFt: number) {
  const position = { ...anchor, latDeg: anchor.latDeg + northFt / DEGREE_LAT_FT, altitudeM: null, errorM: null }
  const photo = aPhoto({ file: { position } })
  const caseFile = aCaseFile({ job: aJob({ frame: { anchor } }), facets: [facet], photos: [photo, aPhoto()] })
  return photoInset(photo, makeContext(aPacketInput({ caseFile })))
}

describe('the small plan beside a photo', () => {
  it('shows a camera on the roof, and only that one', () => {
    const { drawing, offPlanFt } = insetAt(0)
    expect(drawing?.cameras).toHaveLength(1)
    expect(offPlanFt).toBeNull()
  })

  it('reaches out to a camera beside the house', () => {
    const { drawing } = insetAt(50)
    expect(drawing?.bounds.maxYFt).toBeCloseTo(54, 1)
  })

  it('does not shrink to a speck for a camera far off, and says how far that is', () => {
    const { drawing, offPlanFt } = insetAt(514)
    expect(drawing).toBeNull()
    expect(offPlanFt).toBeCloseTo(500, 0)
  })

  it('shows facet and pin where the camera’s place is not known, and nothing where none is', () => {
    const tagged = aPhoto({ tags: { facetId: facet.id } })
    const bare = aPhoto()
    const finding = aFinding({
      facetId: facet.id,
      pin: { kind: 'point', at: { xFt: 1, yFt: 1 } },
      photos: [{ photoId: tagged.id, role: 'mid' }],
    })
    const caseFile = aCaseFile({ facets: [facet], photos: [tagged, bare], findings: [finding, aFinding()] })
    const context = makeContext(aPacketInput({ caseFile }))
    expect(photoInset(tagged, context).drawing?.pins.map(({ label }) => label)).toEqual([String(finding.number)])
    expect(photoInset(tagged, context).drawing?.facets.map(({ picked }) => picked)).toEqual([true])
    expect(photoInset(bare, context).drawing).toBeNull()
  })
})
