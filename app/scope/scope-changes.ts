import type { Bid, LineChange, Scope } from './scope-record.ts'

/** Changes with one line's change laid over; a change that says nothing any more is dropped. */
export function withLineChange(
  changes: Scope['changes'],
  { bid, key }: { readonly bid: Bid; readonly key: string },
  set: Partial<Pick<LineChange, 'byHand' | 'leftOutBecause'>>,
): LineChange[] {
  const isThis = (one: LineChange) => one.bid === bid && one.key === key
  const before = changes.find(isThis) ?? { bid, key, byHand: null, leftOutBecause: null }
  const after = { ...before, ...set }
  const rest = changes.filter((one) => !isThis(one))
  return after.byHand === null && after.leftOutBecause === null ? rest : [...rest, after]
}

/** Links with one line's link set: to a code, to none (null), or left to the line's own key (`by-key`). */
export function withLink(
  links: Scope['links'],
  key: string,
  to: { readonly code: string | null } | 'by-key',
): Scope['links'] {
  const rest = links.filter((one) => one.key !== key)
  return to === 'by-key' ? rest : [...rest, { key, code: to.code }]
}
