import { cpSync, existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import sharp from 'sharp'
import { describe, expect, it } from 'vitest'
import type { JobId } from '../../app/job/ids.ts'
import { cuesOfVideo, recordingStartMs } from '../../app/narration/aligned.ts'
import { verifyBundle } from '../../main/publish/verify-bundle.ts'
import { readBundle } from '../../main/publish/read-bundle.ts'
import { openTestDesk, type TestDesk } from './a-desk.ts'
import { useScratch } from './scratch.ts'

const SAMPLES = fileURLToPath(new URL('../../../shared/samples/', import.meta.url))
const isHere = existsSync(`${SAMPLES}videos`)
const scratch = useScratch()

/** A desk with one job that took in a phone's video, a broken one, and subtitles. */
async function withVideo(work: (at: { desk: TestDesk; jobId: JobId; card: string }) => Promise<void>): Promise<void> {
  const card = scratch('card')
  for (const name of [
    'videos/mei__with-gps.mov',
    'videos/mei__fuzzed-00444811217c.mp4',
    'subtitles/subtitles-php__srt.srt',
  ])
    cpSync(SAMPLES + name, join(card, name.split('/')[1] ?? ''))
  const desk = openTestDesk(scratch('library'))
  try {
    const jobId = await desk.newJob('walk')
    const { intake } = await desk.takeIn(jobId, card)
    expect(intake).toMatchObject({ photosAdded: 0, videosAdded: 1, attachmentsAdded: 2, failed: [] })
    await work({ desk, jobId, card })
  } finally {
    await desk.close()
  }
}

/** A picture of the video's upright size, as the player would send it. */
async function frame(shade: number, [width, height] = [320, 568]): Promise<string> {
  const picture = sharp({ create: { width, height, channels: 3, background: { r: shade, g: 90, b: 40 } } })
  return (await picture.jpeg().toBuffer()).toString('base64')
}

describe.skipIf(!isHere)('a video on the card (skipped where the samples are absent)', () => {
  it('is kept whole under a number of its own; a broken one and subtitles are kept as files, with the reason', async () => {
    await withVideo(async ({ desk, jobId, card }) => {
      const job = await desk.ask('jobs.open', { jobId })
      expect(job.videos.map(({ number, file }) => [number, file.fileName])).toEqual([[1, 'mei__with-gps.mov']])
      const folder = join(desk.library.layout.jobs, 'walk', 'originals')
      const [name = ''] = readdirSync(folder)
      expect(readFileSync(join(folder, name)).equals(readFileSync(join(card, 'mei__with-gps.mov')))).toBe(true)
      expect(job.attachments.map(({ file, why }) => [file.mediaType, why.includes('no moving picture')])).toEqual(
        expect.arrayContaining([
          ['application/x-subrip', false],
          ['video/mp4', true],
        ]),
      )
      expect((await desk.ask('library.verify', {})).differences).toEqual([])
      expect((await desk.takeIn(jobId, card)).intake?.doubles).toContainEqual({
        fileName: 'mei__with-gps.mov',
        sameAs: 'V-001',
      })
    })
  })

  it('begins when its camera says, corrected by the clock of that camera, or when a person says', async () => {
    await withVideo(async ({ desk, jobId }) => {
      const open = async () => {
        const { videos, cameras } = await desk.ask('jobs.open', { jobId })
        const [video] = videos
        const [camera] = cameras
        return video === undefined || camera === undefined ? expect.fail('no video') : { video, camera }
      }
      const recordedMs = Date.UTC(2019, 6, 24, 8, 25, 40)
      const { video, camera } = await open()
      expect(video.time).toMatchObject({ basis: 'camera-offset', offsetMinutes: 180, instantMs: recordedMs })
      await desk.ask('cameras.set-clock', {
        jobId,
        id: camera.id,
        clock: { correctionMs: 60_000, why: 'A clock in view' },
      })
      expect((await open()).video.time.instantMs).toBe(recordedMs + 60_000)
      const startSet = { instantMs: recordedMs - 5000, why: 'The bell at noon is heard' }
      await desk.ask('videos.tag', { jobId, id: video.id, set: { startSet, caption: 'Walk' } })
      expect((await open()).video.time).toMatchObject({
        basis: 'set-by-hand',
        correctionMs: 0,
        instantMs: recordedMs - 5000,
      })
      await desk.ask('history.undo', { jobId })
      expect((await open()).video).toMatchObject({ tags: { caption: '', startSet: null } })
    })
  })

  it('lends its start to the narration that is its sound, and shows the words that fall into it', async () => {
    await withVideo(async ({ desk, jobId }) => {
      const speech = scratch('speech')
      const cues = ['00:01.000 --> 00:02.000\nOne cracked tile.', '00:09.000 --> 00:10.000\nAfter the last frame.']
      writeFileSync(join(speech, 'walk.vtt'), ['WEBVTT', ...cues].join('\n\n'))
      await desk.takeIn(jobId, speech)
      const { videos, attachments } = await desk.ask('jobs.open', { jobId })
      const subtitles = attachments.find(({ file }) => file.fileName === 'walk.vtt')
      const [video] = videos
      if (video === undefined || subtitles === undefined) return expect.fail('no video or no subtitles')
      const { id } = await desk.ask('narrations.import', { jobId, attachmentId: subtitles.id })
      const before = await desk.ask('jobs.open', { jobId })
      expect(cuesOfVideo(video, before.narrations, before)).toEqual([])
      await desk.ask('narrations.align', { jobId, id, start: { kind: 'video', videoId: video.id } })
      const job = await desk.ask('jobs.open', { jobId })
      const [narration] = job.narrations
      expect(narration === undefined ? null : recordingStartMs(narration, job)).toBe(Date.UTC(2019, 6, 24, 8, 25, 40))
      expect(cuesOfVideo(video, job.narrations, job)).toEqual([
        { startMs: 1000, endMs: 2000, text: 'One cracked tile.' },
      ])
    })
  })

  it('gives stills that say which frame of which video they are, in the record, the log, the tables and the bundle', async () => {
    await withVideo(async ({ desk, jobId }) => {
      const [video] = (await desk.ask('jobs.open', { jobId })).videos
      if (video === undefined) return expect.fail('no video')
      const taken = await desk.ask('videos.take-still', {
        jobId,
        id: video.id,
        offsetMs: 2400,
        picture: await frame(200),
      })
      const job = await desk.ask('jobs.open', { jobId })
      expect(job.photos).toMatchObject([
        {
          id: taken.photoId,
          number: 1,
          cameraId: video.cameraId,
          still: { videoId: video.id, videoNumber: 1, videoSha256: video.file.sha256, offsetMs: 2400 },
          time: { basis: 'camera-offset', instantMs: Date.UTC(2019, 6, 24, 8, 25, 42, 400) },
          file: { position: { latDeg: 32.0929, lonDeg: 34.862 }, widthPx: 320, heightPx: 568 },
        },
      ])
      const { entries } = await desk.ask('log.page', { jobId })
      expect(entries.at(-1)?.event).toMatchObject({
        type: 'still-taken',
        videoSha256: video.file.sha256,
        offsetMs: 2400,
        instantMs: Date.UTC(2019, 6, 24, 8, 25, 42, 400),
      })
      expect((await desk.ask('library.verify', {})).differences).toEqual([])
      const overrules = (await desk.ask('packet.problems', { jobId })).problems.map(({ id }) => ({
        problemId: id,
        reason: 'Only a test',
      }))
      const issue = async (videosInBundle: 'small' | 'none') => {
        const { taskId } = await desk.ask('packet.issue', { jobId, options: { videosInBundle }, overrules })
        expect((await desk.desk.tasks.ended(taskId)).error).toBeNull()
        const issued = (await desk.ask('packet.list', { jobId })).packets.toSorted((a, b) => b.revision - a.revision)
        return join(desk.library.layout.jobs, 'walk', 'issued', issued[0]?.bundleName ?? '')
      }
      const bundle = await issue('small')
      expect((await verifyBundle(bundle)).problems).toEqual([])
      const { hashes, kept } = await readBundle(bundle, new Set(['photos.csv', 'videos.csv', 'HOW-TO-VERIFY.txt']))
      expect([...hashes.values()]).toContain(video.file.sha256)
      expect([...hashes.keys()].filter((name) => name.startsWith('stills/'))).toHaveLength(1)
      expect(kept.get('photos.csv')?.toString()).toContain(`V-001,2.4,${video.file.sha256}`)
      expect(kept.get('videos.csv')?.toString()).toContain('2019-07-24T11:25:40+03:00')
      const without = await issue('none')
      expect((await verifyBundle(without)).problems).toEqual([])
      const told = await readBundle(without, new Set(['HOW-TO-VERIFY.txt']))
      expect([...told.hashes.values()]).not.toContain(video.file.sha256)
      expect(told.kept.get('HOW-TO-VERIFY.txt')?.toString()).toContain(video.file.sha256)
    })
  })

  it('refuses a still of another size, behind the end, of another kind, or stored before', async () => {
    await withVideo(async ({ desk, jobId }) => {
      const [video] = (await desk.ask('jobs.open', { jobId })).videos
      if (video === undefined) return expect.fail('no video')
      const take = (picture: string, offsetMs = 0) =>
        desk.ask('videos.take-still', { jobId, id: video.id, offsetMs, picture })
      await expect(take(await frame(1, [568, 320]))).rejects.toThrow('320 by 568 pixels')
      await expect(take(await frame(1), 60_000)).rejects.toThrow('shorter')
      await expect(take(Buffer.from('no picture').toString('base64'))).rejects.toThrow('JPEG or PNG')
      await take(await frame(2))
      await expect(take(await frame(2))).rejects.toThrow('already, as P-001')
      expect((await desk.ask('jobs.open', { jobId })).photos).toHaveLength(1)
      expect(readdirSync(join(desk.library.layout.jobs, 'walk', 'stills'))).toHaveLength(1)
    })
  })
})
