import { decimalTextSchema } from './decimal.ts'

/** A figure that a person typed: the stored decimal, null for an empty field, or what is wrong with it. */
export type TypedDecimal =
  | { readonly ok: true; readonly text: string | null }
  | { readonly ok: false; readonly fault: string }

/** Reads "27", "1,234.5", ".5", "007"; thousands may be grouped by commas. */
export function typedDecimal(typed: string): TypedDecimal {
  const trimmed = typed.trim()
  if (trimmed === '') return { ok: true, text: null }
  const plain = /^\d{1,3}(?:,\d{3})+(?:\.\d*)?$/.test(trimmed) ? trimmed.replaceAll(',', '') : trimmed
  const text = plain
    .replace(/^\./, '0.')
    .replace(/^0+(?=\d)/, '')
    .replace(/\.$/, '')
  return decimalTextSchema.safeParse(text).success
    ? { ok: true, text }
    : { ok: false, fault: `"${trimmed}" is not a figure such as 27 or 1,234.5, 0 or more.` }
}
