import { z } from 'zod'

/** Units that lines of a scope and prices are in. */
export const scopeUnitSchema = z.enum(['square', 'sq-ft', 'ft', 'each', 'short-ton', 'lb', 'hour', 'day', 'job'])
export type ScopeUnit = z.output<typeof scopeUnitSchema>

interface UnitEntry {
  /** After a figure and after "per". */
  readonly words: string
  readonly per: string
  /** Places that a computed quantity is rounded to, once. */
  readonly places: number
  /** How price books may write it, in small letters without dots. */
  readonly written: readonly string[]
}

/** Every unit with its words and the rule of rounding. */
export const scopeUnits = {
  square: { words: 'squares', per: 'square', places: 2, written: ['square', 'squares', 'sq', 'sqs', 'roof square'] },
  'sq-ft': {
    words: 'sq ft',
    per: 'sq ft',
    places: 1,
    written: ['sq ft', 'sqft', 'sf', 'ft2', 'ft²', 'square foot', 'square feet'],
  },
  ft: {
    words: 'ft',
    per: 'ft',
    places: 1,
    written: ['ft', 'foot', 'feet', 'lf', 'lin ft', 'linear ft', 'linear foot', 'linear feet'],
  },
  each: { words: 'each', per: 'piece', places: 0, written: ['each', 'ea', 'piece', 'pieces', 'pc', 'pcs', 'count'] },
  'short-ton': {
    words: 'short tons',
    per: 'short ton',
    places: 2,
    written: ['short ton', 'short tons', 'ton', 'tons'],
  },
  lb: { words: 'lb', per: 'lb', places: 0, written: ['lb', 'lbs', 'pound', 'pounds'] },
  hour: { words: 'hours', per: 'hour', places: 2, written: ['hour', 'hours', 'h', 'hr', 'hrs'] },
  day: { words: 'days', per: 'day', places: 2, written: ['day', 'days'] },
  job: { words: 'for the job', per: 'job', places: 0, written: ['job', 'lump sum', 'flat'] },
} as const satisfies Record<ScopeUnit, UnitEntry>

/** The unit that a price book means, or null where it is none of ours. */
export function readUnit(text: string): ScopeUnit | null {
  const word = text
    .toLowerCase()
    .replaceAll('.', '')
    .replaceAll(/[\s_-]+/g, ' ')
    .trim()
  return scopeUnitSchema.options.find((unit) => readings(unit).includes(word)) ?? null
}

function readings(unit: ScopeUnit): readonly string[] {
  return scopeUnits[unit].written
}

/** How quantities are rounded, in a sentence for screens and packets. */
export const roundingRuleWords =
  'Quantities are rounded once: squares and short tons to 0.01, square feet and feet to 0.1, pounds and counts to whole ones. Whole units to order are rounded up and stand beside the measured quantity. The allowance for waste is a line of its own and is never mixed in.'
