import { z } from 'zod'

/** A currency by its three letters in ISO 4217. */
export const currencySchema = z
  .string()
  .regex(/^[A-Z]{3}$/, 'A currency is written as three capital letters (ISO 4217), such as USD.')

/** True for a code that is in use. */
export function isCurrency(code: string): boolean {
  return currencySchema.safeParse(code).success && Intl.supportedValuesOf('currency').includes(code)
}

/** Digits after the point that the currency's smallest unit has: 2 for USD, 0 for JPY, 3 for KWD (ISO 4217, as ECMA-402 gives them). */
export function currencyDigits(code: string): number {
  return (
    new Intl.NumberFormat('en-US', { style: 'currency', currency: code }).resolvedOptions().maximumFractionDigits ?? 2
  )
}
