import type { ComponentKey } from '../evidence/catalog/keys.ts'
import { findingLabel, type Finding } from '../evidence/finding.ts'
import type { FacetId } from '../job/ids.ts'
import type { Facet } from '../roof/facet.ts'
import { facetGeometry } from '../roof/facet-geometry.ts'
import { zonePieces } from '../roof/zones/edge-zones.ts'
import type { Zone } from '../roof/zones/edition.ts'
import type { JobZones } from '../roof/zones/job-zones.ts'
import { whyNoZones, zonesInOrder } from '../roof/zones/zone-words.ts'
import { multinomialTest, type MultinomialTest } from './multinomial-test.ts'
import { zoneOfFinding } from './zone-of-finding.ts'
import { windSide, windSides, type WindForSides, type WindSide } from './wind-side.ts'

/** Parts that are counted piece by piece and lie in a zone. */
const wholePieces: readonly ComponentKey[] = [
  'field-tile',
  'eave-tile',
  'rake-tile',
  'ridge-tile',
  'hip-tile',
  'shingle-field',
  'hip-ridge-shingle',
]

/** Observed against expected by the area that was looked at. */
export interface PatternGroup<Key extends string> {
  readonly key: Key
  /** Sloped area looked at. */
  readonly lookedAtSqFt: number
  readonly findings: number
  readonly expected: number
  /** Findings over those expected; null where none is expected. */
  readonly ratio: number | null
  /** Tiles counted exactly in those findings, and what their sum would have here by area. */
  readonly tiles: number
  readonly tilesExpected: number
}

/** Where findings lie against where they would by area alone; or why that can't be said. */
export type Pattern<Key extends string> =
  | { readonly kind: 'refused'; readonly sentences: readonly string[] }
  | {
      readonly kind: 'compared'
      readonly groups: readonly PatternGroup<Key>[]
      readonly findings: number
      /** Findings of damage whose group is not known; in no figure. */
      readonly apart: readonly Finding[]
      /** Null without findings, and where only one group was looked at. */
      readonly test: MultinomialTest | null
    }

export interface PatternRoof {
  readonly facets: readonly Facet[]
  readonly findings: readonly Finding[]
}

/** Damage by zone against the area of each zone that was looked at. A line or area lies where its largest share does. */
export function zonePattern({ facets, findings }: PatternRoof, zones: JobZones): Pattern<Zone> {
  const lacks = [...lacksOf(facets, findings), ...zoneLacks(zones)]
  if (lacks.length > 0 || zones.kind !== 'drawn') return { kind: 'refused', sentences: lacks }
  const percents = new Map<FacetId, number>(facets.map(({ id, inspected }) => [id, inspected.percent ?? 0]))
  const pieces = zonePieces(zones)
  const areaOf = (zone: Zone) =>
    pieces.reduce(
      (sum, { zone: own, areaSqFt, facetId }) =>
        own === zone ? sum + (areaSqFt * (percents.get(facetId) ?? 0)) / 100 : sum,
      0,
    )
  return compared(
    zonesInOrder,
    areaOf,
    damageBy(findings, (finding) => zoneOfFinding(finding, zones)),
  )
}

/** Damage by how the facet lies to the wind, against the area of each side that was looked at. Flat facets are left out. */
export function sidePattern({ facets, findings }: PatternRoof, wind: WindForSides): Pattern<WindSide> {
  const lacks = lacksOf(facets, findings)
  if (wind.kind === 'unknown') return { kind: 'refused', sentences: [...lacks, wind.sentence] }
  if (lacks.length > 0) return { kind: 'refused', sentences: lacks }
  const sides = new Map(facets.map((facet) => [facet.id, windSide(facet, wind.fromDeg)]))
  const areaOf = (side: WindSide) =>
    facets
      .filter(({ id }) => sides.get(id) === side)
      .reduce((sum, facet) => sum + (facetGeometry(facet).areaSqFt * (facet.inspected.percent ?? 0)) / 100, 0)
  const keyOf = ({ facetId }: Finding) => (facetId === null ? null : (sides.get(facetId) ?? null))
  return compared(windSides, areaOf, damageBy(findings, keyOf))
}

/** Facets by what was looked at and found, letters in order: the ones without findings tell as much as the others. */
export function facetsLookedAt({ facets, findings }: PatternRoof): {
  readonly withoutFindings: readonly Facet[]
  readonly notLookedAt: readonly Facet[]
  readonly notStated: readonly Facet[]
} {
  const found = new Set(findings.filter(({ kind }) => kind === 'damage').map(({ facetId }) => facetId))
  return {
    withoutFindings: facets.filter(({ id, inspected }) => (inspected.percent ?? 0) > 0 && !found.has(id)),
    notLookedAt: facets.filter(({ inspected }) => inspected.percent === 0),
    notStated: facets.filter(({ inspected }) => inspected.percent === null),
  }
}

function lacksOf(facets: readonly Facet[], findings: readonly Finding[]): readonly string[] {
  if (facets.length === 0) return ['Draw the roof plan: expectation follows from areas.']
  const { notStated, notLookedAt } = facetsLookedAt({ facets, findings })
  const letters = notStated.map(({ letter }) => letter).join(', ')
  const against = notLookedAt.flatMap(({ id, letter }) => {
    const own = findings.filter(({ kind, facetId }) => kind === 'damage' && facetId === id)
    if (own.length === 0) return []
    const names = own.map(({ number }) => findingLabel(number)).join(', ')
    return [
      `Facet ${letter} is stated as not looked at, but ${names} ${own.length === 1 ? 'lies' : 'lie'} on it. Correct one of them.`,
    ]
  })
  return [
    ...(notStated.length === 0
      ? []
      : [`State how much was looked at of facet ${letters}: without it, no finding and nobody looked are the same.`]),
    ...against,
  ]
}

function zoneLacks(zones: JobZones): readonly string[] {
  if (zones.kind !== 'drawn') return [whyNoZones(zones) ?? '']
  return zones.facets.flatMap((facet) => (facet.kind === 'refused' ? [facet.sentence] : []))
}

interface Damage<Key> {
  readonly placed: readonly { readonly key: Key; readonly tiles: number }[]
  readonly apart: readonly Finding[]
}

function damageBy<Key>(findings: readonly Finding[], keyOf: (finding: Finding) => Key | null): Damage<Key> {
  const keyed = findings.filter(({ kind }) => kind === 'damage').map((finding) => ({ finding, key: keyOf(finding) }))
  return {
    placed: keyed.flatMap(({ finding, key }) => (key === null ? [] : [{ key, tiles: tilesIn(finding) }])),
    apart: keyed.flatMap(({ finding, key }) => (key === null ? [finding] : [])),
  }
}

function tilesIn({ extent, component }: Finding): number {
  return extent.kind === 'exactly' && wholePieces.includes(component) ? extent.count : 0
}

function compared<Key extends string>(
  keys: readonly Key[],
  areaOf: (key: Key) => number,
  { placed, apart }: Damage<Key>,
): Pattern<Key> {
  const areas = keys.map((key) => ({ key, lookedAtSqFt: areaOf(key) }))
  const whole = areas.reduce((sum, { lookedAtSqFt }) => sum + lookedAtSqFt, 0)
  if (whole === 0) return { kind: 'refused', sentences: ['No area of the roof is stated as looked at.'] }
  const unseen = areas.filter(({ key, lookedAtSqFt }) => lookedAtSqFt === 0 && placed.some((one) => one.key === key))
  if (unseen.length > 0) {
    const names = unseen.map(({ key }) => key).join(', ')
    return {
      kind: 'refused',
      sentences: [`Findings lie where nothing is stated as looked at: ${names}. Correct one of them.`],
    }
  }
  const tilesInAll = placed.reduce((sum, { tiles }) => sum + tiles, 0)
  const groups = areas.map(({ key, lookedAtSqFt }): PatternGroup<Key> => {
    const own = placed.filter((one) => one.key === key)
    const share = lookedAtSqFt / whole
    const expected = placed.length * share
    return {
      key,
      lookedAtSqFt,
      findings: own.length,
      expected,
      ratio: expected === 0 ? null : own.length / expected,
      tiles: own.reduce((sum, { tiles }) => sum + tiles, 0),
      tilesExpected: tilesInAll * share,
    }
  })
  return { kind: 'compared', groups, findings: placed.length, apart, test: testOf(groups, whole) }
}

/** Groups of which nothing was looked at can't have a finding by expectation and stay out of the test. */
function testOf(groups: readonly PatternGroup<string>[], whole: number): MultinomialTest | null {
  const seen = groups.filter(({ lookedAtSqFt }) => lookedAtSqFt > 0)
  const observed = seen.map(({ findings }) => findings)
  if (seen.length < 2 || observed.every((count) => count === 0)) return null
  return multinomialTest(
    observed,
    seen.map(({ lookedAtSqFt }) => lookedAtSqFt / whole),
  )
}
