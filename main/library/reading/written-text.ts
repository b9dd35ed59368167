const MAX_LENGTH = 120

/**
 * A tag's text as it is kept beside a record or shown in a sentence: as written, but on one line of bounded length and
 * without control characters, which damaged files are full of.
 */
export function asWritten(value: string | readonly number[]): string {
  const text = (typeof value === 'string' ? value : value.join(', ')).replace(/\p{Cc}/gu, '\ufffd')
  return text.length > MAX_LENGTH ? `${text.slice(0, MAX_LENGTH)} ...` : text
}
