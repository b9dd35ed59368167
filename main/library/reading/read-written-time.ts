import type { FileProblem } from '../../../app/evidence/photo.ts'
import type { WrittenTime } from '../../../app/evidence/photo-time.ts'
import { type CalendarTime, canBeTaken, readCalendarTime, readOffsetMinutes } from './calendar-time.ts'
import { type ExifValues, numbersOf, textOf } from './exif-tags.ts'
import { asWritten } from './written-text.ts'
import type { XmpFacts } from './xmp-facts.ts'

type Candidate = { tag: string; text: string; fraction: string; offset: string }

/**
 * Reads what the camera wrote about time. The first believable date wins: taken, digitized, the same two in XMP, last
 * changed. The last one is weak, since any later edit moves it, so it comes with a problem.
 * @param nowMs the take-in moment: a photo can't be from later
 */
export function readWrittenTime(given: { exif: ExifValues; xmp: XmpFacts; nowMs: number }): {
  written: WrittenTime
  problems: FileProblem[]
} {
  const { exif, xmp, nowMs } = given
  const problems: FileProblem[] = []
  const gpsUtcMs = readGpsUtcMs(exif, { nowMs, problems })
  const candidates = candidatesIn(exif, xmp).filter(({ text }) => !isBlank(text))
  for (const candidate of candidates) {
    const time = readCalendarTime(candidate.text, candidate.fraction)
    if (time === null || !canBeTaken(time.asUtcMs, nowMs)) {
      problems.push({ about: 'time', text: whyNot(candidate, time, nowMs) })
      continue
    }
    if (candidate.tag === 'DateTime') {
      problems.push({ about: 'time', text: 'The file has no date of taking; the date of its last change is used.' })
    }
    const offsetMinutes = readOffset(candidate, time, problems)
    const { tag, text } = candidate
    return { written: { tag, raw: asWritten(text), local: time.local, offsetMinutes, gpsUtcMs }, problems }
  }
  const raw = candidates[0] === undefined ? null : asWritten(candidates[0].text)
  return { written: { tag: null, raw, local: null, offsetMinutes: null, gpsUtcMs }, problems }
}

function candidatesIn(exif: ExifValues, xmp: XmpFacts): Candidate[] {
  const inXmp = (tag: string, text: string): Candidate => ({ tag, text, fraction: '', offset: '' })
  return [
    {
      tag: 'DateTimeOriginal',
      text: textOf(exif, 'dateTimeOriginal'),
      fraction: textOf(exif, 'subSecTimeOriginal'),
      offset: textOf(exif, 'offsetTimeOriginal'),
    },
    {
      tag: 'DateTimeDigitized',
      text: textOf(exif, 'dateTimeDigitized'),
      fraction: textOf(exif, 'subSecTimeDigitized'),
      offset: textOf(exif, 'offsetTimeDigitized'),
    },
    inXmp('XMP exif:DateTimeOriginal', xmp.dateTimeOriginal),
    inXmp('XMP photoshop:DateCreated', withSecondsOnly(xmp.dateCreated)),
    inXmp('XMP xmp:CreateDate', withSecondsOnly(xmp.createDate)),
    {
      tag: 'DateTime',
      text: textOf(exif, 'dateTime'),
      fraction: textOf(exif, 'subSecTime'),
      offset: textOf(exif, 'offsetTime'),
    },
  ]
}

/** XMP allows a year, a day or a time without seconds: typed by a person, no moment of taking, and not wrong either. */
function withSecondsOnly(text: string): string {
  return /^\d{4}(-\d{2}){0,2}(T\d{2}:\d{2}(Z|[+-]\d{2}:\d{2})?)?$/.test(text) ? '' : text
}

/** Exif writes an unknown date as blanks between the colons. */
function isBlank(text: string): boolean {
  return /^[\s:]*$/.test(text)
}

function whyNot(candidate: Candidate, time: CalendarTime | null, nowMs: number): string {
  const stated = `The date "${asWritten(candidate.text)}" (${candidate.tag})`
  if (time === null) return `${stated} is not used: there is no such day and time.`
  return time.asUtcMs > nowMs
    ? `${stated} is not used: it is later than the day the file was taken in. Check the camera's clock.`
    : `${stated} is not used: it is older than any digital camera. Check the camera's clock.`
}

function readOffset(candidate: Candidate, time: CalendarTime, problems: FileProblem[]): number | null {
  const text = candidate.offset.trim() || time.zone
  if (isBlank(text)) return null
  const minutes = readOffsetMinutes(text)
  if (minutes === null) {
    const range = 'it is not of the form +HH:MM between -12:00 and +14:00'
    problems.push({ about: 'time', text: `The time zone "${asWritten(text)}" beside the date is not used: ${range}.` })
  }
  return minutes
}

function readGpsUtcMs(exif: ExifValues, into: { nowMs: number; problems: FileProblem[] }): number | null {
  const dateText = textOf(exif, 'gpsDateStamp').trim()
  const clock = numbersOf(exif, 'gpsTimeStamp')
  if (isBlank(dateText) || clock.length === 0) return null
  const found = /^(\d{4})[:-](\d{2})[:-](\d{2})$/.exec(dateText)
  const day = found === null ? null : readCalendarTime(`${found[1]}-${found[2]}-${found[3]}T00:00:00`, '')
  const [hours = NaN, minutes = NaN, seconds = NaN] = clock
  const isClock = isBelow(hours, 24) && isBelow(minutes, 60) && isBelow(seconds, 60)
  const utcMs = (day?.asUtcMs ?? NaN) + Math.round((hours * 3600 + minutes * 60 + seconds) * 1000)
  if (day !== null && isClock && canBeTaken(utcMs, into.nowMs)) return utcMs
  const stated = `"${asWritten(dateText)}" at "${asWritten(clock)}"`
  into.problems.push({ about: 'time', text: `The satellite time ${stated} is not used: it can't be right.` })
  return null
}

function isBelow(value: number, limit: number): boolean {
  return value >= 0 && value < limit
}
