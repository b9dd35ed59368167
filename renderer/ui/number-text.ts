/** A typed number, or what is wrong with it. Empty text is null: not stated. */
export type TypedNumber =
  | { readonly ok: true; readonly value: number | null }
  | { readonly ok: false; readonly error: string }

/** Reads a number as people type it: `13`, `13.5`, `13,5`, ` 1 200 `, `-4`, and the fractions `3/4` and `1 1/2`. */
export function readNumber(text: string, limits: { readonly min?: number; readonly max?: number } = {}): TypedNumber {
  const trimmed = text.trim()
  if (trimmed === '') return { ok: true, value: null }
  const value = fraction(trimmed) ?? decimal(trimmed)
  if (value === null) return { ok: false, error: `"${trimmed}" is not a number.` }
  if (limits.min !== undefined && value < limits.min) return { ok: false, error: `The least is ${limits.min}.` }
  if (limits.max !== undefined && value > limits.max) return { ok: false, error: `The most is ${limits.max}.` }
  return { ok: true, value }
}

/** A number as text that `readNumber` reads back as the same number; empty for null. */
export function numberText(value: number | null): string {
  return value === null ? '' : String(value)
}

function fraction(text: string): number | null {
  const match = /^(-?)(?:(\d+)\s+)?(\d+)\/(\d+)$/.exec(text)
  if (match === null) return null
  const bottom = Number(match[4])
  if (bottom === 0) return null
  const size = Number(match[2] ?? 0) + Number(match[3]) / bottom
  return match[1] === '-' ? -size : size
}

function decimal(text: string): number | null {
  const plain = text
    .replace('−', '-')
    .replace(/\s/g, '')
    .replace(/^(-?\d*),(\d+)$/, '$1.$2')
  if (!/^-?(\d+\.?\d*|\.\d+)$/.test(plain)) return null
  return Number(plain)
}
