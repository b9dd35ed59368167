// oxlint-disable-next-line typescript/triple-slash-reference -- the library has no types, and every layer that compiles this file needs ours
/// <reference path="./jstat.d.ts" />
import jstat from 'jstat'

/** Bounds of a share, 0 to 1. */
export interface Interval {
  readonly low: number
  readonly high: number
}

/** Two-sided 95 % point of the normal distribution. */
const Z95 = 1.959963985
const TAIL = 0.025

/** Wilson score interval without continuity correction, 95 % (E. B. Wilson 1927; method 3 of Newcombe 1998). `of` is at least 1. */
export function wilsonInterval(found: number, of: number): Interval {
  const share = found / of
  const z2 = Z95 ** 2
  const middle = (share + z2 / (2 * of)) / (1 + z2 / of)
  const half = (Z95 / (1 + z2 / of)) * Math.sqrt((share * (1 - share)) / of + z2 / (4 * of ** 2))
  // With none or all found the bound is 0 or 1 itself, which rounding in binary may miss.
  return { low: found === 0 ? 0 : Math.max(0, middle - half), high: found === of ? 1 : Math.min(1, middle + half) }
}

/** Exact interval of Clopper and Pearson (1934), 95 %, by quantiles of the beta distribution. `of` is at least 1. */
export function exactInterval(found: number, of: number): Interval {
  return {
    low: found === 0 ? 0 : jstat.beta.inv(TAIL, found, of - found + 1),
    high: found === of ? 1 : jstat.beta.inv(1 - TAIL, found + 1, of - found),
  }
}
