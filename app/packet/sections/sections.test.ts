import { describe, expect, it } from 'vitest'
import {
  blocksOf,
  documentAnchors,
  documentLinks,
  sectionText,
  textOf,
} from '../../../tests/builders/document-parts.ts'
import { aFullPacketInput } from '../../../tests/builders/full-packet-input.ts'
import { findingKindSchema, type Finding } from '../../evidence/finding.ts'
import { buildPacket } from '../build-packet.ts'

const input = aFullPacketInput()
const packet = buildPacket(input)
const { findings, photos } = input.caseFile

const told = findings.find(({ urgent }) => urgent)
if (told === undefined) throw new Error('The case has one urgent finding.')

/** The text that tells one finding, from its heading to the next. */
function findingText({ number }: Finding): string {
  const section = packet.sections.find(({ key }) => key === 'findings')
  const blocks = section === undefined ? [] : blocksOf(section)
  const from = blocks.findIndex((block) => block.kind === 'heading' && block.anchor === `finding-F-${number}`)
  const after = blocks.findIndex((block, i) => i > from && block.kind === 'heading')
  return from < 0
    ? ''
    : blocks
        .slice(from, after < 0 ? undefined : after)
        .map(textOf)
        .join('\n')
}

function labelled({ number }: Finding): string {
  return `F-${number}`
}

describe('the summary', () => {
  const summary = sectionText(packet, 'summary')

  it('adds exact counts only and says the others apart', () => {
    const caps = findings.filter(({ condition }) => condition === 'cap-loose')
    const apart = caps.filter(({ extent }) => extent.kind !== 'exactly').map(labelled)
    expect(summary).toContain(
      `exactly 3 ridge tiles (${caps
        .filter(({ extent }) => extent.kind === 'exactly')
        .map(labelled)
        .join()})`,
    )
    expect(summary).toContain(`at least 4 ridge tiles (${apart[0]}); about 12 ridge tiles (${apart[1]})`)
    expect(summary).toContain(
      `several ridge tiles, not counted (${apart[2]}); examples of a wider condition (${apart[3]})`,
    )
    expect(summary).not.toMatch(/exactly (7|15|19) ridge tiles/)
  })

  it('lists what was found sound', () => {
    const sound = findings.find(({ kind }) => kind === 'sound')
    expect(summary).toContain(`Sound: Field tile: sound, exactly 2 field tiles (F-${sound?.number})`)
  })

  it('tells opinions as opinions, the undetermined one among them', () => {
    expect(summary).toMatch(/Inspector’s opinion on cause, by damage finding: undetermined \(F-\d+\); not stated/)
    expect(summary).toContain(`wind (${labelled(told)})`)
  })

  it('says how much of each facet was looked at, also where that is not stated', () => {
    expect(summary).toContain('40 %')
    expect(summary).toContain('not stated')
  })
})

describe('a finding', () => {
  it('keeps what was observed and measured apart from the opinion on cause', () => {
    const text = findingText(told)
    const at = (words: string) => text.indexOf(words)
    expect(text).toContain('ObservedLifts by hand. Nose rises evenly. Crack runs to the fastener.')
    expect(text).toContain('FastenerOne screw, head raised.')
    expect(text).toContain('MeasuredLift of the nose 1.25 in, force not recorded, by hand; readings R-')
    expect(text).toContain('Opinion on causeConsistent with wind. Edge of the slope.')
    expect(at('Observed')).toBeLessThan(at('Measured'))
    expect(at('Measured')).toBeLessThan(at('Opinion on cause'))
    expect(text).toContain('Seen for itbright metal')
    expect(text).toContain('Looked for, not seendebris')
    expect(text).toContain('Other explanationsworn hole (hole round)')
  })

  it('says that it shows poorly in the picture, there and at the photo', () => {
    expect(findingText(told)).toContain('shows poorly in the picture')
    expect(sectionText(packet, 'photos')).toContain(`shows poorly in the picture: ${labelled(told)}`)
  })

  it('says that its cause is not determined', () => {
    const [open] = findings.filter(({ cause }) => cause.cause === 'undetermined')
    expect(open === undefined ? '' : findingText(open)).toContain('Cause not determined by this survey.')
  })

  it('of damage without an opinion says that none is given', () => {
    const [silent] = findings.filter(({ kind, cause }) => kind === 'damage' && cause.cause === 'not-stated')
    expect(silent === undefined ? '' : findingText(silent)).toContain('No opinion on cause is given.')
  })
})

describe('facets without findings', () => {
  it('say so, with how much was looked at', () => {
    const text = sectionText(packet, 'findings')
    expect(text).toMatch(/Facets without a finding\nC, front, right part: How much of it was looked at is not stated\./)
    expect(text).not.toContain('Facet C')
  })
})

describe('field tests', () => {
  const text = sectionText(packet, 'field-tests')

  it('list readings as written down, those without a force as such, and call no tile passed or failed', () => {
    expect(text).toContain('by hand, no force read')
    expect(text).toContain('cannot be judged: no force recorded')
    expect(text).toContain('Without a lift or a force, and so not to be weighed against any figure: 1 of 2 readings.')
    expect(text).not.toMatch(/\b(pass|passed|fail|failed)\b/i)
  })

  it('call the rule of thumb what it is', () => {
    expect(text).toContain('less than 35 lbf [common practice, no source]')
    expect(text).toContain('These readings are not that test.')
  })

  it('name an instrument once, with the readings taken with it', () => {
    const readings = input.caseFile.readings.map((reading) => ({ ...reading, instrument: 'dial gauge no. 3' }))
    const packetOf = buildPacket({ ...input, caseFile: { ...input.caseFile, readings } })
    const words = sectionText(packetOf, 'field-tests')
    expect(readings).toHaveLength(2)
    expect(words).toMatch(/Instrument: dial gauge no\. 3 \(R-\d+, R-\d+\)\./)
    expect(words.split('dial gauge no. 3')).toHaveLength(2)
  })

  it('leave the section out where nothing was read', () => {
    const without = buildPacket({ ...input, caseFile: { ...input.caseFile, readings: [] } })
    expect(without.sections.map(({ key }) => key)).not.toContain('field-tests')
    const anchors = new Set(documentAnchors(without))
    expect(documentLinks(without).filter((link) => !anchors.has(link))).toEqual([])
  })
})

describe('photos and custody', () => {
  const [out] = photos.filter(({ tags }) => tags.leftOutBecause !== null)
  const [corrected] = photos.filter(({ time }) => time.correctionMs !== 0)

  it('keep a left-out photo in custody only, with its reason', () => {
    expect(documentAnchors(packet)).not.toContain(`photo-P-${String(out?.number).padStart(3, '0')}`)
    expect(sectionText(packet, 'custody')).toContain(`${out?.file.fileName}: Taken by mistake.`)
    expect(sectionText(packet, 'custody')).toContain(out?.file.sha256)
  })

  it('print every full SHA-256 in custody and its first 12 digits at the photo', () => {
    const custody = sectionText(packet, 'custody')
    for (const { file } of photos) expect(custody).toContain(file.sha256)
    for (const { file } of input.attachments) expect(custody).toContain(file.sha256)
    expect(sectionText(packet, 'photos')).toContain(corrected?.file.sha256.slice(0, 12))
    expect(sectionText(packet, 'photos')).not.toContain(corrected?.file.sha256)
    expect(custody).toContain(input.headHash)
  })

  it('show what the camera wrote, the correction, and the time that follows; the reason once, in custody', () => {
    const raw = corrected?.file.written.raw ?? ''
    const used = 'March 14, 2026, 15:00:00 -04:00 (offset written by the camera)'
    const why = 'One hour slow against a phone in P-001.'
    expect(sectionText(packet, 'photos')).toContain(`camera wrote ${raw}, +1 h 00 min 00 s, see Custody`)
    expect(sectionText(packet, 'photos')).not.toContain(why)
    expect(sectionText(packet, 'custody').split(why)).toHaveLength(2)
    expect(sectionText(packet, 'custody')).toContain(`${raw}+1 h 00 min 00 s${used}`)
  })

  it('give place, stated error and direction', () => {
    expect(sectionText(packet, 'photos')).toContain(
      '27.95000, -82.45000, stated error 16 ft, looking east (90°) from magnetic north',
    )
    expect(sectionText(packet, 'photos')).toContain('position not recorded')
  })

  it('draw the camera, the facet and the pins of a photo small beside it, and nothing else', () => {
    const cards = packet.sections
      .flatMap(blocksOf)
      .flatMap((block) => (block.kind === 'photo-cards' ? block.cards : []))
    const inset = cards.find(({ photoId }) => photoId === corrected?.id)?.inset
    expect(inset?.cameras.map(({ photoId }) => photoId)).toEqual([corrected?.id])
    expect(inset?.facets.filter(({ picked }) => picked === true).map(({ letter }) => letter)).toEqual(['A'])
    expect(inset?.pins).toHaveLength(findingKindSchema.options.length)
    const [untimed] = photos.filter(({ time }) => time.instantMs === null)
    expect(cards.find(({ photoId }) => photoId === untimed?.id)?.inset).toBeNull()
  })

  it('tell how to verify with standard tools and with the program', () => {
    expect(sectionText(packet, 'custody')).toContain('sha256sum -c manifest.sha256')
    expect(sectionText(packet, 'custody')).toContain('battenbook verify BUNDLE')
  })
})

describe('the evidence log', () => {
  const text = sectionText(packet, 'evidence-log')

  it('tells the walk in the order of time and names photos without one', () => {
    expect(text.indexOf('14:00:')).toBeLessThan(text.indexOf('15:00:00'))
    expect(text).toMatch(/Without a known time: P-\d+\./)
  })

  it('tells the record in words, in local time, photos that came together in one line', () => {
    expect(text).toMatch(/1March 14, 2026, 14:00:00 -04:00Job 2026-\d+ opened/)
    expect(text).toMatch(/2-5March 14, 2026, 14:01:00 -04:004 photos taken in, P-\d+ to P-\d+/)
    expect(text).toContain('COPY.JPG came again, the same file as P-')
    expect(text).toContain('Let stand before issuing: Facet C has no overview photo. Reason given: Not reachable.')
    expect(text).toContain('Revision 1 issued')
  })
})

describe('cover and statement', () => {
  it.each(['cover', 'statement'])('the %s says what this is and is not', (key) => {
    const text = sectionText(packet, key)
    expect(text).toContain('not an adjuster’s report, not an engineer’s opinion and not a coverage opinion')
    expect(text).toContain('The owner chooses who receives this record.')
  })

  it('print revision, head hash and a cover photo', () => {
    const text = sectionText(packet, 'cover')
    expect(text).toContain('Revision 2, issued March 15, 2026, 14:00:00 -04:00 by Olive Office')
    expect(text).toContain(input.headHash)
    expect(text).toContain('Street front')
    expect(packet.watermark).toBeNull()
  })

  it('mark a draft as one', () => {
    const draft = buildPacket({ ...input, revision: null })
    expect(draft.watermark).toBe('DRAFT')
    expect(draft.revisionLabel).toBe('Draft, not issued')
    expect(sectionText(draft, 'cover')).toContain('This is a draft.')
  })

  it('carry the caution for work at height and what was not looked at', () => {
    const text = sectionText(packet, 'statement')
    expect(text).toContain('fall protection')
    expect(text).toContain('40 % of facet B was looked at: Wet above the porch.')
    expect(text).toContain('How much of facet C was looked at is not stated.')
  })
})
