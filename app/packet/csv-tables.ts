import { causes } from '../evidence/catalog/causes.ts'
import { components } from '../evidence/catalog/components.ts'
import { conditions } from '../evidence/catalog/conditions.ts'
import {
  consequenceLabels,
  crackPathLabels,
  findingKindLabels,
  lookedAtLabels,
  photoRoleLabels,
} from '../evidence/catalog/labels.ts'
import { measurementWords } from '../evidence/catalog/measures.ts'
import type { CaseFile } from '../evidence/case-file.ts'
import { findingLabel, type Extent, type Finding } from '../evidence/finding.ts'
import { markupWords } from '../evidence/markup/words.ts'
import { photoLabel, type Photo } from '../evidence/photo.ts'
import { videoLabel } from '../evidence/video-label.ts'
import type { Video } from '../evidence/video.ts'
import { placedWords } from '../evidence/walk-order.ts'
import { markerPoint } from '../roof/draw-plan.ts'
import { houseOf } from '../roof/house.ts'
import { placeWords } from '../roof/place-words.ts'
import { findingZone, findingZoneWords } from '../roof/zones/finding-zone.ts'
import { jobZones } from '../roof/zones/job-zones.ts'
import { type Columns, type CsvTable, table } from './csv-table.ts'
import { howMuchWords } from './finding-words.ts'
import { localIso } from './format/local-iso.ts'
import { handCheckTable, readingColumns } from './field-test-tables.ts'
import { quantityTables } from './quantity-tables.ts'
import { talliesTable } from './tallies-table.ts'
import { videoTable } from './video-table.ts'
import { weatherTable } from './weather-table.ts'

/**
 * findings.csv, photos.csv, readings.csv, tallies.csv, videos.csv and weather.csv where there are any, and the tables of quantities of
 * an evidence bundle. Photos include those left out, with the reason.
 */
export function csvTables(caseFile: CaseFile, videos: readonly Video[] = []): readonly CsvTable[] {
  const names = namesIn(caseFile)
  return [
    table('findings.csv', findingColumns(names), [...caseFile.findings].sort(byNumber)),
    table('photos.csv', photoColumns(names), [...caseFile.photos].sort(byNumber)),
    table('readings.csv', readingColumns(caseFile, names), [...caseFile.readings].sort(byNumber)),
    handCheckTable(caseFile, names),
    talliesTable(caseFile),
    ...(videos.length === 0 ? [] : [videoTable(videos)]),
    ...quantityTables(caseFile),
    ...(caseFile.weather.sources.length === 0 ? [] : [weatherTable(caseFile)]),
  ]
}

function byNumber(a: { readonly number: number }, b: { readonly number: number }): number {
  return a.number - b.number
}

/** Labels of records by identity, empty for those that are not there. */
interface Names {
  readonly facet: (id: string | null) => string
  readonly finding: (id: string | null) => string
  readonly photo: (id: string) => string
  readonly findingsOfPhoto: (id: string) => string
  readonly marksOfPhoto: (id: string) => string
  /** Where the pin stands, in words; empty without a pin. */
  readonly placeByPin: (finding: Finding) => string
  /** The zone in a sentence; empty where zones can't be worked out. */
  readonly zone: (finding: Finding) => string
  /** Between which others a person placed a photo without a time. */
  readonly placed: (photo: Photo) => string
}

function namesIn({ job, facets, findings, photos, markups }: CaseFile): Names {
  const house = houseOf(facets, job.frame, job.sheet.property)
  const zones = jobZones({ facets, upAzimuthDeg: job.frame.upAzimuthDeg, property: job.sheet.property })
  const facetLetters = new Map<string, string>(facets.map(({ id, letter }) => [id, letter]))
  const findingNames = new Map<string, string>(findings.map(({ id, number }) => [id, findingLabel(number)]))
  const photoNames = new Map<string, string>(photos.map(({ id, number }) => [id, photoLabel(number)]))
  const byId = new Map(photos.map((photo) => [photo.id, photo]))
  const shown = new Map<string, string[]>()
  for (const { number, photos: used } of findings) {
    for (const { photoId } of used) shown.set(photoId, [...(shown.get(photoId) ?? []), findingLabel(number)])
  }
  const nameIn = (map: ReadonlyMap<string, string>) => (id: string | null) => (id === null ? '' : (map.get(id) ?? ''))
  return {
    facet: nameIn(facetLetters),
    finding: nameIn(findingNames),
    photo: nameIn(photoNames),
    placed: (photo) => placedWords(photo, byId) ?? '',
    findingsOfPhoto: (id) => (shown.get(id) ?? []).join(' '),
    placeByPin: ({ pin, facetId }) => (pin === null ? '' : placeWords(markerPoint(pin), house, facetId)),
    zone: (finding) => (zones.kind === 'drawn' ? findingZoneWords(findingZone(finding, zones)) : ''),
    marksOfPhoto: nameIn(new Map(markups.map((markup) => [markup.photoId, markupWords(markup)]))),
  }
}

function findingColumns(names: Names): Columns<Finding> {
  return [
    ['finding', ({ number }) => findingLabel(number)],
    ['kind', ({ kind }) => findingKindLabels[kind]],
    ['component', ({ component }) => components[component].label],
    ['condition', ({ condition }) => conditions[condition].label],
    ['extent_kind', ({ extent }) => extent.kind],
    ['extent_value', ({ extent }) => extentValue(extent)],
    ['extent_words', howMuchWords],
    ['degree', ({ degree }) => degree],
    ['facet', ({ facetId }) => names.facet(facetId)],
    ['place', ({ placeWords }) => placeWords],
    ['pin', ({ pin }) => pin?.kind ?? ''],
    ['place_by_pin', names.placeByPin],
    ['zone', names.zone],
    ['observed', ({ observation }) => observation],
    ['crack_path', ({ crackPath }) => (crackPath === null ? '' : crackPathLabels[crackPath])],
    ['measured', ({ measurements }) => measurements.map(measurementWords).join('; ')],
    ...(['debris', 'fastener', 'fractureFace', 'bedding', 'footTraffic'] as const).map(
      (key) =>
        [
          lookedAtLabels[key].heading.toLowerCase().replaceAll(' ', '_'),
          ({ lookedAt }: Finding) => lookedAt[key],
        ] as const,
    ),
    ['opinion_on_cause', ({ cause }) => causes[cause.cause].label],
    ['opinion_note', ({ cause }) => cause.note],
    ['seen_for_it', ({ cause }) => cause.indicatorsSeen.join('; ')],
    ['looked_for_not_seen', ({ cause }) => cause.indicatorsLookedForNotSeen.join('; ')],
    [
      'other_explanations',
      ({ cause }) =>
        cause.otherExplanations
          .map(({ explanation, whyLessLikely }) =>
            whyLessLikely === '' ? explanation : `${explanation} (${whyLessLikely})`,
          )
          .join('; '),
    ],
    ['consequences', ({ consequences }) => consequences.map((key) => consequenceLabels[key]).join('; ')],
    ['temporary_measure', ({ temporaryMeasure }) => temporaryMeasure],
    ['urgent', ({ urgent }) => yesNo(urgent)],
    ['shows_poorly', ({ showsPoorly }) => yesNo(showsPoorly)],
    [
      'photos',
      ({ photos }) => photos.map(({ photoId, role }) => `${names.photo(photoId)} ${photoRoleLabels[role]}`).join('; '),
    ],
  ]
}

function extentValue(extent: Extent): number | null {
  switch (extent.kind) {
    case 'exactly':
    case 'at-least':
    case 'about':
      return extent.count
    case 'length':
      return extent.lengthFt
    case 'area':
      return extent.areaSqFt
    case 'several':
    case 'examples':
    case 'whole-facet':
    case 'not-stated':
      return null
  }
}

function photoColumns(names: Names): Columns<Photo> {
  return [
    ['photo', ({ number }) => photoLabel(number)],
    ['file', ({ file }) => file.fileName],
    ['sha256', ({ file }) => file.sha256],
    ['bytes', ({ file }) => file.bytes],
    ['facet', ({ tags }) => names.facet(tags.facetId)],
    ['component', ({ tags }) => (tags.component === null ? '' : components[tags.component].label)],
    ['condition', ({ tags }) => (tags.condition === null ? '' : conditions[tags.condition].label)],
    ['role', ({ tags }) => (tags.role === null ? '' : photoRoleLabels[tags.role])],
    ['caption', ({ tags }) => tags.caption],
    ['findings', ({ id }) => names.findingsOfPhoto(id)],
    ['marks', ({ id }) => names.marksOfPhoto(id)],
    ['local_time', ({ time }) => localIso(time)],
    ['utc_offset_minutes', ({ time }) => time.offsetMinutes],
    ['time_basis', ({ time }) => time.basis],
    ['change_of_clocks', ({ time }) => time.changeOfClocks ?? ''],
    ['placed_by_hand', names.placed],
    ['camera_wrote', ({ file }) => file.written.raw],
    ['clock_correction_seconds', ({ time }) => time.correctionMs / 1000],
    ['latitude_deg', ({ file }) => file.position?.latDeg ?? null],
    ['longitude_deg', ({ file }) => file.position?.lonDeg ?? null],
    ['position_error_m', ({ file }) => file.position?.errorM ?? null],
    ['direction_deg', ({ file }) => file.direction?.azimuthDeg ?? null],
    ['direction_reference', ({ file }) => file.direction?.reference ?? ''],
    ['camera', ({ file }) => [file.camera.make, file.camera.model].filter((part) => part !== '').join(' ')],
    ['camera_serial', ({ file }) => file.camera.serial],
    ['still_from', ({ still }) => (still === null ? '' : videoLabel(still.videoNumber))],
    ['still_offset_seconds', ({ still }) => (still === null ? null : still.offsetMs / 1000)],
    ['still_video_sha256', ({ still }) => still?.videoSha256 ?? ''],
    ['left_out_because', ({ tags }) => tags.leftOutBecause],
  ]
}

function yesNo(value: boolean): string {
  return value ? 'yes' : 'no'
}
