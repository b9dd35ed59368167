import { z } from 'zod'

/** An exact decimal number that is not negative: `units` / 10 ^ `places`. Amounts never pass through binary fractions. */
export interface Decimal {
  readonly units: bigint
  readonly places: number
}

/** A decimal as it is stored: digits with a point, at most nine before it and four after it. */
export const decimalTextSchema = z
  .string()
  .regex(/^(?:0|[1-9]\d{0,8})(?:\.\d{1,4})?$/, 'A figure has at most nine digits before the point and four after it.')

export const ZERO: Decimal = { units: 0n, places: 0 }

/** Reads a stored decimal. The places that were written are kept: "2.50" has two. */
export function readDecimal(text: string): Decimal {
  const [whole = '0', fraction = ''] = text.split('.')
  return { units: BigInt(`${whole}${fraction}`), places: fraction.length }
}

/** A measured figure as it is printed, rounded once to `places`; from there on it is exact. */
export function printedDecimal(value: number, places: number): Decimal {
  return readDecimal(value.toFixed(places))
}

/** Digits with a point, without grouping: what is stored and written to tables. */
export function decimalText({ units, places }: Decimal): string {
  const digits = units.toString().padStart(places + 1, '0')
  return places === 0 ? digits : `${digits.slice(0, -places)}.${digits.slice(-places)}`
}

/** "12,345.60": thousands grouped, all places shown. */
export function decimalWords(decimal: Decimal): string {
  const [whole = '0', fraction] = decimalText(decimal).split('.')
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ',')
  return fraction === undefined ? grouped : `${grouped}.${fraction}`
}

export function plus(a: Decimal, b: Decimal): Decimal {
  const places = Math.max(a.places, b.places)
  return { units: unitsAt(a, places) + unitsAt(b, places), places }
}

export function sumOf(decimals: readonly Decimal[]): Decimal {
  return decimals.reduce(plus, ZERO)
}

/** The exact product; its places are those of both together. */
export function times(a: Decimal, b: Decimal): Decimal {
  return { units: a.units * b.units, places: a.places + b.places }
}

/** The exact share of a decimal that a percentage is. */
export function percentOf(percent: Decimal, whole: Decimal): Decimal {
  const product = times(percent, whole)
  return { units: product.units, places: product.places + 2 }
}

/** Rounded to `places`; a half goes away from zero, so 0.125 to two places is 0.13. */
export function rounded(decimal: Decimal, places: number): Decimal {
  if (decimal.places <= places) return { units: unitsAt(decimal, places), places }
  const step = tenTo(decimal.places - places)
  return { units: (decimal.units + step / 2n) / step, places }
}

/** The next whole number, where it is not one already. */
export function wholeUp({ units, places }: Decimal): Decimal {
  const step = tenTo(places)
  return { units: (units + step - 1n) / step, places: 0 }
}

/** For working that is only shown, never for amounts. */
export function approximately(decimal: Decimal): number {
  return Number(decimalText(decimal))
}

function unitsAt({ units, places }: Decimal, wanted: number): bigint {
  return units * tenTo(wanted - places)
}

function tenTo(power: number): bigint {
  return 10n ** BigInt(power)
}
