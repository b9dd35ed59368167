import parsers, { type WebVTTParser } from 'webvtt-parser'
import type { Cue } from '../cue.ts'
import { spokenText } from './spoken-text.ts'
import { type SubtitleBlock, subtitleBlocks } from './subtitle-blocks.ts'

export type SubtitleFormat = 'webvtt' | 'srt'

/** A place in a subtitle file that could not be read, and why. */
export interface SubtitleProblem {
  /** Counted from 1. */
  readonly line: number
  readonly reason: string
}

/** What a subtitle file holds. */
export interface Subtitles {
  readonly format: SubtitleFormat
  /** In order of their start. */
  readonly cues: readonly Cue[]
  readonly problems: readonly SubtitleProblem[]
}

/** No walk over a roof is this long: at this size the rest of a file is left out, and that is said. */
export const SUBTITLE_LIMITS = { characters: 8_000_000, cues: 20_000, cueCharacters: 4000, problems: 1000 } as const

/** WebVTT's signature: W3C WebVTT, section 4.1, step 1 of the file's syntax. */
const SIGNATURE = /^\uFEFF?WEBVTT(?:[ \t][^\r\n]*)?(?:\r|\n|$)/

const TIMING_LINE = /\d\s*-->\s*\d/

/** SRT has no standard. Hours, minutes and seconds of one or two digits and any fraction are common; WebVTT wants fixed widths. */
const SRT_TIME = /(\d+):(\d{1,2}):(\d{1,2})(?:[,.:](\d{1,9}))?(?!\d)/g

/** Which kind of subtitles a text is, by its content; null when it is neither. */
export function subtitleFormat(text: string): SubtitleFormat | null {
  if (SIGNATURE.test(text)) return 'webvtt'
  return text
    .slice(0, 20_000)
    .split(/\r\n|\r|\n/)
    .some((line) => TIMING_LINE.test(line) && new RegExp(SRT_TIME.source).test(line))
    ? 'srt'
    : null
}

/**
 * Reads SubRip (SRT) or WebVTT. Blocks are read one by one by a WebVTT parser after the W3C standard, so that a damaged
 * one costs only itself; each is reported with its line. SRT times are brought into WebVTT's form first.
 *
 * @returns null when the text is neither
 */
export function readSubtitles(text: string): Subtitles | null {
  const format = subtitleFormat(text)
  if (format === null) return null
  const cues: Cue[] = []
  const problems: SubtitleProblem[] = []
  const blocks = subtitleBlocks(text.slice(0, SUBTITLE_LIMITS.characters).replace(/^\uFEFF/, ''))
  const parser = new parsers.WebVTTParser()
  for (const [at, block] of blocks.entries()) {
    if (cues.length >= SUBTITLE_LIMITS.cues) {
      problems.push({ line: block.line, reason: `Only the first ${SUBTITLE_LIMITS.cues} cues are read.` })
      break
    }
    const read = readBlock(parser, block, { format, isHeader: format === 'webvtt' && at === 0 })
    cues.push(...read.cues)
    if (read.reason !== null && problems.length < SUBTITLE_LIMITS.problems) {
      problems.push({ line: block.line, reason: read.reason })
    }
  }
  if (text.length > SUBTITLE_LIMITS.characters) {
    problems.push({ line: blocks.at(-1)?.line ?? 1, reason: 'The file is too long; what follows is left out.' })
  }
  return { format, cues: cues.toSorted((a, b) => a.startMs - b.startMs), problems }
}

interface ReadBlock {
  readonly cues: readonly Cue[]
  readonly reason: string | null
}

function readBlock(
  parser: WebVTTParser,
  block: SubtitleBlock,
  { format, isHeader }: { format: SubtitleFormat; isHeader: boolean },
): ReadBlock {
  const hasTimes = block.lines.some((line) => line.includes('-->'))
  if (!hasTimes) return { cues: [], reason: isHeader || isSilentBlock(block, format) ? null : WITHOUT_TIMES }
  const lines = format === 'srt' ? block.lines.map(asWebvttLine) : block.lines
  const whole = isHeader ? lines.join('\n') : `WEBVTT\n\n${lines.join('\n')}`
  const { cues, errors } = parser.parse(whole)
  const read = cues.map((cue): Cue => {
    const spoken = spokenText(cue.text.slice(0, SUBTITLE_LIMITS.cueCharacters))
    return { startMs: ms(cue.startTime), endMs: Math.max(ms(cue.startTime), ms(cue.endTime)), ...spoken }
  })
  if (read.length > 0) {
    const isEndless = cues.some((cue) => cue.endTime < cue.startTime)
    return { cues: read, reason: isEndless ? 'The cue ends before it begins; its beginning is used.' : null }
  }
  // The library's words are for authors of players; its first complaint tells the case.
  const said = errors[0]?.message ?? ''
  return { cues: [], reason: said.includes('standalone') ? WITHOUT_TIMES : BAD_TIMES }
}

const WITHOUT_TIMES = 'The words have no line with times above them.'
const BAD_TIMES = 'The times are not as the format asks; the block is left out.'

/** Comments, styles and regions say nothing; a lone number in SRT is a cue without words. */
function isSilentBlock(block: SubtitleBlock, format: SubtitleFormat): boolean {
  const [first = ''] = block.lines
  if (format === 'srt') return block.lines.every((line) => /^\s*\d*\s*$/.test(line))
  return /^(NOTE|STYLE|REGION)($|[ \t:])/.test(first)
}

function asWebvttLine(line: string): string {
  return line.includes('-->') ? line.replace(SRT_TIME, webvttTime) : line
}

function webvttTime(time: string): string {
  const [hours = '', minutes = '', seconds = '', fraction = ''] = time.split(/[:,.]/)
  const two = (digits: string) => digits.padStart(2, '0')
  return `${two(hours)}:${two(minutes)}:${two(seconds)}.${fraction.slice(0, 3).padEnd(3, '0')}`
}

function ms(seconds: number): number {
  return Math.round(seconds * 1000)
}
