import type { z } from 'zod'
import { refuse } from '../../app/contract/app-error.ts'

/** Reads a JSON column through its schema; a row that no longer fits is refused by name, never guessed at. */
export function fromJson<Schema extends z.ZodType>(schema: Schema, text: string, what: string): z.output<Schema> {
  const parsed = schema.safeParse(parseOrNull(text))
  if (!parsed.success) {
    const issue = parsed.error.issues[0]
    refuse(
      'damaged-library',
      `The stored ${what} can't be read: ${issue?.path.join('.') ?? ''} ${issue?.message ?? ''}`,
    )
  }
  return parsed.data
}

function parseOrNull(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return null
  }
}
