import { wordingRules, type WordingRule } from './wording-rules.ts'

/** Words in free text that are outside a contractor's part, and what could be said instead. */
export interface WordingFlag {
  /** The words as they stand in the text. */
  readonly matched: string
  /** Where they begin in the text, in characters. */
  readonly at: number
  readonly why: string
  readonly instead: string
}

/**
 * Finds wording that reads a policy, speaks of coverage or of what is owed, promises an outcome, demands payment, or
 * states a cause or a verdict as a fact. It points out; it never rewrites.
 *
 * @returns flags in the order of the text, none overlapping
 */
export function wordingFlags(text: string): readonly WordingFlag[] {
  const plain = text.replace(/[\u2018\u2019\u02bc]/g, "'")
  const flags = wordingRules
    .flatMap((rule) => rule.patterns.flatMap((pattern) => matchesOf(plain, pattern, rule)))
    .sort((a, b) => a.at - b.at || b.matched.length - a.matched.length)
  const kept: WordingFlag[] = []
  for (const flag of flags) {
    const last = kept.at(-1)
    if (last === undefined || flag.at >= last.at + last.matched.length) kept.push(flag)
  }
  return kept.map((flag) => ({ ...flag, matched: text.slice(flag.at, flag.at + flag.matched.length) }))
}

function matchesOf(text: string, pattern: RegExp, rule: WordingRule): WordingFlag[] {
  return [...text.matchAll(pattern)].map((match) => ({
    matched: match[0],
    at: match.index,
    why: rule.why,
    instead: rule.instead,
  }))
}
