import { mkdir, readFile, stat } from 'node:fs/promises'
import { join } from 'node:path'
import type { FileRef } from '../../app/contract/files.ts'
import { derivedNames, photoFolder, underlayName } from '../library/layout.ts'
import { makePreviews } from '../library/previews/make-previews.ts'
import { renderAtSize } from '../library/previews/render-at-size.ts'
import { makeUnderlayPicture } from '../library/previews/underlay-picture.ts'
import { writeWhole } from '../library/write-file.ts'
import { findPacket } from '../store/packets.ts'
import { findAttachment } from '../store/records/attachments.ts'
import { planImageOriginal } from '../store/records/plan-images.ts'
import { findPhoto, type StoredPhoto } from '../store/records/photos.ts'
import { findVideo } from '../store/records/videos.ts'
import type { DeskWorld } from './desk-world.ts'
import { draftPath } from './drafts.ts'
import { needJobLayout } from './snapshot.ts'

/** A file ready to be sent. */
export interface ServedFile {
  readonly path: string
  readonly mediaType: string
  /** Set when the file is for saving rather than for showing. */
  readonly saveAs: string | null
}

/** Types that a browser may show in place; anything else is only ever offered for saving. */
const SHOWN = new Set(['image/jpeg', 'image/png', 'image/webp'])

/** Finds a file of the library by kind and identity; null when there is none. */
export async function servedFile(world: DeskWorld, ref: FileRef): Promise<ServedFile | null> {
  const found = await locate(world, ref)
  if (found === null) return null
  return (await sizeOf(found.path)) === null ? null : found
}

async function locate(world: DeskWorld, ref: FileRef): Promise<ServedFile | null> {
  const { db } = world.library
  switch (ref.kind) {
    case 'thumbnail':
    case 'preview': {
      const photo = findPhoto(db, ref.id)
      return photo === null || photo.preview === 'none' ? null : derivedFile(world, photo, ref.kind)
    }
    case 'original': {
      const photo = findPhoto(db, ref.id)
      if (photo === null) return null
      const { mediaType, fileName } = photo.file
      const path = join(photoFolder(needJobLayout(world.library, photo.jobId), photo), photo.storedName)
      return {
        path,
        ...(SHOWN.has(mediaType)
          ? { mediaType, saveAs: null }
          : { mediaType: 'application/octet-stream', saveAs: fileName }),
      }
    }
    case 'full': {
      const photo = findPhoto(db, ref.id)
      if (photo === null || photo.preview === 'none') return null
      if (SHOWN.has(photo.file.mediaType)) return locate(world, { kind: 'original', id: ref.id })
      return fullPicture(world, photo)
    }
    case 'video': {
      const video = findVideo(db, ref.id)
      if (video === null) return null
      const path = join(needJobLayout(world.library, video.jobId).originals, video.storedName)
      return { path, mediaType: playedType(video.file.mediaType), saveAs: null }
    }
    case 'underlay':
      return underlayFile(world, ref.id)
    case 'attachment': {
      const kept = findAttachment(db, ref.id)
      if (kept === null) return null
      const path = join(needJobLayout(world.library, kept.jobId).attachments, kept.storedName)
      return { path, mediaType: 'application/octet-stream', saveAs: kept.attachment.file.fileName }
    }
    case 'packet':
    case 'bundle': {
      const found = findPacket(db, ref.id)
      if (found === null) return null
      const name = ref.kind === 'packet' ? found.packet.pdfName : found.packet.bundleName
      const path = join(needJobLayout(world.library, found.jobId).issued, name)
      return ref.kind === 'packet'
        ? { path, mediaType: 'application/pdf', saveAs: null }
        : { path, mediaType: 'application/zip', saveAs: name }
    }
    case 'draft':
      return { path: draftPath(world, ref.id), mediaType: 'application/pdf', saveAs: null }
  }
}

/** Browsers refuse QuickTime by its name, though its boxes are those of MP4. */
function playedType(mediaType: string): string {
  return mediaType === 'video/quicktime' || mediaType === 'video/x-m4v' ? 'video/mp4' : mediaType
}

/** Quality of a picture that stands in for an original which browsers can't show. */
const FULL_QUALITY = 92
const MOST_EDGE_PX = 30_000

/** Made when it is first asked for and kept, since decoding a phone's picture takes a second or two. */
async function fullPicture(world: DeskWorld, photo: StoredPhoto): Promise<ServedFile | null> {
  const places = needJobLayout(world.library, photo.jobId)
  const path = join(places.derived, derivedNames(photo.id).full)
  if (((await sizeOf(path)) ?? 0) === 0) {
    const { orientation, mediaType } = photo.file
    const original = join(photoFolder(places, photo), photo.storedName)
    const size = { longEdgePx: MOST_EDGE_PX, quality: FULL_QUALITY, orientation, mediaType }
    const made = await renderAtSize(original, size)
    if (!made.ok) return null
    await mkdir(places.derived, { recursive: true })
    await writeWhole(path, made.jpeg)
  }
  return { path, mediaType: 'image/jpeg', saveAs: null }
}

/** Previews can be rebuilt: one that is gone from the disk is made again from its original. */
async function derivedFile(
  world: DeskWorld,
  photo: StoredPhoto,
  kind: 'thumbnail' | 'preview',
): Promise<ServedFile | null> {
  const places = needJobLayout(world.library, photo.jobId)
  const names = derivedNames(photo.id)
  const path = join(places.derived, names[kind])
  // Previews are not synced: after a power cut one may be there and empty.
  if (((await sizeOf(path)) ?? 0) === 0) {
    const bytes = await readFile(join(photoFolder(places, photo), photo.storedName)).catch(() => null)
    const made = bytes === null ? null : await makePreviews(bytes, photo.file)
    if (made === null || !made.ok) return null
    await mkdir(places.derived, { recursive: true })
    await writeWhole(join(places.derived, names.preview), made.preview)
    await writeWhole(join(places.derived, names.thumbnail), made.thumbnail)
  }
  return { path, mediaType: 'image/jpeg', saveAs: null }
}

/** The picture under the plan, made when it is first asked for; none when its original is gone or can't be shown. */
async function underlayFile(world: DeskWorld, id: string): Promise<ServedFile | null> {
  const { db } = world.library
  const original = planImageOriginal(db, id)
  if (original === null) return null
  const places = needJobLayout(world.library, original.jobId)
  const path = join(places.derived, underlayName(id))
  if (((await sizeOf(path)) ?? 0) === 0) {
    const bytes = await readFile(join(places[original.folder], original.storedName)).catch(() => null)
    const made = bytes === null ? null : await makeUnderlayPicture(bytes, original.file)
    if (made === null) return null
    await mkdir(places.derived, { recursive: true })
    await writeWhole(path, made)
  }
  return { path, mediaType: 'image/jpeg', saveAs: null }
}

async function sizeOf(path: string): Promise<number | null> {
  return stat(path).then(
    (found) => (found.isFile() ? found.size : null),
    () => null,
  )
}
