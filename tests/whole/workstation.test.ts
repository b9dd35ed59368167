import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { writeCameraCard } from '../builders/camera-card.ts'
import { ensureBuilt, ensurePagesBuilt } from '../built-program.ts'
import { useScratch } from '../library/scratch.ts'
import { browserPath, openWindow, type Window } from './browser.ts'
import { serveLibrary, type ServedLibrary } from './serve-library.ts'
import { assessing } from './steps/assessing.ts'
import { checkingThePacket } from './steps/checking-the-packet.ts'
import { drawingTheRoof } from './steps/drawing-the-roof.ts'
import { fillingTheSheet } from './steps/filling-the-sheet.ts'
import { firstRun } from './steps/first-run.ts'
import { judgingARepair } from './steps/judging-a-repair.ts'
import { issuingThePacket } from './steps/issuing-the-packet.ts'
import { markingPhotos } from './steps/marking-photos.ts'
import { keepingTheDiary } from './steps/keeping-the-diary.ts'
import { lookingBack } from './steps/looking-back.ts'
import { outliningTheRoof } from './steps/outlining-the-roof.ts'
import { taggingPhotos } from './steps/tagging-photos.ts'
import { takingNarrationIn } from './steps/taking-narration-in.ts'
import { takingPhotosIn } from './steps/taking-photos-in.ts'
import { tracingAnImage } from './steps/tracing-an-image.ts'
import { testingTiles } from './steps/testing-tiles.ts'
import { readingTheWeather } from './steps/reading-the-weather.ts'
import { pricingTheWork } from './steps/pricing-the-work.ts'
import type { Work } from './steps/work.ts'
import { workingWithVideo } from './steps/working-with-video.ts'
import { tellingTheTime } from './steps/telling-the-time.ts'
import { writingFindings } from './steps/writing-findings.ts'
import { zonesAndQuantities } from './steps/zones-and-quantities.ts'

const skipped = browserPath === null ? ' (skipped: no Chromium on this machine)' : ''

describe.skipIf(browserPath === null)(`a job from the card to the packet, in a browser${skipped}`, () => {
  const scratch = useScratch()
  let served: ServedLibrary | undefined
  let window: Window | undefined
  let atWork: Work
  const work = () => atWork

  beforeAll(async () => {
    await ensureBuilt()
    await ensurePagesBuilt()
    const card = scratch('card')
    await writeCameraCard(card)
    served = await serveLibrary(scratch('library'))
    window = await openWindow(served.address)
    atWork = { page: window.page, served, card, desktop: scratch('desktop') }
  })

  // Each step rests on the ones before it: after one that failed, the others would only wait in vain.
  let hasFailed = false
  beforeEach((step) => step.skip(hasFailed, 'a step before it failed'))
  afterEach(({ task }) => {
    hasFailed ||= task.result?.state === 'fail'
  })

  afterAll(async () => {
    await window?.close()
    await served?.stop()
  })

  describe('first run', () => {
    firstRun(work)
  })
  describe('taking photos in', () => {
    takingPhotosIn(work)
  })
  describe('the job sheet', () => {
    fillingTheSheet(work)
  })
  describe('the roof plan', () => {
    drawingTheRoof(work)
  })
  describe('outlines', () => {
    outliningTheRoof(work)
  })
  describe('an image under the roof plan', () => {
    tracingAnImage(work)
  })
  describe('tagging photos', () => {
    taggingPhotos(work)
  })
  describe('time and what is missing', () => {
    tellingTheTime(work)
  })
  describe('drawing over photos', () => {
    markingPhotos(work)
  })
  describe('findings', () => {
    writingFindings(work)
  })
  describe('zones and quantities', () => {
    zonesAndQuantities(work)
  })
  describe('field tests', () => {
    testingTiles(work)
  })
  describe('scope and cost', () => {
    pricingTheWork(work)
  })
  describe('the assessment', () => {
    assessing(work)
    judgingARepair(work)
  })
  describe('the packet', () => {
    issuingThePacket(work)
  })
  describe('the packet in other hands', () => {
    checkingThePacket(work)
  })
  describe('looking back', () => {
    lookingBack(work)
  })
  describe('the diary', () => {
    keepingTheDiary(work)
  })
  describe('narration', () => {
    takingNarrationIn(work)
  })
  describe('a phone with a video', () => {
    workingWithVideo(work)
  })

  describe('the weather', () => {
    readingTheWeather(work)
  })

  it('nothing was complained of in the console, and nothing was asked of the network', () => {
    expect(window?.complaints).toEqual([])
  })
})
