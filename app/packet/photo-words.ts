import { conditions } from '../evidence/catalog/conditions.ts'
import { components } from '../evidence/catalog/components.ts'
import { photoRoleLabels } from '../evidence/catalog/labels.ts'
import type { Photo } from '../evidence/photo.ts'
import { videoLabel } from '../evidence/video-label.ts'
import { placedWords } from '../evidence/walk-order.ts'
import type { PhotoId } from '../job/ids.ts'
import { directionWords } from './format/directions.ts'
import { correctionWords, photoTimeWords } from './format/times.ts'

/** What a photo shows, in a line: its caption, else its tags, else that nobody has said. */
export function photoSubject({ tags }: Photo): string {
  const caption = tags.caption.trim()
  if (caption !== '') return caption
  const parts = [
    ...(tags.component === null ? [] : [components[tags.component].label]),
    ...(tags.condition === null ? [] : [conditions[tags.condition].label.toLowerCase()]),
  ]
  if (parts.length > 0) return parts.join(': ')
  return tags.role === null ? 'no caption' : photoRoleLabels[tags.role]
}

/** When a photo was taken; where that isn't known, where a person placed it, else what the camera wrote. */
export function whenTakenWords(photo: Photo, photoById: ReadonlyMap<PhotoId, Photo>): string {
  const { time, file } = photo
  if (time.instantMs !== null) return `${photoTimeWords(time)}${hourWords(photo)}`
  const placed = placedWords(photo, photoById)
  if (placed !== null) return placed
  return file.written.raw === null ? 'time not known' : `time not known; the camera wrote "${file.written.raw}"`
}

/** What has to be said of a time that a change of clocks skips or repeats. */
function hourWords({ time, tags }: Photo): string {
  if (time.changeOfClocks === undefined) return ''
  if (time.changeOfClocks === 'skipped') return '; the clocks skipped this hour, read as before the change'
  const which = `read as the ${tags.repeatedHour ?? 'first'} of two`
  return `; the clocks repeated this hour, ${which}${tags.repeatedHour === undefined ? '' : ', as a person says'}`
}

/** "camera wrote 2026:03:14 13:32:07, +7 min 00 s"; null where nothing is corrected. */
export function clockCorrectionWords({ time, file, still }: Photo): string | null {
  if (time.correctionMs === 0) return null
  if (still !== null)
    return `start of ${videoLabel(still.videoNumber)} corrected, ${correctionWords(time.correctionMs)}`
  return `camera wrote ${file.written.raw ?? 'no time'}, ${correctionWords(time.correctionMs)}`
}

/** Where the camera says it stood and looked, to about a metre; null when it says neither. */
export function positionWords({ file }: Photo): string | null {
  const { position, direction } = file
  const place =
    position === null
      ? []
      : [
          `${position.latDeg.toFixed(5)}, ${position.lonDeg.toFixed(5)}`,
          position.errorM === null ? 'error not stated' : `stated error ${Math.round(position.errorM * 3.28084)} ft`,
        ]
  const north = { true: '', magnetic: ' from magnetic north', 'not-stated': ', which north is not stated' } as const
  const looking =
    direction === null ? [] : [`looking ${directionWords(direction.azimuthDeg)}${north[direction.reference]}`]
  const parts = [...place, ...looking]
  return parts.length === 0 ? null : parts.join(', ')
}
