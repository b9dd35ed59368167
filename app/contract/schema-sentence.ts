import type { z } from 'zod'

/** The first thing a schema has against a value: the field as a dotted path, and why, as a sentence. */
export function firstIssueSentence(error: z.ZodError): { readonly field: string; readonly sentence: string } {
  const issue = error.issues[0]
  if (issue === undefined) return { field: '', sentence: 'The value is not as expected.' }
  if (issue.code === 'unrecognized_keys') {
    return {
      field: issue.path.join('.'),
      sentence: `There is no field called ${issue.keys.map((key) => `"${key}"`).join(', ')}.`,
    }
  }
  return { field: issue.path.join('.'), sentence: issue.message.endsWith('.') ? issue.message : `${issue.message}.` }
}
