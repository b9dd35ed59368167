import type { Outcome, PullDirection, PullPoint, Reading } from './reading.ts'

/** What each point of pull is called. */
export const pullPointLabels = {
  'nose-middle': 'nose, middle',
  'nose-left': 'nose, left corner',
  'nose-right': 'nose, right corner',
  side: 'side',
  other: 'other, see note',
  'not-stated': 'not stated',
} as const satisfies Record<PullPoint, string>

/** What each direction of pull is called. */
export const pullDirectionLabels = {
  'square-to-slope': 'square to the slope',
  'straight-up': 'straight up',
  'not-stated': 'not stated',
} as const satisfies Record<PullDirection, string>

/** How a pull can end. */
export const outcomeLabels = {
  held: 'held',
  'came-loose': 'came loose',
  broke: 'tile broke',
  'not-stated': 'not stated',
} as const satisfies Record<Outcome, string>

/** "35 lbf", "34.8 lbf (typed 155 N)", "by hand, no force read", "not recorded". */
export function forceWords(reading: Pick<Reading, 'forceLbf' | 'forceTyped' | 'method'>): string {
  if (reading.forceLbf === null) return reading.method === 'by-hand' ? 'by hand, no force read' : 'not recorded'
  return `${figure(reading.forceLbf)} lbf${typed(reading.forceTyped)}`
}

/** "2.25 in", "2.24 in (typed 57 mm)", "not recorded". */
export function liftWords(reading: Pick<Reading, 'liftIn' | 'liftTyped'>): string {
  return reading.liftIn === null ? 'not recorded' : `${figure(reading.liftIn)} in${typed(reading.liftTyped)}`
}

/** A figure to two decimals at most. */
export function figure(value: number): string {
  return String(Math.round(value * 100) / 100)
}

function typed(text: string): string {
  return text === '' ? '' : ` (typed ${text})`
}
