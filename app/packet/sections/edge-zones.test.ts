import { describe, expect, it } from 'vitest'
import { blocksOf, documentLinks, sectionText, textOf } from '../../../tests/builders/document-parts.ts'
import { aCaseFile } from '../../../tests/builders/case-file.ts'
import { aPacketInput } from '../../../tests/builders/packet-input.ts'
import { aFinding, aJob } from '../../../tests/builders/records.ts'
import { facetsOf, gable } from '../../../tests/builders/whole-roofs.ts'
import type { Pin } from '../../evidence/finding.ts'
import { buildPacket } from '../build-packet.ts'
import { csvTables } from '../csv-tables.ts'
import type { PlanBlock } from '../document.ts'
import { planGeoJson } from '../plan-geojson.ts'

const p = (xFt: number, yFt: number) => ({ xFt, yFt })
const point = (xFt: number, yFt: number): Pin => ({ kind: 'point', at: p(xFt, yFt) })

/** A gable roof 60 by 40, 15 ft high: zones are 4 ft wide. */
function caseOf(property: Readonly<Record<string, unknown>> = { windEdition: '7-16', meanRoofHeightFt: 15 }) {
  return aCaseFile({
    job: aJob({ frame: { anchor: { latDeg: 27.95, lonDeg: -82.45 } }, sheet: { property } }),
    facets: facetsOf(gable(60, 40, 6)),
    findings: [
      aFinding({ number: 1, pin: point(30, 2) }),
      aFinding({ number: 2, pin: { kind: 'area', points: [p(20, 0), p(28, 0), p(28, 6), p(20, 6)] } }),
      aFinding({ number: 3, pin: null }),
    ],
  })
}

const caseFile = caseOf()
const packet = buildPacket(aPacketInput({ caseFile }))
const plansOf = (built: typeof packet): readonly PlanBlock[] =>
  built.sections
    .filter(({ key }) => key === 'roof-plan')
    .flatMap(blocksOf)
    .filter((block): block is PlanBlock => block.kind === 'plan')

describe('zones in a packet', () => {
  it('stand on a plan of their own beside the plain one', () => {
    const [plain, zoned] = plansOf(packet)
    expect(plain?.drawing.zones).toBeUndefined()
    expect(new Set(zoned?.drawing.zones?.map(({ zone }) => zone))).toEqual(
      new Set(['corner', 'edge', 'ridge', 'field']),
    )
  })

  it('come with their width and how it came about, the edition, and the caution', () => {
    const text = sectionText(packet, 'property-and-roof')
    expect(text).toContain('a = 4 ft: the lesser of 0.10 × 40 ft')
    expect(text).toContain('0.4 × 15 ft (mean roof height) = 6 ft')
    expect(text).toContain('ASCE 7-16 is the edition named for this job.')
    expect(text).toContain('They are not engineering')
    expect(sectionText(packet, 'roof-plan')).toContain('They are not engineering')
  })

  it('have areas that add up to the roof: four corners of 16 sq ft and two ridge ends of 32 in plan, times the slope', () => {
    const rows = packet.sections
      .flatMap(blocksOf)
      .flatMap((block) => (block.kind === 'table' && block.summary.startsWith('Zones with') ? block.rows : []))
      .map(({ cells }) => cells.map((cell) => cell.map(({ text }) => text).join('')))
    // 6 in 12: square root of 1.25 = 1.118034. 128 sq ft of plan are 143.1 on the slope; the roof, 2,400, is 2,683.3.
    expect(rows[0]?.slice(0, 3)).toEqual(['Corner', 'where two outer edges meet, and ridge ends at rakes', '143'])
    expect(rows.at(-1)?.[2]).toBe('2,683')
  })

  it('tell the zone of each finding, in shares where it has several, and that it is not known without a pin', () => {
    const text = sectionText(packet, 'findings')
    expect(text).toContain('ZoneEdge, along the eave')
    expect(text).toContain('ZoneEdge 67 %, field 33 %')
    expect(text).toContain('ZoneNo pin on the plan, so its zone is not known.')
    expect(documentLinks(packet)).toContain('finding-F-2')
  })

  it('are in the tables and on the map of the bundle', () => {
    const findings = csvTables(caseFile).find(({ name }) => name === 'findings.csv')
    const at = findings?.header.indexOf('zone') ?? -1
    expect(findings?.rows.map((row) => row[at])).toEqual([
      'Edge, along the eave',
      'Edge 67 %, field 33 %',
      'No pin on the plan, so its zone is not known.',
    ])
    const zones = csvTables(caseFile).find(({ name }) => name === 'zones.csv')
    const plan = zones?.rows.map((row) => Number(row[1])) ?? []
    expect(plan.reduce((sum, area) => sum + area, 0)).toBeCloseTo(2400, 2)
    const features = planGeoJson(caseFile)?.features ?? []
    expect(features.filter(({ properties }) => properties['kind'] === 'zone').length).toBeGreaterThan(6)
    expect(features.find(({ id }) => id === 'F-1')?.properties['zone']).toBe('Edge, along the eave')
  })

  it('are left out where the sheet lacks what they need, with a sentence that names it', () => {
    const bare = buildPacket(aPacketInput({ caseFile: caseOf({ meanRoofHeightFt: 15 }) }))
    expect(sectionText(bare, 'property-and-roof')).toContain(
      'Not worked out. To work out zones, enter the edition of the wind standard on the job sheet.',
    )
    expect(plansOf(bare)).toHaveLength(1)
    const told = bare.sections.filter(({ key }) => key === 'findings').flatMap(blocksOf)
    expect(told.map(textOf).join('\n')).not.toContain('Zone')
  })
})

describe('the place of a finding that nobody put into words', () => {
  it('is read off the plan by its pin, and says so', () => {
    const worded = aPacketInput({
      caseFile: { ...caseFile, findings: [aFinding({ number: 4, placeWords: '', pin: point(30, 2) })] },
    })
    expect(sectionText(buildPacket(worded), 'findings')).toContain('along the eave (read off the plan)')
  })
})
