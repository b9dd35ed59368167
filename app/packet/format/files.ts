import { groupedNumber } from '../../evidence/catalog/grouped-number.ts'

/** The first 12 hex digits of a digest: enough to tell files of a job apart, short enough to read out. */
export function shortHash(sha256: string): string {
  return sha256.slice(0, 12)
}

/** Bytes exactly, thousands grouped. */
export function bytesFigure(bytes: number): string {
  return groupedNumber(bytes, 0)
}
