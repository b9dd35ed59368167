import { describe, expect, it } from 'vitest'
import { hipHouse } from '../../tests/builders/hip-house.ts'
import { aFinding, aJob } from '../../tests/builders/records.ts'
import { wordingFlags } from '../packet/wording-guard.ts'
import { conditionKeySchema } from '../evidence/catalog/keys.ts'
import { buildScope } from './build-scope.ts'
import { decimalText } from './decimal.ts'
import type { ScopeLine } from './scope-line.ts'
import { scopeSchema } from './scope-record.ts'

const sheet = {
  covering: { class: 'concrete-tile' as const, exposureIn: 13.5, coverWidthIn: 12, wastePercent: 10 },
}
const scopeOf = (given: Parameters<typeof scopeSchema.parse>[0] = {}) => scopeSchema.parse(given)
const house = () => ({ job: aJob({ sheet }), facets: hipHouse(), findings: [] })
const shown = (lines: readonly ScopeLine[]) =>
  Object.fromEntries(lines.map(({ key, quantity }) => [key, quantity === null ? null : decimalText(quantity)]))
const find = (lines: readonly ScopeLine[], key: string) => {
  const line = lines.find((one) => one.key === key)
  if (line === undefined) throw new Error(`There is no line ${key}.`)
  return line
}

describe('the replacement of a hip roof, 60 ft by 40 ft at 5:12', () => {
  it('has the areas and lengths of handbook slope tables: 26.00 squares, ridge 20, hips 117.9454, eave 200 ft', () => {
    const { replacement } = buildScope(house(), scopeOf())
    expect(shown(replacement)).toEqual({
      'tear-off': '26.00',
      underlayment: '26.00',
      covering: '26.00',
      ridge: '20.0',
      hip: '117.9',
      eave: '200.0',
      disposal: '12.35',
      'covering-waste': '2.60',
    })
  })

  it('orders 2,312 tiles of 13.5 in by 12 in, and 2,543 with 10 % (14400 / (E x W), rounded up)', () => {
    const { replacement } = buildScope(house(), scopeOf())
    expect(find(replacement, 'covering').toOrder).toBe('2,312 tiles, without the allowance for waste')
    expect(find(replacement, 'covering-waste').toOrder).toBe('2,543 tiles, measured and allowance together')
  })

  it('weighs what is carted away by the stated weight: 26 squares of 933.33 lb are 12.13 short tons', () => {
    const stated = { weightLbPerSquare: '933.33', weightSource: 'a tile weighed on site' }
    const line = find(buildScope(house(), scopeOf({ stated })).replacement, 'disposal')
    expect(line.quantity && decimalText(line.quantity)).toBe('12.13')
    expect([line.assumptions, line.notes[0]]).toEqual([[], 'Weight stated: a tile weighed on site.'])
  })

  it('labels a weight that nobody stated as an assumption without a source', () => {
    const line = find(buildScope(house(), scopeOf()).replacement, 'disposal')
    expect(line.assumptions[0]).toBe('A weight of 950 lb a square: common practice, no source.')
  })

  it('asks for the weight where the covering has no usual one', () => {
    const job = aJob({ sheet: { covering: { ...sheet.covering, class: 'not-stated' } } })
    const line = find(buildScope({ ...house(), job }, scopeOf()).replacement, 'disposal')
    expect([line.quantity, line.missing]).toEqual([null, 'State the weight of the covering, pounds a square.'])
  })

  it('never mixes waste into a measured quantity, and has no allowance that nobody chose', () => {
    const job = aJob({ sheet: { covering: { ...sheet.covering, wastePercent: null } } })
    const plain = shown(buildScope({ ...house(), job }, scopeOf()).replacement)
    const { 'covering-waste': allowance, ...rest } = shown(buildScope(house(), scopeOf()).replacement)
    expect(allowance).toBe('2.60')
    expect(plain).toEqual(rest)
  })

  it('traces each edge to its facets and each area to its facets', () => {
    const { replacement } = buildScope(house(), scopeOf())
    expect(find(replacement, 'ridge').traces.edges).toEqual([
      { kind: 'ridge', facetIds: ['hip-A', 'hip-C'], trueLengthFt: expect.closeTo(20, 6) },
    ])
    expect(find(replacement, 'covering').traces.facetIds).toEqual(['hip-A', 'hip-B', 'hip-C', 'hip-D'])
  })

  it('takes the chosen facets only, and says where an edge is shared with one outside', () => {
    const { replacement } = buildScope(house(), scopeOf({ facets: { replacement: ['hip-B'] } }))
    // The end triangle of 433.3333 sq ft and its two hips of 29.4863 ft (slope factor tables).
    expect(shown(replacement)).toMatchObject({ covering: '4.33', hip: '59.0', eave: '40.0' })
    expect(find(replacement, 'hip').notes).toContain('Edges shared with a facet outside this bid are in it whole.')
  })

  it('says beside the quantity which slopes were not looked at in whole', () => {
    const facets = hipHouse({ inspected: { percent: 30 } })
    expect(find(buildScope({ ...house(), facets }, scopeOf()).replacement, 'covering').notes[0]).toBe(
      'Measured on the plan. Looked at less than whole: A 30 %, B 30 %, C 30 %, D 30 %.',
    )
  })

  it('follows what is stated: fasteners, battens, and mortar where the sheet speaks of it', () => {
    const job = aJob({ sheet: { covering: { ...sheet.covering, fastening: 'Caps in mortar.' } } })
    const stated = { fastenersPerPiece: 2, battens: 'laid' }
    const lines = buildScope({ ...house(), job }, scopeOf({ stated })).replacement
    // 2,600 sq ft x 12 / 13.5 in between rows; 2,312 tiles x 2; 20.0 + 117.9 ft of caps.
    expect(shown(lines)).toMatchObject({ battens: '2311.1', fasteners: '4624', 'mortar-caps': '137.9' })
    expect(find(lines, 'mortar-caps').assumptions).toEqual(['The job sheet says of the fastening: "Caps in mortar."'])
  })
})

describe('the repair', () => {
  const repairOf = (findings: ReturnType<typeof aFinding>[], scope = scopeOf()) =>
    buildScope({ ...house(), findings }, scope).repair

  it('adds exact counts of the same work only, and names their findings', () => {
    const findings = [
      aFinding({ condition: 'missing', extent: { kind: 'exactly', count: 2 }, facetId: 'hip-A' }),
      aFinding({ condition: 'crack-to-fastener', extent: { kind: 'exactly', count: 3 }, facetId: 'hip-A' }),
      aFinding({ condition: 'slipped', extent: { kind: 'exactly', count: 4 }, facetId: 'hip-B' }),
    ]
    const lines = repairOf(findings)
    expect(shown(lines)).toMatchObject({ 'replace-field-tile': '5', 'set-again-field-tile': '4' })
    expect(find(lines, 'replace-field-tile').traces.findingIds).toEqual([findings[0]?.id, findings[1]?.id])
    expect(find(lines, 'replace-field-tile').assumptions.join(' ')).toContain('are taken as different pieces')
  })

  it('never makes a number of "several" or "examples": the line says to count first', () => {
    const lines = repairOf([
      aFinding({ number: 41, condition: 'missing', extent: { kind: 'several' } }),
      aFinding({ number: 42, condition: 'missing', extent: { kind: 'examples' } }),
    ])
    expect(find(lines, 'replace-field-tile-uncounted')).toMatchObject({
      quantity: null,
      missing: 'Count first: F-41, F-42 give no count.',
    })
  })

  it('keeps "at least" and "about" apart from exact counts', () => {
    const lines = repairOf([
      aFinding({ condition: 'missing', extent: { kind: 'exactly', count: 2 } }),
      aFinding({ condition: 'missing', extent: { kind: 'at-least', count: 3 } }),
    ])
    expect(shown(lines)).toMatchObject({ 'replace-field-tile': '2', 'replace-field-tile-stated': '3' })
  })

  it('takes the whole tile in hand for a broken side lock', () => {
    const lines = repairOf([
      aFinding({ number: 9, component: 'sidelap', condition: 'lock-broken', extent: { kind: 'exactly', count: 3 } }),
    ])
    expect(find(lines, 'replace-field-tile').assumptions).toContain(
      'F-9: the whole field tile is taken in hand for its part.',
    )
  })

  it('uses stated lengths and areas, and the plan for a whole facet', () => {
    const lines = repairOf([
      aFinding({
        component: 'underlayment',
        condition: 'underlayment-exposed',
        extent: { kind: 'area', areaSqFt: 2.3 },
      }),
      aFinding({
        component: 'underlayment',
        condition: 'underlayment-exposed',
        extent: { kind: 'whole-facet' },
        facetId: 'hip-B',
      }),
      aFinding({ component: 'flashing', condition: 'flashing-deformed', extent: { kind: 'length', lengthFt: 14 } }),
    ])
    // 2.3 + 433.3333 sq ft.
    expect(shown(lines)).toMatchObject({ 'replace-underlayment-area': '435.6', 'replace-flashing-ft': '14.0' })
  })

  it('weighs replaced pieces and rounds their allowance up to whole ones, apart', () => {
    const lines = repairOf([aFinding({ condition: 'missing', extent: { kind: 'exactly', count: 12 } })])
    // 12 / 88.89 a square x 950 lb / 2,000 = 0.064; 10 % of 12 is 1.2.
    expect(shown(lines)).toMatchObject({ 'replace-field-tile': '12', disposal: '0.06', 'waste-field-tile': '2' })
  })

  it('makes no line of what is sound, worn or installed otherwise, and says so', () => {
    const sound = aFinding({ kind: 'sound', condition: 'sound' })
    const wear = aFinding({ kind: 'wear', condition: 'cap-mortar-cracked', extent: { kind: 'length', lengthFt: 14 } })
    const other = aFinding({ condition: 'other', extent: { kind: 'exactly', count: 1 } })
    const built = buildScope({ ...house(), findings: [sound, wear, other] }, scopeOf())
    expect(built.repair).toEqual([])
    expect(built.apart).toEqual([
      { finding: wear, why: 'not a finding of damage' },
      { finding: other, why: 'no work follows from this condition by rule' },
    ])
  })

  it('leaves out findings on facets that the repair is not for, and says so', () => {
    const here = aFinding({ condition: 'missing', extent: { kind: 'exactly', count: 2 }, facetId: 'hip-A' })
    const there = aFinding({ condition: 'missing', extent: { kind: 'exactly', count: 9 }, facetId: 'hip-C' })
    const built = buildScope({ ...house(), findings: [here, there] }, scopeOf({ facets: { repair: ['hip-A'] } }))
    expect(shown(built.repair)).toMatchObject({ 'replace-field-tile': '2' })
    expect(built.apart).toEqual([{ finding: there, why: 'on no facet of the repair' }])
  })
})

describe('what a person changes', () => {
  it('stands beside the computed quantity, and what follows from the line follows from it', () => {
    const changes = [
      { bid: 'replacement', key: 'tear-off', byHand: { quantity: '27', why: 'two layers at the porch' } },
    ]
    const { replacement } = buildScope(house(), scopeOf({ changes }))
    const line = find(replacement, 'tear-off')
    expect(line.computed && decimalText(line.computed)).toBe('26.00')
    expect(line.quantity && decimalText(line.quantity)).toBe('27')
    expect(line.byHand).toEqual({ why: 'two layers at the porch' })
    // 27 squares x 950 lb / 2,000 = 12.825, a half away from zero.
    expect(shown(replacement)['disposal']).toBe('12.83')
  })

  it('leaves a line out with its reason, and with it what follows from it', () => {
    const changes = [{ bid: 'replacement', key: 'tear-off', leftOutBecause: 'Laid over.' }]
    const { replacement } = buildScope(house(), scopeOf({ changes }))
    expect(find(replacement, 'tear-off').leftOutBecause).toBe('Laid over.')
    expect(shown(replacement)).not.toHaveProperty('disposal')
  })

  it('adds a line to one bid or both, side by side', () => {
    const own = [{ id: 'x', words: 'Permit', unit: 'job', repair: '1', replacement: '1', source: 'city fee list' }]
    const row = buildScope(house(), scopeOf({ own })).rows.find(({ key }) => key === 'own-x')
    expect(row).toMatchObject({
      repair: { isOwn: true },
      replacement: { working: 'Added by hand. Source: city fee list' },
    })
  })
})

describe('words that the scope makes', () => {
  it('stay within a contractor’s part, for every condition and extent', () => {
    const extents = [
      { kind: 'exactly', count: 2 },
      { kind: 'about', count: 2 },
      { kind: 'several' },
      { kind: 'length', lengthFt: 3 },
      { kind: 'area', areaSqFt: 3 },
    ] as const
    const findings = conditionKeySchema.options.flatMap((condition) =>
      extents.map((extent) => aFinding({ condition, extent, facetId: 'hip-A' })),
    )
    const stated = { fastenersPerPiece: 2, battens: 'laid', setting: 'foam' }
    const built = buildScope({ ...house(), findings }, scopeOf({ stated }))
    const texts = [...built.repair, ...built.replacement].flatMap(({ words, working, assumptions, notes, missing }) => [
      words,
      working,
      missing ?? '',
      ...assumptions,
      ...notes,
    ])
    expect(built.repair.length).toBeGreaterThan(8)
    expect(texts.flatMap(wordingFlags)).toEqual([])
    expect(texts.filter((text) => /\b(?:covered|owed|claim amount|must be replaced)\b/i.test(text))).toEqual([])
  })
})
