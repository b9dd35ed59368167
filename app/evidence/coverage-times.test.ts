import { describe, expect, it } from 'vitest'
import { aCaseFile } from '../../tests/builders/case-file.ts'
import { aCamera, aFacet, aFinding, aJob, aPhoto } from '../../tests/builders/records.ts'
import type { Job } from '../job/job.ts'
import type { Camera } from './camera.ts'
import type { CaseFile } from './case-file.ts'
import { packetProblems } from './coverage.ts'
import type { Photo } from './photo.ts'
import { timeOfPhoto } from './time-of-photo.ts'

const position = { latDeg: 27.9506, lonDeg: -82.4572 }

function jobAt(place: { latDeg: number; lonDeg: number } | null, timeZone = ''): Job {
  const job = aJob()
  return { ...job, sheet: { ...job.sheet, property: { ...job.sheet.property, position: place, timeZone } } }
}

interface Taken {
  readonly local: string
  readonly gpsUtc?: string
  readonly brightness?: number
  readonly repeatedHour?: 'first' | 'second'
  readonly role?: 'document'
}

/** Photos of a camera as the desk would time them. */
function photosOf(job: Job, camera: Camera, taken: readonly Taken[]): readonly Photo[] {
  return taken.map(({ local, gpsUtc, brightness, repeatedHour, role }) => {
    const photo = aPhoto({
      cameraId: camera.id,
      ...(brightness === undefined ? {} : { brightness }),
      tags: { ...(repeatedHour === undefined ? {} : { repeatedHour }), ...(role === undefined ? {} : { role }) },
      file: {
        written: {
          tag: 'DateTimeOriginal',
          raw: local,
          local,
          offsetMinutes: null,
          gpsUtcMs: gpsUtc === undefined ? null : Date.parse(gpsUtc),
        },
      },
    })
    return { ...photo, time: timeOfPhoto(photo, camera.clock, job.sheet) }
  })
}
const found = (caseFile: Partial<CaseFile>, check: string) =>
  packetProblems(aCaseFile(caseFile)).filter(({ id }) => id.startsWith(`${check}:`))

describe('a photo whose clock disagrees with the sun', () => {
  // NOAA method: sunset in Tampa on 10 October 2024 at 19:05:11, UTC-4.
  const job = jobAt(position)
  const camera = aCamera()
  const at = (given: Omit<Taken, 'local'>, local = '2024-10-10T22:17:00') => ({
    job,
    cameras: [camera],
    photos: photosOf(job, camera, [{ local, ...given }]),
  })

  it('is told with how long after sunset it is, and what would make it fit', () => {
    const [told] = found(at({ brightness: 0.5 }), 'photo-lit-at-night')
    expect(told?.sentence).toContain('by its clock this photo was taken 3 h 12 min after sunset')
    expect(told?.sentence).toContain('It would fit if the clock were 4 h off.')
    expect(told?.weight).toBe('mend')
    expect(told?.fixes).toMatchObject([
      { kind: 'set-clock', cameraId: camera.id, clock: { correctionMs: -4 * 3_600_000 } },
    ])
  })

  it('is before sunrise where that is nearer', () => {
    // Sunrise at 07:27:40.
    const [told] = found(at({ brightness: 0.5 }, '2024-10-10T06:27:40'), 'photo-lit-at-night')
    expect(told?.sentence).toContain('1 h 00 min before sunrise')
  })

  it('is only worth a look when its picture is dark, or was not measured', () => {
    for (const given of [{ brightness: 0.05 }, {}]) {
      expect(found(at(given), 'photo-lit-at-night')).toEqual([])
      expect(found(at(given), 'photo-at-night')).toMatchObject([{ weight: 'notice' }])
    }
  })

  it('is not told in twilight, by day, or for a document', () => {
    expect(found(at({ brightness: 0.5 }, '2024-10-10T19:20:00'), 'photo-lit-at-night')).toEqual([])
    expect(found(at({ brightness: 0.5 }, '2024-10-10T12:00:00'), 'photo-lit-at-night')).toEqual([])
    expect(found(at({ brightness: 0.5, role: 'document' }), 'photo-lit-at-night')).toEqual([])
  })

  it('says polar night where the sun does not rise', () => {
    const north = jobAt({ latDeg: 78.2, lonDeg: 15.6 })
    const photos = photosOf(north, camera, [{ local: '2024-12-21T12:00:00', brightness: 0.5 }])
    const [told] = found({ job: north, cameras: [camera], photos }, 'photo-lit-at-night')
    expect(told?.sentence).toContain('in polar night')
    expect(told?.fixes).toBeUndefined()
  })

  it('can’t be told without a place, which is told instead', () => {
    const nowhere = jobAt(null, 'America/New_York')
    const photos = photosOf(nowhere, camera, [{ local: '2024-10-10T22:17:00', brightness: 0.5 }])
    const given = { job: nowhere, cameras: [camera], photos }
    expect(found(given, 'photo-lit-at-night')).toEqual([])
    expect(found(given, 'sun-no-place')).toMatchObject([{ place: { kind: 'sheet', field: 'property.position' } }])
  })
})

describe('a clock that disagrees with GPS time', () => {
  const job = jobAt(position)
  const camera = aCamera({ make: 'Example', model: 'Field 1' })
  const walk = (hour: string, fixAgeS: readonly number[]) =>
    photosOf(
      job,
      camera,
      fixAgeS.map((age, at) => ({
        local: `2026-03-14T${hour}:0${at}:00`,
        gpsUtc: new Date(Date.parse(`2026-03-14T18:0${at}:00Z`) - age * 1000).toISOString(),
      })),
    )

  it('by a whole hour is told as zone or daylight saving, with the correction at hand', () => {
    const [told] = found({ job, cameras: [camera], photos: walk('13', [2, 40, 5]) }, 'camera-clock')
    expect(told?.sentence).toContain('off by 1 h 00 min 00 s against its own GPS time in 3 photos')
    expect(told?.sentence).toContain('wrong zone or daylight saving')
    expect(told?.fixes).toMatchObject([{ clock: { correctionMs: 3_600_000 } }])
  })

  it('by what an old fix explains is not told', () => {
    expect(found({ job, cameras: [camera], photos: walk('14', [200, 240, 280]) }, 'camera-clock')).toEqual([])
  })

  it('is no longer told once it is corrected', () => {
    const right = { ...camera, clock: { correctionMs: 3_600_000, why: 'an hour' } }
    const photos = photosOf(job, right, [{ local: '2026-03-14T13:00:00', gpsUtc: '2026-03-14T18:00:00Z' }])
    expect(found({ job, cameras: [right], photos }, 'camera-clock')).toEqual([])
  })
})

describe('two cameras that never overlap', () => {
  it('but would by a whole hour are told, and the one that took fewer is doubted', () => {
    const job = jobAt(position)
    const [one, other] = [aCamera({ model: 'One' }), aCamera({ model: 'Two' })]
    const minutes = (hour: number, every: number, count: number) =>
      Array.from({ length: count }, (_, at) => ({
        local: `2026-03-14T${hour}:${String(at * every).padStart(2, '0')}:00`,
      }))
    const photos = [...photosOf(job, one, minutes(14, 5, 10)), ...photosOf(job, other, minutes(13, 10, 4))]
    const told = found({ job, cameras: [one, other], photos }, 'camera-clock')
    expect(told).toHaveLength(1)
    expect(told[0]?.id).toBe(`camera-clock:cameras:${other.id}`)
    expect(told[0]?.sentence).toContain('+1 h added would bring them together')
  })
})

describe('photos at a change of clocks', () => {
  const job = jobAt(position)
  const camera = aCamera()
  const given = (taken: Taken) => ({ job, cameras: [camera], photos: photosOf(job, camera, [taken]) })

  it('in the hour that comes twice are told, with both answers at hand, until a person chose', () => {
    const [told] = found(given({ local: '2026-11-01T01:30:00' }), 'photo-repeated-hour')
    expect(told?.weight).toBe('mend')
    expect(told?.fixes).toMatchObject([{ set: { repeatedHour: 'first' } }, { set: { repeatedHour: 'second' } }])
    expect(found(given({ local: '2026-11-01T01:30:00', repeatedHour: 'second' }), 'photo-repeated-hour')).toEqual([])
  })

  it('in the hour that is skipped are worth a look', () => {
    expect(found(given({ local: '2026-03-08T02:30:00' }), 'photo-skipped-hour')).toMatchObject([{ weight: 'notice' }])
  })
})

describe('one-step mends', () => {
  it('make a photo of the slope that plays no part yet its overview', () => {
    const facet = aFacet({ letter: 'A' })
    const photo = aPhoto({ number: 12, tags: { facetId: facet.id } })
    const [told] = found({ facets: [facet], photos: [photo] }, 'facet-no-overview')
    expect(told?.fixes).toMatchObject([
      { kind: 'tag-photo', label: 'Make P-012 the overview of facet A', photoId: photo.id, set: { role: 'overview' } },
    ])
  })

  it('say so where no photo shows a slope at all', () => {
    const [told] = found({ facets: [aFacet({ letter: 'A' })], photos: [aPhoto()] }, 'facet-no-overview')
    expect(told?.sentence).toContain('No photo shows facet A at all')
    expect(told?.fixes).toBeUndefined()
  })

  it('show a close-up of the same place, part and condition with the finding', () => {
    const facet = aFacet()
    const finding = aFinding({
      number: 3,
      facetId: facet.id,
      component: 'field-tile',
      condition: 'slipped',
      photos: [{ photoId: 'photo-mid', role: 'mid' }],
    })
    const same = { facetId: facet.id, component: finding.component, condition: finding.condition }
    const photos = [
      aPhoto({ id: 'photo-mid', tags: { ...same, role: 'mid' } }),
      aPhoto({ id: 'photo-close', number: 4, tags: { ...same, role: 'close' } }),
    ]
    const [told] = found({ facets: [facet], findings: [finding], photos }, 'finding-no-close')
    expect(told?.fixes).toMatchObject([{ kind: 'show-photo', photoId: 'photo-close', role: 'close' }])
  })

  it('leave an untagged photo out, and put a left-out one that a finding rests on back in', () => {
    const photo = aPhoto({ number: 7 })
    expect(found({ photos: [photo] }, 'photo-untagged')[0]?.fixes).toMatchObject([
      { set: { leftOutBecause: 'Shows nothing that is needed' } },
    ])
    const out = aPhoto({ tags: { leftOutBecause: 'blurred' } })
    const finding = aFinding({ photos: [{ photoId: out.id, role: 'close' }] })
    expect(found({ photos: [out], findings: [finding] }, 'finding-photo-left-out')[0]?.fixes).toMatchObject([
      { set: { leftOutBecause: null } },
    ])
  })
})

describe('the pictures of the house', () => {
  const direction = (azimuthDeg: number) => ({ azimuthDeg, reference: 'true' as const })
  const side = (azimuthDeg: number) =>
    aPhoto({ tags: { role: 'elevation' }, file: { direction: direction(azimuthDeg) } })

  it('lack a side that no photo looks at, however many look at another', () => {
    const photos = [side(0), side(10), side(85), side(170)]
    expect(found({ photos }, 'house-sides')[0]?.sentence).toContain('Only 3 of the four sides')
    expect(found({ photos: [...photos, side(265)] }, 'house-sides')).toEqual([])
  })

  it('lack the front until a caption names it', () => {
    expect(found({ photos: [side(0)] }, 'house-front')).toHaveLength(1)
    const front = aPhoto({ tags: { role: 'elevation', caption: 'Front from the street' } })
    expect(found({ photos: [front] }, 'house-front')).toEqual([])
  })
})
