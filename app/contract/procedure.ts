import type { z } from 'zod'
import type { AppError } from './app-error.ts'

/** A call that a screen or a terminal can make. Writes are run one at a time. */
export interface Procedure<Input extends z.ZodType, Output extends z.ZodType> {
  readonly kind: 'read' | 'write'
  readonly input: Input
  readonly output: Output
}

/** Declares a call that changes nothing. */
export function read<Input extends z.ZodType, Output extends z.ZodType>(
  input: Input,
  output: Output,
): Procedure<Input, Output> {
  return { kind: 'read', input, output }
}

/** Declares a call that changes the library. */
export function write<Input extends z.ZodType, Output extends z.ZodType>(
  input: Input,
  output: Output,
): Procedure<Input, Output> {
  return { kind: 'write', input, output }
}

/** The answer to every call: a value or an error, never an exception. */
export type Reply<T> = { ok: true; value: T } | { ok: false; error: AppError }
