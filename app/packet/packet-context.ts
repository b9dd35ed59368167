import type { PhotoRole } from '../evidence/catalog/keys.ts'
import type { Finding } from '../evidence/finding.ts'
import type { Markup } from '../evidence/markup.ts'
import type { Photo } from '../evidence/photo.ts'
import { jobZone } from '../evidence/job-zone.ts'
import type { Reading } from '../fieldtest/reading.ts'
import type { FacetId, FindingId, PhotoId } from '../job/ids.ts'
import type { JobSheet } from '../job/sheet.ts'
import { drawPlan } from '../roof/draw-plan.ts'
import type { Facet } from '../roof/facet.ts'
import type { House } from '../roof/front-words.ts'
import { facetName, houseOf } from '../roof/house.ts'
import type { PlanDrawing } from '../roof/plan-drawing.ts'
import { jobZones, type JobZones } from '../roof/zones/job-zones.ts'
import { keptBackPhotos } from './kept-back.ts'
import type { PacketInput } from './packet-input.ts'

/** A finding that a photo shows, and the part the photo plays in it. */
interface ShownFinding {
  readonly finding: Finding
  readonly role: PhotoRole
}

/** The case file sorted, and looked up in every direction that the sections need. */
export interface PacketContext {
  readonly input: PacketInput
  readonly sheet: JobSheet
  /** IANA name in which log times are given: the sheet's, else the place's, else UTC. */
  readonly zone: string
  /** "Revision 2", or "Draft, not issued". */
  readonly revisionLabel: string
  readonly facets: readonly Facet[]
  readonly findings: readonly Finding[]
  readonly readings: readonly Reading[]
  /** Photos that the packet shows, by number. */
  readonly photos: readonly Photo[]
  /** Photos that are only in custody, by number. */
  readonly leftOut: readonly Photo[]
  readonly facetById: ReadonlyMap<FacetId, Facet>
  readonly findingById: ReadonlyMap<FindingId, Finding>
  readonly photoById: ReadonlyMap<PhotoId, Photo>
  readonly markupByPhoto: ReadonlyMap<PhotoId, Markup>
  /** Photos whose originals are not in the evidence bundle. */
  readonly keptBack: ReadonlySet<PhotoId>
  readonly findingsByPhoto: ReadonlyMap<PhotoId, readonly ShownFinding[]>
  readonly readingsByPhoto: ReadonlyMap<PhotoId, readonly Reading[]>
  readonly readingsByFinding: ReadonlyMap<FindingId, readonly Reading[]>
  /** What places are named by. */
  readonly house: House
  /** Edge zones as far as the sheet has what they need. */
  readonly zones: JobZones
  /** All facets, pins and cameras; sections show parts of it. */
  readonly plan: PlanDrawing
}

/** Sorts and indexes the input once for all sections. */
export function makeContext(input: PacketInput): PacketContext {
  const { caseFile } = input
  const { job } = caseFile
  const house = houseOf(caseFile.facets, job.frame, job.sheet.property)
  const facets = caseFile.facets.map((facet) => ({ ...facet, name: facetName(facet, house) })).sort(byLetter)
  const findings = [...caseFile.findings].sort((a, b) => a.number - b.number)
  const readings = [...caseFile.readings].sort((a, b) => a.number - b.number)
  const photos = [...caseFile.photos].sort((a, b) => a.number - b.number)
  return {
    input,
    sheet: job.sheet,
    zone: jobZone(job),
    revisionLabel: input.revision === null ? 'Draft, not issued' : `Revision ${input.revision}`,
    facets,
    findings,
    readings,
    photos: photos.filter(({ tags }) => tags.leftOutBecause === null),
    leftOut: photos.filter(({ tags }) => tags.leftOutBecause !== null),
    facetById: new Map(facets.map((facet) => [facet.id, facet])),
    findingById: new Map(findings.map((finding) => [finding.id, finding])),
    photoById: new Map(photos.map((photo) => [photo.id, photo])),
    markupByPhoto: new Map(caseFile.markups.map((markup) => [markup.photoId, markup])),
    keptBack: keptBackPhotos(caseFile, input.options),
    findingsByPhoto: grouped(
      findings.flatMap((finding) => finding.photos.map(({ photoId, role }) => [photoId, { finding, role }] as const)),
    ),
    readingsByPhoto: grouped(readings.flatMap((reading) => reading.photoIds.map((id) => [id, reading] as const))),
    readingsByFinding: grouped(
      readings.flatMap((reading) => (reading.findingId === null ? [] : [[reading.findingId, reading] as const])),
    ),
    house,
    zones: jobZones({
      facets: caseFile.facets,
      upAzimuthDeg: job.frame.upAzimuthDeg,
      property: job.sheet.property,
    }),
    plan: drawPlan({
      facets,
      findings,
      photos,
      frame: job.frame,
      frontAzimuthDeg: job.sheet.property.frontAzimuthDeg,
      doorAt: job.sheet.property.doorAt,
    }),
  }
}

/** A, B, ... Z, AA: shorter labels first, then by character, the same on every machine. */
function byLetter(a: Facet, b: Facet): number {
  if (a.letter.length !== b.letter.length) return a.letter.length - b.letter.length
  return a.letter < b.letter ? -1 : a.letter > b.letter ? 1 : 0
}

function grouped<Key, Value>(pairs: readonly (readonly [Key, Value])[]): ReadonlyMap<Key, readonly Value[]> {
  const groups = new Map<Key, Value[]>()
  for (const [key, value] of pairs) {
    const group = groups.get(key)
    if (group === undefined) groups.set(key, [value])
    else group.push(value)
  }
  return groups
}
