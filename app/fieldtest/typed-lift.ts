import { readFigure } from './typed-figure.ts'

/** What a person typed for a lift. */
export type TypedLift =
  | { readonly kind: 'none' }
  /** `typed` is empty where inches were typed. */
  | { readonly kind: 'read'; readonly liftIn: number; readonly typed: string; readonly caution: string | null }
  | { readonly kind: 'refused'; readonly sentence: string }

/** Exact (NIST SP 811). */
const MM_PER_IN = 25.4
/** A nose that rises further is off its course; common practice, no source. */
const UNUSUAL_IN = 12
const MOST_IN = 48

const INCHES_PER_UNIT: Readonly<Record<string, number>> = {
  '': 1,
  in: 1,
  'in.': 1,
  '"': 1,
  '″': 1,
  inch: 1,
  inches: 1,
  mm: 1 / MM_PER_IN,
  cm: 10 / MM_PER_IN,
}

/** Reads a lift as people type it: "2 1/4", "2.25 in", "57 mm". A negative one is refused: a nose does not rise below its rest. */
export function readLift(text: string): TypedLift {
  const typed = text.trim()
  if (['', '-', 'n/a', 'not read'].includes(typed.toLowerCase())) return { kind: 'none' }
  const figure = readFigure(typed)
  if (figure === null)
    return { kind: 'refused', sentence: `"${typed}" is not a lift. Write inches, such as 2.25 or 2 1/4.` }
  const perUnit = INCHES_PER_UNIT[figure.unit]
  if (perUnit === undefined)
    return {
      kind: 'refused',
      sentence: `"${figure.unit}" is not a unit of lift. Write inches (in) or millimeters (mm).`,
    }
  const liftIn = figure.value * perUnit
  if (liftIn < 0)
    return { kind: 'refused', sentence: 'A lift cannot be negative. Write 0 where the nose did not rise.' }
  if (liftIn > MOST_IN)
    return {
      kind: 'refused',
      sentence: `${liftIn.toFixed(1)} in can't be the lift of one tile. Check the figure and its unit.`,
    }
  const caution =
    liftIn > UNUSUAL_IN
      ? `${liftIn.toFixed(1)} in is an unusual lift for one tile. Check the figure and its unit.`
      : null
  return { kind: 'read', liftIn, typed: perUnit === 1 ? '' : typed, caution }
}
