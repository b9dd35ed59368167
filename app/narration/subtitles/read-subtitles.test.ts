import { existsSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { z } from 'zod'
import { readSubtitles, SUBTITLE_LIMITS, subtitleFormat } from './read-subtitles.ts'

const SAMPLES = '../shared/samples/subtitles'

const expectedSchema = z.record(
  z.string(),
  z.object({
    cues: z.array(z.object({ startTime: z.number(), endTime: z.number(), text: z.string() })).optional(),
    count: z.number().optional(),
    texts: z.array(z.string()).optional(),
    times: z.array(z.tuple([z.number(), z.number()])).optional(),
    timesByFfprobe: z.array(z.tuple([z.number(), z.number()])).optional(),
    authority: z.string(),
  }),
)

/**
 * Where the expectation is another reading than the W3C standard's (WebVTT, section 6.3, "collect a WebVTT timestamp" and
 * "collect a WebVTT block"), with what the standard's steps give.
 */
const STANDARD_SAYS: Readonly<Record<string, { readonly count: number; readonly why: string }>> = {
  'vttjs__cue-times-min-top-digits.vtt': {
    count: 0,
    why: 'three digits before the first colon are hours: seconds are missing',
  },
  'wpt__newlines.vtt': { count: 4, why: 'the stored text has no blank line between its cues, so ids become text' },
  'subtitles-php__vtt_with_multiple_new_lines.vtt': {
    count: 2,
    why: 'a blank line ends the cue; words after it belong to none',
  },
}

/** A block of arrows alone has a cue without words: the second arrow begins a new block. */
const plain = (text: string) =>
  text
    .replace(/<[^>]*>/g, '')
    .replace(/&gt;/g, '>')
    .replace(/&lt;/g, '<')
    .replace(/&amp;/g, '&')
    .replace(/&[lr][lr]m;/g, '')
    .replace(/\s+/g, ' ')
    .trim()

describe.skipIf(!existsSync(SAMPLES))(`samples of ${SAMPLES}`, () => {
  const expected = existsSync(SAMPLES)
    ? expectedSchema.parse(JSON.parse(readFileSync(`${SAMPLES}/expected.json`, 'utf8')))
    : {}

  it.each(Object.entries(expected))('%s', (name, want) => {
    const cues = readSubtitles(readFileSync(`${SAMPLES}/${name}`, 'utf8'))?.cues ?? []
    const standard = STANDARD_SAYS[name]
    if (standard !== undefined) return expect(cues.length).toBe(standard.count)
    const times = want.times ?? want.timesByFfprobe ?? want.cues?.map((cue) => [cue.startTime, cue.endTime])
    const texts = want.texts ?? want.cues?.map((cue) => cue.text)
    if (times !== undefined) expect(cues.map((cue) => [cue.startMs / 1000, cue.endMs / 1000])).toEqual(times)
    if (texts !== undefined) expect(cues.map((cue) => cue.text)).toEqual(texts.map(plain))
    return expect(cues.length).toBe(want.count ?? times?.length ?? texts?.length)
  })

  it('names the line of each damaged block', () => {
    const { cues, problems } = readSubtitles(readFileSync(`${SAMPLES}/wpt__timings-too-long.vtt`, 'utf8')) ?? {}
    expect(cues?.length).toBe(2)
    expect(problems?.length).toBeGreaterThan(3)
  })
})

describe('readSubtitles', () => {
  it('reads both formats of the first cue in the reference as the same moment', () => {
    const srt = readSubtitles('1\n00:01:02,500 --> 00:01:05,000\nRight end of the porch, ridge tile is loose.\n')
    const vtt = readSubtitles('WEBVTT\n\n01:02.500 --> 01:05.000\nRight end of the porch, ridge tile is loose.\n')
    expect(srt?.cues).toEqual(vtt?.cues)
    expect(srt?.cues[0]).toMatchObject({ startMs: 62_500, endMs: 65_000 })
  })

  it('takes hours of three digits and refuses 60 minutes (W3C WebVTT timestamps)', () => {
    const read = readSubtitles('WEBVTT\n\n100:00:00.000 --> 100:00:01.250\nlate\n\n60:00.000 --> 60:01.000\nwrong\n')
    expect(read?.cues).toEqual([{ startMs: 360_000_000, endMs: 360_001_250, text: 'late', speaker: '' }])
    expect(read?.problems).toEqual([{ line: 6, reason: expect.stringContaining('times') }])
  })

  it('keeps the rest when blocks are damaged, and says which', () => {
    const text =
      '1\r\n00:00:01,000 --> 00:00:02,000\r\nfirst\r\n\r\n2\r\n00:00:xx,000 --> 00:00:04,000\r\nlost\r\n\r\nstray words\r\n\r\n3\r\n0:0:5,5 --> 0:0:6\r\nlast\r\n'
    const read = readSubtitles(text)
    expect(read?.cues.map((cue) => [cue.startMs, cue.text])).toEqual([
      [1000, 'first'],
      [5500, 'last'],
    ])
    expect(read?.problems.map(({ line }) => line)).toEqual([5, 9])
  })

  it('takes voices and drops markup', () => {
    const read = readSubtitles('WEBVTT\n\n00:00.000 --> 00:01.000\n<v Odell>Two <i>slipped</i> tiles &amp; one gone\n')
    expect(read?.cues[0]).toMatchObject({ speaker: 'Odell', text: 'Two slipped tiles & one gone' })
  })

  it('is no subtitle file without times or signature', () => {
    expect(subtitleFormat('')).toBeNull()
    expect(subtitleFormat('a --> b')).toBeNull()
    expect(subtitleFormat('WEBVTTX\n')).toBeNull()
  })

  it('has bounds, and says where it stopped', () => {
    const cue = '00:00.000 --> 00:01.000\nx\n\n'
    const read = readSubtitles(`WEBVTT\n\n${cue.repeat(SUBTITLE_LIMITS.cues + 2)}`)
    expect(read?.cues.length).toBe(SUBTITLE_LIMITS.cues)
    expect(read?.problems.at(-1)?.reason).toContain('first 20000 cues')
  })
})
