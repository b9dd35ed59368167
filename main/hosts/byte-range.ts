/** Bytes of a file that a request asks for, first and last counted in. */
export interface ByteRange {
  readonly first: number
  readonly last: number
}

/**
 * Reads a `Range` header of one range of bytes (RFC 9110 section 14.1.2). Null asks for the whole file: no header, or one
 * that a server may pass over, such as several ranges at once.
 *
 * @returns 'unsatisfiable' where the range lies outside the file
 */
export function readByteRange(
  header: string | null | undefined,
  sizeBytes: number,
): ByteRange | null | 'unsatisfiable' {
  const [, from = '', to = ''] = /^bytes=(\d{0,15})-(\d{0,15})$/.exec(header?.trim() ?? '') ?? []
  if (from === '' && to === '') return null
  if (from === '') {
    const length = Number(to)
    return length === 0 || sizeBytes === 0
      ? 'unsatisfiable'
      : { first: Math.max(0, sizeBytes - length), last: sizeBytes - 1 }
  }
  const first = Number(from)
  const last = to === '' ? sizeBytes - 1 : Math.min(Number(to), sizeBytes - 1)
  if (to !== '' && Number(to) < first) return null
  return first >= sizeBytes ? 'unsatisfiable' : { first, last }
}

/** The header that says which part of a file an answer holds, or that none could be given. */
export function contentRange(range: ByteRange | 'unsatisfiable', sizeBytes: number): string {
  return range === 'unsatisfiable' ? `bytes */${sizeBytes}` : `bytes ${range.first}-${range.last}/${sizeBytes}`
}
