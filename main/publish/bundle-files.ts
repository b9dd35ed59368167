import { join } from 'node:path'
import canonicalize from 'canonicalize'
import { stringify } from 'csv-stringify/sync'
import { csvTables } from '../../app/packet/csv-tables.ts'
import { KEPT_BACK, keptBackPhotos, keptBackText } from '../../app/packet/kept-back.ts'
import type { PacketInput } from '../../app/packet/packet-input.ts'
import { isInBundle } from '../../app/packet/videos-in-bundle.ts'
import { videoLabel } from '../../app/evidence/video-label.ts'
import { photoFolder } from '../library/layout.ts'
import { planGeoJson } from '../../app/packet/plan-geojson.ts'
import { supportingPicturesTable } from '../../app/packet/supporting-pictures.ts'
import { scopeCsv } from '../../app/packet/scope-table.ts'
import { howToVerifyText } from '../../app/packet/verifying.ts'
import { drawPlan } from '../../app/roof/draw-plan.ts'
import { planToSvg } from '../../app/roof/plan-svg.ts'
import type { PacketFiles } from './packet-files.ts'
import type { BundleFile } from './write-bundle.ts'

/** Everything that goes into an evidence bundle beside its manifest. */
export function bundleFiles({
  input,
  files,
  pdf,
  marked,
}: {
  input: PacketInput
  files: PacketFiles
  pdf: string
  /** Annotated copies, written already. */
  marked: readonly BundleFile[]
}): readonly BundleFile[] {
  const { caseFile } = input
  const { job } = caseFile
  const keptBack = keptBackPhotos(caseFile, input.options)
  const originals = files.photos.map((photo) => ({
    isKeptBack: keptBack.has(photo.id),
    name: `${photo.still === null ? 'originals' : 'stills'}/${photo.storedName}`,
    path: join(photoFolder(files.places, photo), photo.storedName),
    sha256: photo.file.sha256,
  }))
  const geojson = planGeoJson(caseFile)
  const supporting = supportingPicturesTable(input)
  const { frontAzimuthDeg, doorAt } = job.sheet.property
  return [
    { name: 'packet.pdf', path: pdf },
    howToVerify(input),
    ...[
      ...csvTables(caseFile, input.videos),
      ...(supporting === null ? [] : [supporting]),
      ...(caseFile.scope.choices.isOffered && input.options.cost ? [scopeCsv(caseFile)] : []),
    ].map(({ name, header, rows }) =>
      text(name, stringify([[...header], ...rows.map((row) => [...row])], { bom: true, record_delimiter: 'windows' })),
    ),
    text('log.jsonl', input.log.map((entry) => `${canonicalize(entry) ?? ''}\n`).join('')),
    text('plan.svg', planToSvg(drawPlan({ ...caseFile, frame: job.frame, frontAzimuthDeg, doorAt }))),
    ...(geojson === null ? [] : [text('plan.geojson', `${JSON.stringify(geojson, null, 1)}\n`)]),
    // The hash recorded on arrival, not one made now: a file that changed since then fails the check, as it should.
    ...originals.filter(({ isKeptBack }) => !isKeptBack).map(({ name, path, sha256 }) => ({ name, path, sha256 })),
    ...(keptBack.size === 0 ? [] : [text(KEPT_BACK, keptBackText(originals.filter(({ isKeptBack }) => isKeptBack)))]),
    ...marked,
    ...files.videos.map(({ storedName, file }) => ({
      name: `originals/${storedName}`,
      path: join(files.places.originals, storedName),
      sha256: file.sha256,
    })),
    ...files.attachments.map(({ storedName, attachment }) => ({
      name: `attachments/${storedName}`,
      path: join(files.places.attachments, storedName),
      sha256: attachment.file.sha256,
    })),
  ]
}

function howToVerify(input: PacketInput): BundleFile {
  const { number } = input.caseFile.job
  return text(
    'HOW-TO-VERIFY.txt',
    howToVerifyText({
      jobNumber: number,
      revisionLabel: `Revision ${input.revision ?? 0}`,
      headHash: input.headHash,
      programVersion: input.programVersion,
      videosLeftOut: input.videos
        .filter(({ file }) => !isInBundle(file, input.options.videosInBundle))
        .map(({ number, file }) => ({ label: `${videoLabel(number)} ${file.fileName}`, sha256: file.sha256 })),
    }),
  )
}

function text(name: string, content: string): BundleFile {
  return { name, bytes: Buffer.from(content, 'utf8') }
}
