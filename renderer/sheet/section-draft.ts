import type { JobSheet } from '../../app/job/sheet.ts'
import { jobSheetSchema } from '../../app/job/sheet.ts'

/** A part of the sheet that is saved, and undone, as one. */
export type SectionKey = keyof JobSheet

/** What is wrong with a section's draft: dotted field path (`loss.date`) to the schema's sentence. Empty when all is well. */
export function sectionErrors<Key extends SectionKey>(key: Key, draft: JobSheet[Key]): ReadonlyMap<string, string> {
  const checked = jobSheetSchema.shape[key].safeParse(draft)
  if (checked.success) return new Map()
  return new Map(
    checked.error.issues.toReversed().map((issue) => [[key, ...issue.path.map(String)].join('.'), issue.message]),
  )
}

/** True when two states of a section say the same. */
export function sameSection<Key extends SectionKey>(a: JobSheet[Key], b: JobSheet[Key]): boolean {
  return JSON.stringify(a) === JSON.stringify(b)
}
