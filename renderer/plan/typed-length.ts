import { shortLength } from '../../app/roof/length-text.ts'

const FEET_PER_METRE = 1 / 0.3048

const NUMBER = String.raw`(\d+(?:[.,]\d+)?)`
const FOOT = String.raw`(?:'|′|’|ft\.?|foot|feet)`
const INCH = String.raw`(?:"|″|”|''|in\.?|inch|inches)`
const INCHES = String.raw`(\d+(?:[.,]\d+)?)(?:\s+(\d+)\/(\d+))?|(\d+)\/(\d+)`

const METRIC = new RegExp(`^${NUMBER}\\s*(m|cm|mm|metres?|meters?)$`, 'i')
const FEET_ONLY = new RegExp(`^${NUMBER}\\s*${FOOT}?$`, 'i')
const INCHES_ONLY = new RegExp(`^(?:${INCHES})\\s*${INCH}$`, 'i')
const FEET_AND_INCHES = new RegExp(`^(\\d+)\\s*(?:${FOOT}\\s*-?\\s*|-|\\s)(?:${INCHES})\\s*${INCH}?$`, 'i')

/**
 * Reads a length as people write it: `24`, `24.5 ft`, `24' 6"`, `24-6`, `24' 6 1/2"`, `6 in`, `7.4 m`, `80 cm`.
 * A bare number is feet.
 *
 * @returns feet, above zero; null when the text is not a length
 */
export function parseTypedLength(typed: string): number | null {
  const text = typed.trim()
  if (/\d,\d{3}(?!\d)/.test(text)) return null
  const feet = metric(text) ?? feetOnly(text) ?? inchesOnly(text) ?? feetAndInches(text)
  return feet !== null && Number.isFinite(feet) && feet > 0 && feet <= 10_000 ? feet : null
}

function metric(text: string): number | null {
  const match = METRIC.exec(text)
  if (match === null) return null
  const unit = (match[2] ?? 'm').toLowerCase()
  const metres = decimal(match[1]) * (unit === 'cm' ? 0.01 : unit === 'mm' ? 0.001 : 1)
  return metres * FEET_PER_METRE
}

function feetOnly(text: string): number | null {
  const match = FEET_ONLY.exec(text)
  return match === null ? null : decimal(match[1])
}

function inchesOnly(text: string): number | null {
  const match = INCHES_ONLY.exec(text)
  return match === null ? null : inches(match.slice(1)) / 12
}

function feetAndInches(text: string): number | null {
  const match = FEET_AND_INCHES.exec(text)
  if (match === null) return null
  const extra = inches(match.slice(2))
  return extra < 12 ? decimal(match[1]) + extra / 12 : null
}

function inches([whole, over, under, soloOver, soloUnder]: readonly (string | undefined)[]): number {
  if (soloOver !== undefined) return decimal(soloOver) / decimal(soloUnder)
  const fraction = over === undefined ? 0 : decimal(over) / decimal(under)
  return decimal(whole) + fraction
}

function decimal(text: string | undefined): number {
  return Number((text ?? '').replace(',', '.'))
}

/** A length as people read it: `24′ 6″`, to the nearest inch. */
export function feetAndInchesLabel(lengthFt: number): string {
  return shortLength(lengthFt)
}
