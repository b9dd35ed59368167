import { Temporal } from 'temporal-polyfill'
import { videoLabel } from '../evidence/video-label.ts'
import type { Video } from '../evidence/video.ts'
import { type Columns, type CsvTable, table } from './csv-table.ts'
import { localIso } from './format/local-iso.ts'

/** videos.csv of an evidence bundle: every video by number, whether its file is in the bundle or not. */
export function videoTable(videos: readonly Video[]): CsvTable {
  return table(
    'videos.csv',
    videoColumns,
    videos.toSorted((a, b) => a.number - b.number),
  )
}

const videoColumns: Columns<Video> = [
  ['video', ({ number }) => videoLabel(number)],
  ['file', ({ file }) => file.fileName],
  ['sha256', ({ file }) => file.sha256],
  ['bytes', ({ file }) => file.bytes],
  ['caption', ({ tags }) => tags.caption],
  ['duration_seconds', ({ file }) => file.durationMs / 1000],
  ['width_px', ({ file }) => file.widthPx],
  ['height_px', ({ file }) => file.heightPx],
  ['codec', ({ file }) => file.codec],
  ['local_start', ({ time }) => localIso(time)],
  ['utc_offset_minutes', ({ time }) => time.offsetMinutes],
  ['time_basis', ({ time }) => time.basis],
  ['start_set_because', ({ tags }) => tags.startSet?.why ?? ''],
  ['camera_wrote', ({ file }) => file.written.raw],
  ['container_utc', ({ file }) => utcIso(file.containerUtcMs)],
  ['clock_correction_seconds', ({ time }) => time.correctionMs / 1000],
  ['latitude_deg', ({ file }) => file.position?.latDeg ?? null],
  ['longitude_deg', ({ file }) => file.position?.lonDeg ?? null],
  ['camera', ({ file }) => [file.camera.make, file.camera.model].filter((part) => part !== '').join(' ')],
]

function utcIso(instantMs: number | null): string {
  return instantMs === null ? '' : Temporal.Instant.fromEpochMilliseconds(instantMs).toString()
}
