import { z } from 'zod'

declare const brandTag: unique symbol

/** A value of type `T` that cannot be mixed up with other values of the same shape. The only place where brands are made. */
export type Brand<T, Name extends string> = T & { readonly [brandTag]: Name }

/** A schema for an identifier: a short, non-empty string that is its own type. */
export function idSchema<Name extends string>(_name: Name) {
  return z
    .string()
    .min(1)
    .max(64)
    .regex(/^[A-Za-z0-9_-]+$/)
    .transform((text) => text as Brand<string, Name>)
}
