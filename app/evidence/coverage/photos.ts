import type { PacketProblem, ProblemFix } from '../../packet/problem.ts'
import type { CaseFile } from '../case-file.ts'
import { photoLabel, type Photo } from '../photo.ts'
import { localDate } from '../photo-local-time.ts'
import { isPlacedByHand } from '../walk-order.ts'
import { problem, type Check } from './check.ts'

/** Roles of photos that show the house and need no finding. */
const HOUSE_ROLES: ReadonlySet<string | null> = new Set(['overview', 'elevation', 'document'])

/** Photos of the packet that are untagged, unused, without time, taken on another day, or that can't be shown. */
export const checkPhotos: Check = (caseFile) => {
  if (caseFile.photos.length === 0) {
    const sentence = 'No photo has been taken in yet.'
    return [problem('photos-none', { weight: 'mend', sentence, place: { kind: 'job' } })]
  }
  const used = usedPhotoIds(caseFile)
  const dates = new Set(caseFile.job.sheet.inspection.dates)
  return caseFile.photos
    .filter(({ tags }) => tags.leftOutBecause === null)
    .flatMap((photo) => [...tagging(photo, used), ...timing(photo, dates), ...showing(photo)])
}

function usedPhotoIds({ findings, readings }: CaseFile): ReadonlySet<string> {
  return new Set([
    ...findings.flatMap(({ photos }) => photos.map(({ photoId }) => photoId)),
    ...readings.flatMap(({ photoIds }) => photoIds),
  ])
}

interface Told {
  readonly weight: PacketProblem['weight']
  readonly words: string
  readonly fixes?: readonly ProblemFix[]
}

function told(photo: Photo, check: string, { weight, words, fixes = [] }: Told): PacketProblem {
  return problem(check, {
    weight,
    sentence: `${photoLabel(photo.number)} ${words}`,
    place: { kind: 'photo', id: photo.id },
    fixes,
  })
}

function leaveOut(photo: Photo, because: string): readonly ProblemFix[] {
  const label = `Leave ${photoLabel(photo.number)} out: ${because.toLowerCase()}`
  return [{ kind: 'tag-photo', label, photoId: photo.id, set: { leftOutBecause: because } }]
}

function tagging(photo: Photo, used: ReadonlySet<string>): readonly PacketProblem[] {
  if (used.has(photo.id)) return []
  const { facetId, role, component, condition, caption } = photo.tags
  const tagged = [facetId, role, component, condition].some((tag) => tag !== null) || caption.trim() !== ''
  if (!tagged) {
    const words = 'has no tag and no finding. Tag it, or leave it out and say why.'
    const fixes = leaveOut(photo, 'Shows nothing that is needed')
    return [told(photo, 'photo-untagged', { weight: 'mend', words, fixes })]
  }
  if (HOUSE_ROLES.has(role)) return []
  return [told(photo, 'photo-unused', { weight: 'notice', words: 'is in no finding and no reading.' })]
}

function timing(photo: Photo, dates: ReadonlySet<string>): readonly PacketProblem[] {
  const date = localDate(photo.time)
  if (date === null) return [timeless(photo)]
  if (dates.size === 0 || dates.has(date) || photo.tags.role === 'document') return []
  const words = `was taken on ${date}, which is not an inspection date. Check the camera’s clock or the job sheet.`
  return [told(photo, 'photo-other-day', { weight: 'mend', words })]
}

/** A photo that a person placed among the others is mended as far as it can be; the packet says that its time is not known. */
function timeless(photo: Photo): PacketProblem {
  if (isPlacedByHand(photo)) {
    const words = 'has no known time and is placed by hand; the packet says so.'
    return told(photo, 'photo-placed-by-hand', { weight: 'notice', words })
  }
  const words = 'has no known time. Place it between two others on the contact sheet or the time strip.'
  return told(photo, 'photo-no-time', { weight: 'mend', words })
}

function showing(photo: Photo): readonly PacketProblem[] {
  if (photo.preview === 'ready') return []
  const words = 'can’t be shown: no preview could be made. Leave it out and say why.'
  const fixes = leaveOut(photo, 'No picture could be made of this file')
  return [told(photo, 'photo-not-shown', { weight: 'mend', words, fixes })]
}
