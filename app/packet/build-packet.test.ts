import { describe, expect, it } from 'vitest'
import { aCaseFile } from '../../tests/builders/case-file.ts'
import { blocksOf, documentAnchors, documentLinks, sectionText, textOf } from '../../tests/builders/document-parts.ts'
import { aFullPacketInput, everyExtent } from '../../tests/builders/full-packet-input.ts'
import { aPacketInput } from '../../tests/builders/packet-input.ts'
import { aFacet, aFinding, aPhoto, aReading } from '../../tests/builders/records.ts'
import { extentSchema, findingKindSchema, type Finding } from '../evidence/finding.ts'
import { buildPacket } from './build-packet.ts'
import type { PacketDocument } from './document.ts'
import { wordingFlags } from './wording-guard.ts'

const input = aFullPacketInput()
const packet = buildPacket(input)
const { findings, photos } = input.caseFile

function allText(document: PacketDocument): readonly string[] {
  return document.sections.flatMap((section) => blocksOf(section).map(textOf))
}

function labelled({ number }: Finding): string {
  return `F-${number}`
}

describe('a packet for a job with every kind of finding', () => {
  it('covers every kind of finding and of extent there is', () => {
    expect(new Set(findings.map(({ kind }) => kind))).toEqual(new Set(findingKindSchema.options))
    expect(new Set(everyExtent.map(({ kind }) => kind))).toEqual(
      new Set(extentSchema.options.map((option) => option.shape.kind.value)),
    )
  })

  it('has every anchor once', () => {
    const anchors = documentAnchors(packet)
    expect(anchors.length).toBeGreaterThan(40)
    expect(anchors.filter((anchor, i) => anchors.indexOf(anchor) !== i)).toEqual([])
  })

  it('has no link that leads nowhere', () => {
    const anchors = new Set(documentAnchors(packet))
    const links = documentLinks(packet)
    expect(links.length).toBeGreaterThan(100)
    expect(links.filter((link) => !anchors.has(link))).toEqual([])
  })

  it('says nothing that is outside a contractor’s part', () => {
    expect(
      allText(packet).flatMap((text) => wordingFlags(text).map(({ matched }) => `${matched} in: ${text}`)),
    ).toEqual([])
  })

  it('is the same document for the same input', () => {
    expect(buildPacket(input)).toEqual(packet)
  })

  it('has its sections in the order in which they are read', () => {
    expect(packet.sections.map(({ key }) => key)).toEqual([
      'cover',
      'summary',
      'contents',
      'property-and-roof',
      'roof-plan',
      'findings',
      'field-tests',
      'assessment',
      'explanatory-notes',
      'photos',
      'evidence-log',
      'custody',
      'statement',
    ])
  })
})

describe('the way from a sentence to its evidence and back', () => {
  const linksIn = (key: string) => documentLinks({ ...packet, sections: packet.sections.filter((s) => s.key === key) })

  it('runs from the summary to every finding', () => {
    const links = new Set(linksIn('summary'))
    expect(findings.filter((finding) => !links.has(`finding-${labelled(finding)}`))).toEqual([])
  })

  it('runs from a finding to its photos and its pin, and from the photo back', () => {
    const [pinned] = findings
    const [photo] = photos.filter(({ time }) => time.correctionMs !== 0)
    const label = `P-${String(photo?.number).padStart(3, '0')}`
    expect(linksIn('findings')).toContain(`photo-${label}`)
    expect(linksIn('findings')).toContain(`pin-F-${pinned?.number}`)
    expect(linksIn('photos')).toContain(`finding-F-${pinned?.number}`)
    expect(linksIn('photos')).toContain(`file-${label}`)
    expect(linksIn('custody')).toContain(`photo-${label}`)
  })

  it('runs from the plan’s pins to findings: every finding with a pin has it on one sheet', () => {
    const blocks = packet.sections.find(({ key }) => key === 'roof-plan')?.blocks ?? []
    const drawings = blocks.flatMap((block) => (block.kind === 'plan' ? [block.drawing] : []))
    const pinned = findings.filter(({ pin }) => pin !== null).map(({ number }) => String(number))
    expect(pinned.length).toBeGreaterThan(0)
    expect(drawings.flatMap(({ pins }) => pins.map(({ label }) => label)).sort()).toEqual(pinned.sort())
    expect(drawings.flatMap(({ cameras }) => cameras)).toEqual([])
  })

  it('leads to custody where a finding rests on a photo that is left out', () => {
    const [out] = photos.filter(({ tags }) => tags.leftOutBecause !== null)
    expect(linksIn('findings')).toContain(`file-P-${String(out?.number).padStart(3, '0')}`)
    expect(sectionText(packet, 'findings')).toContain('close-up, left out of the packet')
  })
})

describe('a packet for an empty job', () => {
  it('is whole, with every link leading somewhere', () => {
    const empty = buildPacket(aPacketInput({ log: [], headHash: '' }))
    const anchors = new Set(documentAnchors(empty))
    expect(documentLinks(empty).filter((link) => !anchors.has(link))).toEqual([])
    expect(sectionText(empty, 'findings')).toContain('No finding is recorded.')
    expect(sectionText(empty, 'roof-plan')).toContain('Nothing is drawn on the plan.')
  })

  it('survives references to records that are gone', () => {
    const ghost = aPhoto()
    const finding = aFinding({ facetId: aFacet().id, photos: [{ photoId: ghost.id, role: 'close' }] })
    const reading = aReading({ findingId: aFinding().id, photoIds: [ghost.id] })
    const document = buildPacket(aPacketInput({ caseFile: aCaseFile({ findings: [finding], readings: [reading] }) }))
    const anchors = new Set(documentAnchors(document))
    expect(documentLinks(document).filter((link) => !anchors.has(link))).toEqual([])
  })
})
