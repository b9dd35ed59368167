/** A figure as an archive writes it. `missing` is no figure at all, `nonsense` one that should have been. */
export type ReadNumber =
  | { readonly kind: 'value'; readonly value: number; readonly isSuspect: boolean }
  | { readonly kind: 'missing' }
  | { readonly kind: 'nonsense' }

const MISSING = new Set([
  '',
  'M',
  'NA',
  'N/A',
  'NULL',
  'NAN',
  '-',
  '--',
  '//',
  '///',
  'T',
  'MM',
  '-9999',
  '9999',
  '999.9',
])

/** Reads a speed or direction. A trailing s marks it as suspect; T, M and empty cells are missing, never zero. */
export function readNumber(written: string, hasDecimalComma: boolean): ReadNumber {
  const text = written.trim()
  if (MISSING.has(text.toUpperCase())) return { kind: 'missing' }
  const marked = /^(.*\d)\s*([sS*])$/.exec(text)
  const figure = marked?.[1] ?? text
  const dotted = hasDecimalComma ? figure.replace(',', '.') : figure
  if (!/^[+]?\d+(\.\d+)?$/.test(dotted)) return { kind: 'nonsense' }
  return { kind: 'value', value: Number(dotted), isSuspect: marked !== null }
}
