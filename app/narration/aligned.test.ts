import { describe, expect, it } from 'vitest'
import { photoIdSchema, videoIdSchema } from '../job/ids.ts'
import { cuesOfVideo, recordingStartMs } from './aligned.ts'

const cues = ['one', 'two'].map((text, at) => ({ startMs: at * 6000, endMs: at * 6000 + 2000, text, speaker: '' }))
const timeAt = (instantMs: number | null) =>
  ({ basis: 'gps-time', offsetMinutes: 0, correctionMs: 0, instantMs }) as const
const photoId = photoIdSchema.parse('p')
const videoId = videoIdSchema.parse('v')
const videoAt = (instantMs: number | null) => ({ id: videoId, time: timeAt(instantMs), file: { durationMs: 5000 } })

describe('recordingStartMs', () => {
  it('follows from a pinned cue, by the clock or by a photo’s instant', () => {
    const none = { photos: [], videos: [] }
    expect(recordingStartMs({ cues, start: { kind: 'clock', cue: 1, instantMs: 100_000 } }, none)).toBe(94_000)
    const start = { kind: 'photo', cue: 1, photoId } as const
    expect(recordingStartMs({ cues, start }, { ...none, photos: [{ id: photoId, time: timeAt(50_000) }] })).toBe(44_000)
    expect(recordingStartMs({ cues, start }, none)).toBeNull()
  })

  it('is that of the video whose sound it is, and moves with it', () => {
    const start = { kind: 'video', videoId } as const
    const records = (instantMs: number | null) => ({ photos: [], videos: [videoAt(instantMs)] })
    expect(recordingStartMs({ cues, start }, records(70_000))).toBe(70_000)
    expect(recordingStartMs({ cues, start }, records(71_500))).toBe(71_500)
    expect(recordingStartMs({ cues, start }, records(null))).toBeNull()
  })
})

describe('cuesOfVideo', () => {
  it('has the words of its own sound though nobody knows when it was filmed', () => {
    const own = { cues, start: { kind: 'video', videoId } } as const
    const found = cuesOfVideo(videoAt(null), [own], { photos: [], videos: [videoAt(null)] })
    expect(found).toEqual([{ startMs: 0, endMs: 2000, text: 'one' }])
  })

  it('has the words of another recording that fall into it', () => {
    const other = { cues, start: { kind: 'recorded', instantMs: 97_000 } } as const
    const video = videoAt(100_000)
    expect(cuesOfVideo(video, [other], { photos: [], videos: [video] })).toEqual([
      { startMs: 3000, endMs: 5000, text: 'two' },
    ])
    expect(cuesOfVideo(videoAt(null), [other], { photos: [], videos: [] })).toEqual([])
  })
})
