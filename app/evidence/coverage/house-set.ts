import type { CaseFile } from '../case-file.ts'
import type { Photo } from '../photo.ts'
import { problem, type Check } from './check.ts'

/** Sides of a house that a reader expects to see (common practice, no source). */
const SIDES = 4
/** Words by which a caption names the view from the street or the number on the house. */
const STREET_WORDS = /\b(street|front|kerb|curb|address|house number|mailbox)\b/i

/** The pictures that show which house it is: its four sides and its front from the street (common practice, no source). */
export const checkHouseSet: Check = (caseFile) => {
  const sides = caseFile.photos.filter(({ tags }) => tags.role === 'elevation' && tags.leftOutBecause === null)
  if (caseFile.photos.length === 0) return []
  return [...fourSides(sides, caseFile), ...streetFront(sides, caseFile)]
}

function fourSides(sides: readonly Photo[], { job }: CaseFile) {
  const seen = Math.min(SIDES, sidesSeen(sides, job.sheet.property.frontAzimuthDeg ?? 0))
  if (seen === SIDES) return []
  const sentence =
    seen === 0
      ? 'No photo is tagged as a side of the house. Usual are all four sides.'
      : `Only ${seen} of the four sides of the house ${seen === 1 ? 'is' : 'are'} shown. Usual are all four.`
  return [problem('house-sides', { weight: 'notice', sentence, place: { kind: 'photos' } })]
}

/** Photos that look the same way show the same side; one whose direction is not known is taken as one more. */
function sidesSeen(sides: readonly Photo[], frontAzimuthDeg: number): number {
  const quarters = new Set<number>()
  let unknown = 0
  for (const { file } of sides) {
    if (file.direction === null || file.direction.reference === 'not-stated') unknown += 1
    else quarters.add(Math.round(((file.direction.azimuthDeg - frontAzimuthDeg + 360) % 360) / 90) % 4)
  }
  return quarters.size + unknown
}

function streetFront(sides: readonly Photo[], { photos }: CaseFile) {
  const isNamed = (photo: Photo) => STREET_WORDS.test(photo.tags.caption)
  const documents = photos.filter(({ tags }) => tags.role === 'document' && tags.leftOutBecause === null)
  if ([...sides, ...documents].some(isNamed)) return []
  const sentence =
    'No side of the house is captioned as its front or as seen from the street. Caption the one that shows which house this is.'
  return [problem('house-front', { weight: 'notice', sentence, place: { kind: 'photos' } })]
}
