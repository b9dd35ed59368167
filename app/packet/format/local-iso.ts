import { localDateTime } from '../../evidence/photo-local-time.ts'
import type { PhotoTime } from '../../evidence/photo-time.ts'
import { offsetWords } from './times.ts'

/** ISO 8601 with offset, to the second; empty when not known. */
export function localIso(time: PhotoTime): string {
  const local = localDateTime(time)
  if (local === null) return ''
  return `${local.toString({ smallestUnit: 'second' })}${offsetWords(time.offsetMinutes ?? 0)}`
}
