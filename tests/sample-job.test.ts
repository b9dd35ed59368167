import { readFile, readdir, stat } from 'node:fs/promises'
import { join } from 'node:path'
import exifr from 'exifr'
import { Temporal } from 'temporal-polyfill'
import { describe, expect, it } from 'vitest'
import { z } from 'zod'
import { describedJobSchema } from '../app/job/described-job.ts'
import type { PlanPoint } from '../app/job/places.ts'
import { readPriceFile } from '../main/desk/price-file.ts'

const folder = join(import.meta.dirname, '../sample-jobs/heron-spit')
const job = describedJobSchema.parse(JSON.parse(await readFile(join(folder, 'job.json'), 'utf8')))

const tagsSchema = z.object({
  Make: z.string(),
  Model: z.string(),
  SerialNumber: z.string().optional(),
  BodySerialNumber: z.string().optional(),
  ImageDescription: z.string(),
  DateTimeOriginal: z.string(),
  OffsetTimeOriginal: z.string().optional(),
  latitude: z.number().optional(),
  longitude: z.number().optional(),
  GPSImgDirectionRef: z.string().optional(),
  GPSHPositioningError: z.number().optional(),
  Orientation: z.number(),
})

const pictures = await Promise.all(
  job.photos.map(async (photo) => {
    const file = join(folder, 'photos', photo.file)
    const tags = tagsSchema.parse(
      await exifr.parse(file, { gps: true, ifd0: {}, exif: true, reviveValues: false, translateValues: false }),
    )
    const serial = tags.BodySerialNumber ?? tags.SerialNumber ?? ''
    const camera = job.cameras.find((c) => c.make === tags.Make && c.model === tags.Model && c.serial === serial)
    return { photo, file, tags, camera, bytes: (await stat(file)).size }
  }),
)

/** Outline of the drip edge, written down here a second time from the drawing of the house. */
const outlineAreaSqFt = 60 * 34 + 14 * 6 + 22 * 14 + 18 * 8

describe('the sample job', () => {
  it('names exactly the pictures that are in its folder', async () => {
    const inFolder = (await readdir(join(folder, 'photos'))).sort()
    expect(job.photos.map((p) => p.file).sort()).toEqual(inFolder)
    expect(new Set(inFolder).size).toBe(inFolder.length)
  })

  it('has an invented price book, every row of which can be taken and says that it is invented', async () => {
    const bytes = await readFile(join(folder, 'prices', job.scope?.prices ?? ''))
    const { rows, lacks } = readPriceFile(bytes, null)
    expect(lacks).toEqual([])
    expect(rows.flatMap(({ messages }) => messages)).toEqual([])
    expect(rows.filter(({ price }) => price?.description.includes('invented') !== true)).toEqual([])
    const codes = rows.map(({ price }) => price?.code)
    expect(job.scope?.links.filter(({ code }) => code !== null && !codes.includes(code))).toEqual([])
  })

  it('stays under 20 MB', () => {
    expect(pictures.reduce((sum, p) => sum + p.bytes, 0)).toBeLessThan(20_000_000)
  })

  it('has facets that add up to the outline and turn the same way', () => {
    const areas = job.facets.map((f) => signedArea(f.outline))
    expect(Math.min(...areas)).toBeGreaterThan(0)
    expect(Math.abs(areas.reduce((a, b) => a + b, 0) - outlineAreaSqFt)).toBeLessThan(1e-6)
  })

  it('has facets that face away from the middle of the house, by their eaves', () => {
    const byEave = job.facets.map((facet) => {
      const [a, b] = facet.outline
      if (a === undefined || b === undefined) throw new Error('A facet has fewer than two corners.')
      const outward = (Math.atan2(b.yFt - a.yFt, -(b.xFt - a.xFt)) * 180) / Math.PI
      return [facet.letter, Math.round((outward + job.frame.upAzimuthDeg + 720) % 360)]
    })
    expect(job.facets.map((f) => [f.letter, f.downslopeAzimuthDeg])).toEqual(byEave)
  })

  it('shows every facet in an overview', () => {
    const shown = new Set(
      job.photos.filter((p) => p.role === 'overview' && p.leftOutBecause === null).map((p) => p.facet),
    )
    expect(job.facets.filter((f) => !shown.has(f.letter)).map((f) => f.letter)).toEqual([])
  })

  it('has a picture for every finding, and only pictures, facets and findings that exist', () => {
    const files = new Set(job.photos.map((p) => p.file))
    const letters = new Set(job.facets.map((f) => f.letter))
    const numbers = new Set(job.findings.map((f) => f.number))
    expect(job.findings.filter((f) => f.photos.length === 0).map((f) => f.number)).toEqual([])
    for (const finding of job.findings) {
      for (const { file } of finding.photos) expect(files).toContain(file)
      if (finding.facet !== null) expect(letters).toContain(finding.facet)
    }
    for (const reading of job.readings) {
      for (const file of reading.photos) expect(files).toContain(file)
      if (reading.finding !== null) expect(numbers).toContain(reading.finding)
    }
    expect(numbers.size).toBe(job.findings.length)
  })

  it('pins findings and readings on their own facet', () => {
    const near = (at: PlanPoint, letter: string | null) => {
      const facet = job.facets.find((f) => f.letter === letter)
      return facet === undefined || insideOrClose(facet.outline, at, 0.02)
    }
    const strayFindings = job.findings.filter(({ facet, pin }) => {
      if (pin === null) return false
      return (pin.kind === 'point' ? [pin.at] : pin.points).some((at) => !near(at, facet))
    })
    expect(strayFindings.map((f) => f.number)).toEqual([])
    const strayReadings = job.readings.filter(({ facet, at }) => at !== null && !near(at, facet))
    expect(strayReadings.map((r) => r.number)).toEqual([])
  })

  it('says in every file that the picture is rendered', () => {
    for (const { tags } of pictures) expect(tags.ImageDescription).toMatch(/^Rendered picture of an invented house/)
  })

  it('names the camera that each file names, and corrects one by seven minutes', () => {
    expect(pictures.filter((p) => p.camera === undefined).map((p) => p.photo.file)).toEqual([])
    expect(job.cameras.map((c) => c.clock.correctionMs).sort((a, b) => a - b)).toEqual([0, 420_000])
  })

  it('has a phone that writes place and offset, and a compact that writes neither', () => {
    const written = pictures.map(({ tags, camera }) => ({
      slow: camera?.clock.correctionMs === 420_000,
      offset: tags.OffsetTimeOriginal,
      reference: tags.GPSImgDirectionRef,
      placed: tags.latitude !== undefined,
    }))
    for (const { slow, ...rest } of written) {
      expect(rest).toEqual(
        slow
          ? { offset: undefined, reference: undefined, placed: false }
          : { offset: '-05:00', reference: 'T', placed: true },
      )
    }
  })

  it('has positions within a few metres of the house', () => {
    const home = job.frame.anchor
    if (home === null) throw new Error('The sample job has no anchor.')
    for (const { tags } of pictures) {
      if (tags.latitude === undefined || tags.longitude === undefined) continue
      const north = (tags.latitude - home.latDeg) * 110_840
      const east = (tags.longitude - home.lonDeg) * 111_320 * Math.cos((home.latDeg * Math.PI) / 180)
      expect(Math.hypot(north, east)).toBeLessThan(45)
      expect(tags.GPSHPositioningError).toBeGreaterThan(2)
    }
  })

  it('has corrected times that follow the walk', () => {
    const instants = pictures.map((p) => trueInstantMs(p))
    expect(instants).toEqual([...instants].sort((a, b) => a - b))
  })

  it('was taken by daylight on the inspection date', () => {
    const home = job.frame.anchor
    if (home === null) throw new Error('The sample job has no anchor.')
    for (const picture of pictures) {
      const instant = trueInstantMs(picture)
      const local = Temporal.Instant.fromEpochMilliseconds(instant).toZonedDateTimeISO('America/New_York')
      expect(job.sheet.inspection.dates).toContain(local.toPlainDate().toString())
      expect(roughSunElevationDeg(instant, home)).toBeGreaterThan(20)
    }
  })

  it('never speaks of coverage or of what brought a thing about as a fact', () => {
    const text = JSON.stringify(job.findings) + JSON.stringify(job.sheet.inspection)
    expect(text).not.toMatch(/caused by|coverage|is covered|must be replaced|totaled/i)
  })
})

/** Shoelace rule. */
function signedArea(points: readonly PlanPoint[]): number {
  return (
    points.reduce((sum, a, i) => {
      const b = points[(i + 1) % points.length] ?? a
      return sum + a.xFt * b.yFt - b.xFt * a.yFt
    }, 0) / 2
  )
}

function insideOrClose(points: readonly PlanPoint[], at: PlanPoint, slackFt: number): boolean {
  let inside = false
  for (const [i, a] of points.entries()) {
    const b = points[(i + 1) % points.length] ?? a
    if (distanceToEdge(a, b, at) <= slackFt) return true
    if (a.yFt > at.yFt !== b.yFt > at.yFt && at.xFt < ((b.xFt - a.xFt) * (at.yFt - a.yFt)) / (b.yFt - a.yFt) + a.xFt)
      inside = !inside
  }
  return inside
}

function distanceToEdge(a: PlanPoint, b: PlanPoint, p: PlanPoint): number {
  const [dx, dy] = [b.xFt - a.xFt, b.yFt - a.yFt]
  const t = Math.max(0, Math.min(1, ((p.xFt - a.xFt) * dx + (p.yFt - a.yFt) * dy) / (dx * dx + dy * dy)))
  return Math.hypot(p.xFt - a.xFt - t * dx, p.yFt - a.yFt - t * dy)
}

function trueInstantMs({ tags, camera, photo }: (typeof pictures)[number]): number {
  const iso = tags.DateTimeOriginal.replace(/^(\d+):(\d+):(\d+) /, '$1-$2-$3T')
  if (camera === undefined) throw new Error(`${photo.file} is from no camera of the job.`)
  return (
    Temporal.PlainDateTime.from(iso).toZonedDateTime('America/New_York').epochMilliseconds + camera.clock.correctionMs
  )
}

/** Cooper's declination formula (1969) and mean solar time without the equation of time: good to about 4 degrees. */
function roughSunElevationDeg(instantMs: number, place: { latDeg: number; lonDeg: number }): number {
  const rad = Math.PI / 180
  const utc = Temporal.Instant.fromEpochMilliseconds(instantMs).toZonedDateTimeISO('UTC')
  const declination = 23.45 * Math.sin(((360 * (284 + utc.dayOfYear)) / 365) * rad) * rad
  const hourAngle = ((utc.hour + utc.minute / 60) * 15 + place.lonDeg - 180) * rad
  const lat = place.latDeg * rad
  return (
    Math.asin(Math.sin(lat) * Math.sin(declination) + Math.cos(lat) * Math.cos(declination) * Math.cos(hourAngle)) / rad
  )
}
