import { describe, expect, it } from 'vitest'
import { aCaseFile } from '../../tests/builders/case-file.ts'
import { aCamera, aFacet, aFinding, aJob, aPhoto, aReading } from '../../tests/builders/records.ts'
import { emptyJobSheet } from '../job/sheet.ts'
import type { CaseFile } from './case-file.ts'
import { packetProblems } from './coverage.ts'

const idsOf = (given: Partial<CaseFile>) => packetProblems(aCaseFile(given)).map(({ id }) => id)
const sentencesOf = (given: Partial<CaseFile>) => packetProblems(aCaseFile(given)).map(({ sentence }) => sentence)

/** A case in which nothing is missing. */
function completeCase(): CaseFile {
  const facet = aFacet()
  const overview = aPhoto({ tags: { facetId: facet.id, role: 'overview' } })
  const mid = aPhoto({ tags: { facetId: facet.id } })
  const close = aPhoto({ tags: { facetId: facet.id } })
  const test = aPhoto({ tags: { facetId: facet.id } })
  const finding = aFinding({
    condition: 'lifts-by-hand',
    extent: { kind: 'exactly', count: 2 },
    facetId: facet.id,
    pin: { kind: 'point', at: { xFt: 1, yFt: 1 } },
    photos: [
      { photoId: mid.id, role: 'mid' },
      { photoId: close.id, role: 'close' },
      { photoId: test.id, role: 'test' },
    ],
    cause: {
      cause: 'wind',
      indicatorsSeen: ['several together near the edge'],
      otherExplanations: [{ explanation: 'worn hole', whyLessLikely: 'hole round' }],
    },
  })
  const reading = aReading({ facetId: facet.id, findingId: finding.id, photoIds: [test.id] })
  const sides = ['Front, from the street', 'Left', 'Back', 'Right'].map((caption) =>
    aPhoto({ tags: { role: 'elevation', caption } }),
  )
  const plain = aJob()
  const { sheet } = plain
  const property = { ...sheet.property, position: { latDeg: 27.9506, lonDeg: -82.4572 } }
  return aCaseFile({
    job: { ...plain, sheet: { ...sheet, property } },
    facets: [facet],
    photos: [overview, mid, close, test, ...sides],
    findings: [finding],
    readings: [reading],
  })
}

describe('what a packet still lacks', () => {
  it('is nothing when nothing is missing', () => {
    expect(packetProblems(completeCase())).toEqual([])
  })

  it('has the same identities in every run, each once', () => {
    const caseFile = aCaseFile({ facets: [aFacet(), aFacet()], findings: [aFinding()], photos: [aPhoto()] })
    const first = packetProblems(caseFile).map(({ id }) => id)
    expect(packetProblems(caseFile).map(({ id }) => id)).toEqual(first)
    expect(new Set(first).size).toBe(first.length)
  })

  it('puts what would make the packet false first', () => {
    const facet = aFacet({ letter: 'A', inspected: {} })
    const weights = packetProblems(aCaseFile({ facets: [facet, aFacet({ letter: 'a' })] })).map(({ weight }) => weight)
    expect(weights[0]).toBe('blocking')
    expect(weights).toEqual([...weights].sort((a, b) => 'bmn'.indexOf(a[0] ?? '') - 'bmn'.indexOf(b[0] ?? '')))
  })
})

describe('the job sheet', () => {
  it('names every required field that is empty, with its place', () => {
    const job = { ...aJob(), sheet: emptyJobSheet() }
    const fields = packetProblems(aCaseFile({ job })).flatMap(({ place }) =>
      place.kind === 'sheet' ? [place.field] : [],
    )
    expect(fields.sort()).toEqual(
      [
        'contractor.licence',
        'contractor.name',
        'covering.class',
        'inspection.dates',
        'inspection.inspector',
        'loss.date',
        'owner.name',
        'property.address',
        'property.frontAzimuthDeg',
      ].sort(),
    )
  })

  it('takes 0 degrees, north, as a direction of the front', () => {
    const job = aJob({ sheet: { property: { address: '1 Example Lane', frontAzimuthDeg: 0 } } })
    expect(idsOf({ job })).not.toContain('sheet-empty:property.frontAzimuthDeg')
  })
})

describe('facets', () => {
  it('need an overview photo that is in the packet', () => {
    const facet = aFacet()
    const leftOut = aPhoto({ tags: { facetId: facet.id, role: 'overview', leftOutBecause: 'blurred' } })
    expect(idsOf({ facets: [facet], photos: [leftOut] })).toContain(`facet-no-overview:${facet.id}`)
    const shown = aPhoto({ tags: { facetId: facet.id, role: 'overview' } })
    expect(idsOf({ facets: [facet], photos: [leftOut, shown] })).not.toContain(`facet-no-overview:${facet.id}`)
  })

  it('may have their overview through a finding', () => {
    const facet = aFacet()
    const photo = aPhoto()
    const finding = aFinding({ facetId: facet.id, photos: [{ photoId: photo.id, role: 'overview' }] })
    expect(idsOf({ facets: [facet], photos: [photo], findings: [finding] })).not.toContain(
      `facet-no-overview:${facet.id}`,
    )
  })

  it('say how much was looked at, and why not all of it', () => {
    const unknown = aFacet({ inspected: {} })
    const part = aFacet({ inspected: { percent: 60 } })
    const explained = aFacet({ inspected: { percent: 60, note: 'Too steep above the porch.' } })
    const ids = idsOf({ facets: [unknown, part, explained] })
    expect(ids).toContain(`facet-share-unknown:${unknown.id}`)
    expect(ids).toContain(`facet-share-no-reason:${part.id}`)
    expect(ids.filter((id) => id.startsWith('facet-share') && id.endsWith(explained.id))).toEqual([])
  })
})

describe('findings', () => {
  it('of damage need photos, and say which view is missing', () => {
    const bare = aFinding()
    expect(idsOf({ findings: [bare] })).toContain(`finding-no-photo:${bare.id}`)
    const photo = aPhoto()
    const midOnly = aFinding({ condition: 'corner-break', photos: [{ photoId: photo.id, role: 'mid' }] })
    const ids = idsOf({ findings: [midOnly], photos: [photo] })
    expect(ids).toContain(`finding-no-close:${midOnly.id}`)
    expect(ids).toContain(`finding-no-scale:${midOnly.id}`)
    expect(ids).not.toContain(`finding-no-mid:${midOnly.id}`)
    expect(ids).not.toContain(`finding-no-photo:${midOnly.id}`)
  })

  it('count a close-up with a scale as a close-up', () => {
    const photo = aPhoto()
    const finding = aFinding({ condition: 'corner-break', photos: [{ photoId: photo.id, role: 'scale' }] })
    expect(idsOf({ findings: [finding], photos: [photo] })).not.toContain(`finding-no-close:${finding.id}`)
  })

  it('ask no photo of what was found sound', () => {
    const sound = aFinding({ kind: 'sound', condition: 'sound' })
    expect(idsOf({ findings: [sound] }).filter((id) => id.startsWith('finding-no-photo'))).toEqual([])
  })

  it('need a facet and a pin; a whole facet needs no pin', () => {
    const nowhere = aFinding()
    const facet = aFacet()
    const whole = aFinding({ facetId: facet.id, extent: { kind: 'whole-facet' } })
    const ids = idsOf({ findings: [nowhere, whole], facets: [facet] })
    expect(ids).toContain(`finding-no-facet:${nowhere.id}`)
    expect(ids).toContain(`finding-no-pin:${nowhere.id}`)
    expect(ids).not.toContain(`finding-no-pin:${whole.id}`)
  })

  it('say how much; "several, not counted" is an honest answer', () => {
    const silent = aFinding()
    const several = aFinding({ extent: { kind: 'several' } })
    const ids = idsOf({ findings: [silent, several] })
    expect(ids).toContain(`finding-extent-unstated:${silent.id}`)
    expect(ids).not.toContain(`finding-extent-unstated:${several.id}`)
  })

  it('that lift by hand need a measured lift, on the finding or in a reading', () => {
    const claimed = aFinding({ condition: 'lifts-by-hand' })
    const measured = aFinding({ condition: 'lifts-by-hand', measurements: [{ what: 'lift-in', value: 1, by: 'hand' }] })
    const read = aFinding({ condition: 'lifts-by-hand' })
    const ids = idsOf({ findings: [claimed, measured, read], readings: [aReading({ findingId: read.id })] })
    expect(ids.filter((id) => id.startsWith('finding-unmeasured-lift'))).toEqual([
      `finding-unmeasured-lift:${claimed.id}`,
    ])
  })

  it('with an opinion on cause need something seen for it; "undetermined" needs nothing', () => {
    const opinion = aFinding({ cause: { cause: 'wind' } })
    const open = aFinding({ cause: { cause: 'undetermined' } })
    const ids = idsOf({ findings: [opinion, open] })
    expect(ids).toContain(`finding-cause-no-indicator:${opinion.id}`)
    expect(ids).toContain(`finding-cause-no-alternative:${opinion.id}`)
    expect(ids.filter((id) => id.startsWith('finding-cause') && id.endsWith(open.id))).toEqual([])
  })

  it('must not name a photo or a facet that is gone', () => {
    const photo = aPhoto()
    const facet = aFacet()
    const finding = aFinding({ facetId: facet.id, photos: [{ photoId: photo.id, role: 'close' }] })
    const problems = packetProblems(aCaseFile({ findings: [finding] }))
    expect(problems.filter(({ weight }) => weight === 'blocking').map(({ id }) => id)).toEqual([
      `finding-facet-gone:${finding.id}`,
      `finding-photo-gone:${finding.id}:${photo.id}`,
    ])
  })
})

describe('readings', () => {
  it('need a force beside the lift', () => {
    const reading = aReading({ forceLbf: null })
    expect(idsOf({ readings: [reading] })).toContain(`reading-no-force:${reading.id}`)
  })

  it('take a force or a lift of 0 as recorded', () => {
    const reading = aReading({ forceLbf: 0, liftIn: 0 })
    expect(idsOf({ readings: [reading] }).filter((id) => /no-(force|lift)/.test(id))).toEqual([])
  })
})

describe('photos', () => {
  it('that nobody tagged are told apart from tagged ones that no finding uses', () => {
    const untagged = aPhoto()
    const unused = aPhoto({ tags: { caption: 'Ridge, west end' } })
    const house = aPhoto({ tags: { role: 'elevation' } })
    const out = aPhoto({ tags: { leftOutBecause: 'Same view as the one before' } })
    const ids = idsOf({ photos: [untagged, unused, house, out] }).filter((id) => id.startsWith('photo-'))
    expect(ids).toEqual([`photo-untagged:${untagged.id}`, `photo-unused:${unused.id}`])
  })

  it('need a time', () => {
    const photo = aPhoto({ time: { basis: 'unknown', offsetMinutes: null, correctionMs: 0, instantMs: null } })
    expect(idsOf({ photos: [photo] })).toContain(`photo-no-time:${photo.id}`)
  })

  it('are compared with the inspection dates by their local day, not by UTC', () => {
    const job = aJob({ sheet: { inspection: { dates: ['2026-03-14'] } } })
    const at = (instantMs: number) =>
      aPhoto({ time: { basis: 'camera-offset', offsetMinutes: -240, correctionMs: 0, instantMs } })
    const lateEvening = at(Date.UTC(2026, 2, 15, 3, 30))
    const nextDay = at(Date.UTC(2026, 2, 15, 4, 30))
    const ids = idsOf({ job, photos: [lateEvening, nextDay] }).filter((id) => id.startsWith('photo-other-day'))
    expect(ids).toEqual([`photo-other-day:${nextDay.id}`])
  })

  it('that can’t be shown are named', () => {
    const photo = aPhoto({ preview: 'none' })
    expect(idsOf({ photos: [photo] })).toContain(`photo-not-shown:${photo.id}`)
  })
})

describe('wording outside a contractor’s part', () => {
  it('is found in every kind of free text that is printed', () => {
    const words = 'This must be replaced.'
    const job = aJob({ sheet: { inspection: { dates: ['2026-03-14'], overallOpinion: words }, notes: words } })
    const sentences = sentencesOf({
      job,
      facets: [aFacet({ letter: 'A', inspected: { percent: 50, note: words } })],
      photos: [aPhoto({ number: 7, tags: { caption: words } })],
      findings: [aFinding({ number: 3, observation: words, cause: { note: words }, lookedAt: { debris: words } })],
      readings: [aReading({ number: 2, note: words })],
      cameras: [aCamera({ clock: { correctionMs: 1000, why: words } })],
    }).filter((sentence) => sentence.includes('"must be replaced"'))
    expect(sentences.map((sentence) => sentence.split(':')[0])).toEqual([
      'Job sheet, overall opinion',
      'Job sheet, notes',
      'Facet A, inspected share',
      'P-007, caption',
      'F-3, observation',
      'F-3, opinion on cause',
      'F-3, debris',
      'R-2, note',
      'Reason of a clock correction',
    ])
  })

  it('gives the words, the reason and what to write instead, once for each text', () => {
    const finding = aFinding({ number: 5, observation: 'Caused by wind. The policy pays.' })
    const [problem, ...rest] = packetProblems(aCaseFile({ findings: [finding] })).filter(({ id }) =>
      id.startsWith('wording:'),
    )
    expect(rest).toEqual([])
    expect(problem?.id).toBe(`wording:${finding.id}:observation`)
    expect(problem?.sentence).toMatch(/^F-5, observation: "Caused by", "policy pays"\. .*consistent with/)
    expect(problem?.weight).toBe('mend')
  })
})
