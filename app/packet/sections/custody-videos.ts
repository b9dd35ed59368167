import { codecName, type Video } from '../../evidence/video.ts'
import { frameTimeWords, videoLabel } from '../../evidence/video-label.ts'
import type { Block } from '../document.ts'
import { bytesFigure } from '../format/files.ts'
import { photoTimeWords } from '../format/times.ts'
import type { PacketContext } from '../packet-context.ts'
import { plain } from '../text.ts'
import { isInBundle, SMALL_VIDEO_BYTES } from '../videos-in-bundle.ts'
import { column, heading, paragraph } from './section.ts'

const ABOUT_STILLS =
  'A still is a frame that a person stored while the video was played in Battenbook. Recorded with it are the video, its SHA-256 and how far into it the frame is. The player on the screen made the picture; it was not decoded a second time for comparison. The frame can be compared with the video at the moment that is named.'

/** The videos with their SHA-256, whether each is in the bundle, and what a still is where there are any. */
export function videoBlocks({ input, photos, leftOut }: PacketContext): readonly Block[] {
  const { videos, options } = input
  const hasStills = [...photos, ...leftOut].some(({ still }) => still !== null)
  if (videos.length === 0) return []
  const out = videos.filter(({ file }) => !isInBundle(file, options.videosInBundle))
  return [
    heading('Videos', true),
    ...(out.length === 0 ? [] : [paragraph(leftOutWords(out.length, options.videosInBundle), 'small')]),
    {
      kind: 'table',
      summary: 'Videos with their SHA-256',
      columns: [column('Video', 0.9), column('Original file and start', 3.2), column('SHA-256', 6.6)],
      rows: videos.map((video) => ({
        cells: [
          plain(videoLabel(video.number)),
          plain(`${factWords(video)}; ${out.includes(video) ? 'not in the bundle' : 'in the bundle'}`),
          [{ text: video.file.sha256, style: 'mono' as const }],
        ],
      })),
    },
    ...(hasStills ? [paragraph(ABOUT_STILLS, 'small')] : []),
  ]
}

function factWords({ file, time, tags }: Video): string {
  const why = tags.startSet === null ? '' : ` (${tags.startSet.why})`
  return [
    file.fileName,
    `${bytesFigure(file.bytes)} bytes`,
    `${frameTimeWords(file.durationMs)} long`,
    codecName(file.codec),
    time.instantMs === null ? 'start not known' : `begins ${photoTimeWords(time)}${why}`,
  ].join(', ')
}

function leftOutWords(count: number, choice: 'small' | 'all' | 'none'): string {
  const what = count === 1 ? 'One video is' : `${count} videos are`
  const why = choice === 'small' ? `larger than ${SMALL_VIDEO_BYTES / 1_000_000} MB and` : 'by choice'
  return `${what} ${why} not in the evidence bundle; the office keeps the file, whose SHA-256 stands here.`
}
