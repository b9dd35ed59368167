import { ownKey } from '../../app/scope/build-scope.ts'
import type { ScopeLine } from '../../app/scope/scope-line.ts'
import type { OwnLine } from '../../app/scope/scope-record.ts'

/** Added lines with one bid's quantity of one of them set; null takes the line out of that bid. */
export function withOwnQuantity(
  own: readonly OwnLine[],
  { key, bid }: Pick<ScopeLine, 'key' | 'bid'>,
  quantity: string | null,
): OwnLine[] {
  return own.map((line) => (ownKey(line.id) === key ? { ...line, [bid]: quantity } : line))
}

/** The added line behind a line of a bid. */
export function ownLineOf(own: readonly OwnLine[], key: string): OwnLine | null {
  return own.find(({ id }) => ownKey(id) === key) ?? null
}
