import type { Photo } from '../../app/evidence/photo.ts'

/** The photo that a person names by its number: `P-012`, `p12` or `12`; null when there is none. */
export function photoByTypedNumber(photos: readonly Photo[], text: string): Photo | null {
  const digits = /^\s*(?:p\s*-?\s*)?0*(\d{1,7})\s*$/i.exec(text)?.[1]
  if (digits === undefined) return null
  return photos.find(({ number }) => number === Number(digits)) ?? null
}
