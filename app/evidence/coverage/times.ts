import type { PacketProblem, ProblemFix } from '../../packet/problem.ts'
import { correctionWords } from '../../packet/format/times.ts'
import { cameraName } from '../camera-name.ts'
import { shiftedClock } from '../camera-clock.ts'
import type { CaseFile } from '../case-file.ts'
import { clockSuggestions, type ClockSuggestion } from '../clock-suggestions.ts'
import { placeOfPhoto } from '../photo-zone.ts'
import { photoLabel, type Photo } from '../photo.ts'
import { isDaylight, isPlainlyLit, photosAtNight, sunCheck } from '../sun-check.ts'
import { problem, type Check } from './check.ts'

const HOUR_MS = 3_600_000
const isWhole = (ms: number) => ms % (HOUR_MS / 2) === 0

/** Clocks that disagree with GPS, the sun or each other, and hours that a change of clocks skips or repeats. */
export const checkTimes: Check = (caseFile) => {
  const suggestions = clockSuggestions(caseFile)
  const shown = caseFile.photos.filter(({ tags }) => tags.leftOutBecause === null && tags.role !== 'document')
  return [
    ...suggestions.flatMap((suggestion) => clockProblem(suggestion, caseFile)),
    ...photosAtNight(shown, caseFile.job).flatMap((photo) => inTheDark(photo, { suggestions, caseFile })),
    ...shown.flatMap(changedHour),
    ...noPlace(shown, caseFile),
  ]
}

/** What the sun says is told with the photos that it is about. */
function clockProblem(suggestion: ClockSuggestion, caseFile: CaseFile): readonly PacketProblem[] {
  if (suggestion.from === 'sun') return []
  const weight = isWhole(suggestion.addMs) ? 'mend' : 'notice'
  return [
    problem('camera-clock', {
      weight,
      sentence: suggestionWords(suggestion, caseFile),
      place: { kind: 'sheet', field: 'cameras' },
      detail: suggestion.cameraId,
      fixes: fixOf(suggestion, caseFile),
    }),
  ]
}

/** Why a clock seems to be wrong, in a sentence. */
export function suggestionWords(suggestion: ClockSuggestion, { cameras }: Pick<CaseFile, 'cameras'>): string {
  const { addMs, from, photos } = suggestion
  const nameOf = (id: string | null) => cameraName(cameras.find((camera) => camera.id === id))
  const name = nameOf(suggestion.cameraId)
  const usual = 'Whole hours usually mean a wrong zone or daylight saving.'
  const many = photos === 1 ? '1 photo' : `${photos} photos`
  switch (from) {
    case 'gps':
      return isWhole(addMs)
        ? `The clock of ${name} is off by ${correctionWords(addMs).slice(1)} against its own GPS time in ${many}. ${usual}`
        : `The clock of ${name} differs from its own GPS time by ${correctionWords(addMs)} in ${many}. A GPS fix can be minutes old: compare with another clock before you correct it.`
    case 'sun':
      return `${many} of ${name} ${photos === 1 ? 'is' : 'are'} plainly lit but in the dark by its clock; ${hoursWords(addMs)} added would fit the sun. ${usual}`
    case 'other-camera':
      return `All photos of ${name} lie apart from those of ${nameOf(suggestion.otherId)}; ${hoursWords(addMs)} added would bring them together. One of the two clocks may be off. ${usual}`
  }
}

function hoursWords(ms: number): string {
  return `${ms < 0 ? '-' : '+'}${Math.abs(ms) / HOUR_MS} h`
}

function fixOf({ cameraId, addMs, ...suggestion }: ClockSuggestion, caseFile: CaseFile): readonly ProblemFix[] {
  const camera = caseFile.cameras.find(({ id }) => id === cameraId)
  if (camera === undefined) return []
  const why = `Suggested: ${suggestionWords({ cameraId, addMs, ...suggestion }, caseFile)}`
  return [
    {
      kind: 'set-clock',
      label: `Add ${correctionWords(addMs)} to the clock of ${cameraName(camera)}`,
      cameraId,
      clock: shiftedClock(camera.clock, addMs, why.slice(0, 1000)),
    },
  ]
}

function inTheDark(
  photo: Photo,
  { suggestions, caseFile }: { suggestions: readonly ClockSuggestion[]; caseFile: CaseFile },
): readonly PacketProblem[] {
  const check = sunCheck(photo, caseFile.job)
  if (check.kind !== 'night') return []
  const label = photoLabel(photo.number)
  const place = { kind: 'photo', id: photo.id } as const
  if (!isPlainlyLit(photo)) {
    const sentence = `${label} was taken at night by its clock, ${check.words}. Its picture is dark, so that may be right.`
    return [problem('photo-at-night', { weight: 'notice', sentence, place })]
  }
  const fits = suggestions.find((one) => one.cameraId === photo.cameraId && bringsLight(photo, one, caseFile))
  const off = fits === undefined ? '' : ` It would fit if the clock were ${Math.abs(fits.addMs) / HOUR_MS} h off.`
  const sentence = `${label}: by its clock this photo was taken ${check.words}, but its picture is plainly lit.${off}`
  const fixes = fits === undefined ? [] : fixOf(fits, caseFile)
  return [problem('photo-lit-at-night', { weight: 'mend', sentence, place, fixes })]
}

function bringsLight(photo: Photo, { addMs }: ClockSuggestion, { job }: CaseFile): boolean {
  const place = placeOfPhoto(photo.file, job)
  const { instantMs } = photo.time
  return place !== null && instantMs !== null && isDaylight(instantMs + addMs, place)
}

function changedHour(photo: Photo): readonly PacketProblem[] {
  const { changeOfClocks } = photo.time
  if (changeOfClocks === undefined) return []
  const label = photoLabel(photo.number)
  const place = { kind: 'photo', id: photo.id } as const
  if (changeOfClocks === 'skipped') {
    const sentence = `${label} has a time that the clocks skipped that day; it is read as if the camera had not been changed yet.`
    return [problem('photo-skipped-hour', { weight: 'notice', sentence, place })]
  }
  if (photo.tags.repeatedHour !== undefined) return []
  const sentence = `${label} was taken in the hour that came twice when the clocks went back; it is read as the first. Say which it was.`
  const fixes = (['first', 'second'] as const).map((pass): ProblemFix => ({
    kind: 'tag-photo',
    label: `${label}: the ${pass} of the two hours`,
    photoId: photo.id,
    set: { repeatedHour: pass },
  }))
  return [problem('photo-repeated-hour', { weight: 'mend', sentence, place, fixes })]
}

function noPlace(photos: readonly Photo[], { job }: CaseFile): readonly PacketProblem[] {
  const isUnplaced = ({ time, file }: Photo) => time.instantMs !== null && placeOfPhoto(file, job) === null
  const count = photos.filter(isUnplaced).length
  if (count === 0) return []
  const whose = count === photos.length ? 'The photos’ times' : `The times of ${count} photos`
  const sentence = `${whose} can’t be checked against the sun: neither the photos nor the house have a position. Set the house’s position.`
  return [problem('sun-no-place', { weight: 'notice', sentence, place: { kind: 'sheet', field: 'property.position' } })]
}
