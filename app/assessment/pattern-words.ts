import { findingLabel } from '../evidence/finding.ts'
import type { MultinomialTest } from './multinomial-test.ts'
import type { Pattern, PatternGroup } from './pattern.ts'

type Compared = Extract<Pattern<string>, { kind: 'compared' }>

/** With fewer findings no spread is called even or uneven. */
const LEAST_FINDINGS = 5
/** Below this p-value a spread is called unlike area alone (common practice, no source). */
const UNUSUAL = 0.05

/**
 * What the comparison says, for a reader without statistics. It says no more than the numbers: that the spread
 * is unlike the area looked at, that it can't be told from chance, or that there are too few. It never names a cause.
 *
 * @param labels what groups are called
 */
export function patternSentence<Key extends string>(
  pattern: Extract<Pattern<Key>, { kind: 'compared' }>,
  labels: Readonly<Record<Key, string>>,
): string {
  const { findings, test, groups } = pattern
  if (findings === 0) return 'No finding of damage has a place in this comparison.'
  if (test === null) return 'Only one of these parts was looked at, so there is nothing to compare.'
  if (findings < LEAST_FINDINGS) {
    return `${countWords(findings)}: too few to say whether they lie unlike the area that was looked at.`
  }
  const often = `chance alone gives a spread at least this uneven ${oftenWords(test.p)}`
  if (test.p >= UNUSUAL) {
    return `The spread of ${countWords(findings)} can't be told from chance: ${often}.`
  }
  const more = groups
    .filter(({ findings: found, expected }) => found > expected)
    .toSorted((a, b) => (b.ratio ?? 0) - (a.ratio ?? 0))
    .map(
      (group) =>
        `${labels[group.key].toLowerCase()} (${group.findings} observed, ${group.expected.toFixed(1)} expected)`,
    )
  return `More of the ${countWords(findings)} lie here than the area looked at would have it: ${more.join('; ')}. If each fell by area alone and by itself, ${often}.`
}

/** "in about 1 of 40 cases", "in less than 1 of 1,000 cases", "in about 63 of 100 cases". */
function oftenWords(p: number): string {
  if (p < 0.001) return 'in less than 1 of 1,000 cases'
  if (p < 0.1) return `in about 1 of ${Math.round(1 / p)} cases`
  return `in about ${Math.round(100 * p)} of 100 cases`
}

/** What the figures assume and don't show; stands wherever a pattern is shown. */
export const PATTERN_CAUTIONS = [
  'The test takes every finding as independent of the others. Findings on one facet are not: what loosens one tile often loosens its neighbour, so the spread is less unusual than the figure says.',
  'Counted tiles have no test of their own: those of one finding are not separate observations.',
  'Expected figures take the part of a facet that was looked at as spread evenly over its zones. An inspector who looks more closely where damage is expected finds more there.',
  'More findings at edges, corners and ridges are consistent with wind, and also consistent with age of mortar and fasteners, with foot traffic and with debris. Cause not determined by this survey.',
] as const

/** A group's figures in one line: "Edge: 14 observed; 412.0 of 1,650.0 sq ft looked at, 6.2 expected; ratio 2.3". */
export function groupWorking(label: string, group: PatternGroup<string>, pattern: Compared): string {
  const whole = pattern.groups.reduce((sum, { lookedAtSqFt }) => sum + lookedAtSqFt, 0)
  const area = `${group.lookedAtSqFt.toFixed(1)} of ${whole.toFixed(1)} sq ft looked at`
  return `${label}: ${pattern.findings} findings × ${area} = ${group.expected.toFixed(2)} expected; ${group.findings} observed; ratio ${ratioWords(group.ratio)}.`
}

/** "2.3", or a dash where none was expected. */
export function ratioWords(ratio: number | null): string {
  return ratio === null ? '-' : ratio.toFixed(1)
}

/** Method of the test with all that is needed to make it again. */
export function testWorking(test: MultinomialTest | null): string {
  if (test === null) return 'No test: it needs findings, and at least two parts that were looked at.'
  const p = test.p < 0.0001 ? 'p under 0.0001' : `p = ${test.p.toFixed(4)}`
  return test.method === 'exact'
    ? `Exact multinomial test over ${whole(test.outcomes)} outcomes: ${p}.`
    : `Multinomial test by Monte Carlo, ${whole(test.draws)} draws, seed ${test.seed} (xorshift, 32 bits): ${p}.`
}

/** Findings that are in no group, and why; null without any. */
export function apartSentence({ apart }: Compared): string | null {
  if (apart.length === 0) return null
  const names = apart.map(({ number }) => findingLabel(number)).join(', ')
  return `Left out, since their place is not known closely enough: ${names}.`
}

function whole(count: number): string {
  return String(count).replace(/\B(?=(\d{3})+$)/g, ',')
}

function countWords(findings: number): string {
  return findings === 1 ? '1 finding of damage' : `${findings} findings of damage`
}
