import { describe, expect, it } from 'vitest'
import { aCaseFile } from '../../tests/builders/case-file.ts'
import { aJob, aPhoto } from '../../tests/builders/records.ts'
import { facetsOf, hip } from '../../tests/builders/whole-roofs.ts'
import { spokenHintsOfJob } from './job-hints.ts'
import { narrationSchema } from './narration.ts'
import { readingNarration } from './read-narration.ts'

const beganMs = 1_773_500_000_000
const facets = facetsOf(hip(60, 40, 5))

function hintsOf(words: string, takenAfterMs: number) {
  const job = aJob()
  const photo = aPhoto()
  const narration = narrationSchema.parse({
    id: 'n',
    attachmentId: 'a',
    name: 'walk.vtt',
    format: 'webvtt',
    cues: [
      { startMs: 0, endMs: 3000, text: words, speaker: '' },
      { startMs: 60_000, endMs: 62_000, text: 'One cracked tile.', speaker: '' },
    ],
    problems: [],
    start: { kind: 'recorded', instantMs: beganMs },
  })
  const file = {
    ...aCaseFile({
      job: { ...job, sheet: { ...job.sheet, property: { ...job.sheet.property, frontAzimuthDeg: 180 } } },
      facets,
      photos: [{ ...photo, time: { ...photo.time, instantMs: beganMs + takenAfterMs } }],
      narrations: [narration],
    }),
    outlines: [],
    videos: [],
  }
  const work = spokenHintsOfJob(file, function* placesOf({ cues }, against) {
    return (yield* readingNarration(cues, against)).places
  })
  for (;;) {
    const step = work.next()
    if (step.done === true) return step.value
  }
}

describe('hints of a job’s narrations for its photos', () => {
  it('speak for the place named last, and a little for every other', () => {
    const [hint] = hintsOf('Now I am on the back slope.', 10_000)
    const weights = (hint?.weights ?? []).toSorted((a, b) => b.weight - a.weight)
    const back = facets.find(({ downslopeAzimuthDeg }) => downslopeAzimuthDeg === 0)
    expect(weights[0]?.place).toBe(back?.id)
    expect(weights).toHaveLength(facets.length + 1)
    expect(weights.every(({ weight }) => weight > 0)).toBe(true)
    expect(weights.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 9)
  })

  it('say nothing of photos taken when the recording was over', () => {
    expect(hintsOf('Now I am on the back slope.', 3_600_000)).toEqual([])
  })
})
