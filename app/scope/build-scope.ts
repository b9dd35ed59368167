import type { Finding } from '../evidence/finding.ts'
import { readDecimal } from './decimal.ts'
import { derivedOfRepair, derivedOfReplacement } from './derived-lines.ts'
import { repairLines, withoutWork } from './repair-lines.ts'
import { replacementLines } from './replacement-lines.ts'
import { scopeFacts, type ScopeSource } from './scope-facts.ts'
import { changedLine, lineGroups, NO_TRACES, type RuledLine, type ScopeLine } from './scope-line.ts'
import type { Bid, OwnLine, Scope } from './scope-record.ts'

/** The same work in both bids, side by side; null where a bid does not have it. */
export interface ScopeRow {
  readonly key: string
  readonly repair: ScopeLine | null
  readonly replacement: ScopeLine | null
}

/** Both bids of a job, line by line. */
export interface BuiltScope {
  readonly repair: readonly ScopeLine[]
  readonly replacement: readonly ScopeLine[]
  readonly rows: readonly ScopeRow[]
  /** Findings that made no line of the repair, and why. */
  readonly apart: readonly { readonly finding: Finding; readonly why: string }[]
}

/**
 * Works both bids out from plan and findings, with what a person changed: lines measured or counted first, then those that
 * follow from them as they stand. Pure: the same records give the same lines.
 */
export function buildScope(source: ScopeSource, scope: Scope): BuiltScope {
  const repairFacts = scopeFacts(source, scope, 'repair')
  const replacementFacts = scopeFacts(source, scope, 'replacement')
  const repair = bidOf(scope, 'repair', {
    measured: repairLines(repairFacts),
    derive: (lines) => derivedOfRepair(lines, repairFacts),
  })
  const replacement = bidOf(scope, 'replacement', {
    measured: replacementLines(replacementFacts, source.facets),
    derive: (lines) => derivedOfReplacement(lines, replacementFacts),
  })
  const outside = source.findings.filter(
    (finding) => finding.kind === 'damage' && !repairFacts.findings.some(({ id }) => id === finding.id),
  )
  return {
    repair,
    replacement,
    rows: sideBySide(repair, replacement),
    apart: [
      ...withoutWork(repairFacts.findings),
      ...outside.map((finding) => ({ finding, why: 'on no facet of the repair' })),
    ],
  }
}

function bidOf(
  scope: Scope,
  bid: Bid,
  rules: {
    readonly measured: readonly RuledLine[]
    readonly derive: (lines: readonly ScopeLine[]) => readonly RuledLine[]
  },
): readonly ScopeLine[] {
  const change = (line: RuledLine) =>
    changedLine(
      line,
      bid,
      scope.changes.find((one) => one.bid === bid && one.key === line.key),
    )
  const measured = rules.measured.map(change)
  const lines = [...measured, ...rules.derive(measured).map(change), ...scope.own.flatMap((line) => ownLine(line, bid))]
  return lines.toSorted((a, b) => lineGroups.indexOf(a.group) - lineGroups.indexOf(b.group))
}

function ownLine({ id, words, unit, source, ...quantities }: OwnLine, bid: Bid): readonly ScopeLine[] {
  const quantity = quantities[bid]
  if (quantity === null) return []
  return [
    {
      key: ownKey(id),
      bid,
      group: 'own',
      words,
      unit,
      quantity: readDecimal(quantity),
      computed: null,
      missing: null,
      toOrder: null,
      working: `Added by hand. Source: ${source}`,
      traces: NO_TRACES,
      assumptions: [],
      notes: [],
      byHand: null,
      leftOutBecause: null,
      isOwn: true,
    },
  ]
}

/** The key of a line that a person added; prices hang on it as on any other. */
export function ownKey(id: string): string {
  return `own-${id}`
}

function sideBySide(repair: readonly ScopeLine[], replacement: readonly ScopeLine[]): readonly ScopeRow[] {
  const all = [...repair, ...replacement].toSorted((a, b) => lineGroups.indexOf(a.group) - lineGroups.indexOf(b.group))
  return [...new Set(all.map(({ key }) => key))].map((key) => ({
    key,
    repair: repair.find((line) => line.key === key) ?? null,
    replacement: replacement.find((line) => line.key === key) ?? null,
  }))
}
