import type { FacetId, FindingId } from '../job/ids.ts'
import type { EdgeKind } from '../roof/plan-drawing.ts'
import { readDecimal, type Decimal } from './decimal.ts'
import type { Bid, LineChange } from './scope-record.ts'
import type { ScopeUnit } from './units.ts'

/** Kinds of work, in the order in which a scope lists them. */
export const lineGroups = [
  'pieces',
  'removal',
  'covering',
  'edges',
  'openings',
  'setting',
  'disposal',
  'allowance',
  'own',
] as const
export type LineGroup = (typeof lineGroups)[number]

export const lineGroupLabels = {
  pieces: 'Work on what was found',
  removal: 'Taking off',
  covering: 'Covering',
  edges: 'Edges',
  openings: 'Pipes and other openings',
  setting: 'Setting and fastening',
  disposal: 'Carting away',
  allowance: 'Allowance for waste, apart',
  own: 'Added by hand',
} as const satisfies Record<LineGroup, string>

/** A stretch of edge that a quantity was measured on. */
export interface TracedEdge {
  readonly kind: EdgeKind
  readonly facetIds: readonly FacetId[]
  readonly trueLengthFt: number
}

/** What a quantity comes from. */
export interface Traces {
  readonly findingIds: readonly FindingId[]
  readonly facetIds: readonly FacetId[]
  readonly edges: readonly TracedEdge[]
}

/** One line as it follows by rule, before anything that a person changed. */
export interface RuledLine {
  /** The same for the same work, in both bids and from day to day: prices and changes hang on it. */
  readonly key: string
  readonly group: LineGroup
  readonly words: string
  readonly unit: ScopeUnit
  /** As printed; null where it can't be known yet, and then `missing` says why. */
  readonly quantity: Decimal | null
  readonly missing: string | null
  /** Whole units to order, where they differ from what is measured: "2,312 tiles". */
  readonly toOrder: string | null
  /** Formula with its inputs. */
  readonly working: string
  readonly traces: Traces
  /** What was taken for granted, each in a sentence. */
  readonly assumptions: readonly string[]
  /** What a reader should know beside it: what was stated, by whom, and what is not in it. */
  readonly notes: readonly string[]
}

/** A line of a bid with what a person changed of it. */
export interface ScopeLine extends RuledLine {
  readonly bid: Bid
  /** What the rule gives; beside `quantity`, which is the person's where they set one. */
  readonly computed: Decimal | null
  readonly byHand: { readonly why: string } | null
  readonly leftOutBecause: string | null
  readonly isOwn: boolean
}

export const NO_TRACES: Traces = { findingIds: [], facetIds: [], edges: [] }

/** A ruled line in a bid, with the change that a person made. */
export function changedLine(line: RuledLine, bid: Bid, change: LineChange | undefined): ScopeLine {
  const { byHand = null, leftOutBecause = null } = change ?? {}
  const own = { bid, computed: line.quantity, leftOutBecause, isOwn: false }
  if (byHand === null) return { ...line, ...own, byHand: null }
  return {
    ...line,
    ...own,
    quantity: readDecimal(byHand.quantity),
    missing: null,
    toOrder: null,
    byHand: { why: byHand.why },
  }
}

/** Records of several traces, each once. */
export function joinedTraces(all: readonly Traces[]): Traces {
  return {
    findingIds: [...new Set(all.flatMap(({ findingIds }) => findingIds))],
    facetIds: [...new Set(all.flatMap(({ facetIds }) => facetIds))],
    edges: all.flatMap(({ edges }) => edges),
  }
}
