import { type Box, boxesIn, readUInt } from './heif-boxes.ts'
import { type ItemPlace, readItemPlaces, readItemTypes } from './heif-items.ts'
import { NO_PARTS, type PictureParts } from './container-parts.ts'

/** Camera facts are kilobytes; an item that claims more is not put together. */
const MAX_ITEM_BYTES = 4 * 1024 * 1024

/** Sizes and turns that stand as properties in the file, numbered from 1. */
type Property =
  | { kind: 'size'; widthPx: number; heightPx: number }
  | { kind: 'turn'; quarterTurns: number }
  | { kind: 'other' }

/**
 * Reads a HEIF-family file (HEIC, HIF, AVIF; ISO/IEC 14496-12 and 23008-12): size and turn of the primary item, and
 * where its EXIF and XMP items lie. A turn that is absent is none: EXIF orientation has no say in this family.
 */
export function readHeifParts(bytes: Buffer): PictureParts {
  const meta = boxesIn(bytes).find((box) => box.type === 'meta')
  if (meta === undefined) return NO_PARTS
  const boxes = boxesIn(meta.body.subarray(4))
  const types = readItemTypes(body(boxes, 'iinf'))
  const places = readItemPlaces(body(boxes, 'iloc'))
  const read = (id: number | undefined): Buffer | null =>
    id === undefined ? null : readItem(places.get(id), { file: bytes, itemData: body(boxes, 'idat') })
  const idOf = (type: string): number | undefined => [...types].find(([, itemType]) => itemType === type)?.[0]
  return {
    ...NO_PARTS,
    exif: exifBlock(read(idOf('Exif'))),
    xmp: read(idOf('mime:application/rdf+xml')),
    ...readPrimaryLook(boxes),
    pictures: countPictures(boxes, types),
  }
}

function body(boxes: readonly Box[], type: string): Buffer {
  return boxes.find((box) => box.type === type)?.body ?? Buffer.alloc(0)
}

/** The item begins with the number of bytes to skip to the TIFF header. */
function exifBlock(item: Buffer | null): Buffer | null {
  if (item === null || item.length < 12) return null
  return item.subarray(4 + item.readUInt32BE(0))
}

function readItem(place: ItemPlace | undefined, from: { file: Buffer; itemData: Buffer }): Buffer | null {
  if (place === undefined || place.extents.length === 0) return null
  const source = place.construction === 0 ? from.file : place.construction === 1 ? from.itemData : null
  if (source === null) return null
  if (place.extents.reduce((sum, { length }) => sum + length, 0) > MAX_ITEM_BYTES) return null
  const pieces = place.extents.map(({ offset, length }) => source.subarray(offset, offset + length))
  return pieces.length === 1 ? (pieces[0] ?? null) : Buffer.concat(pieces)
}

/** Kinds of items that are pictures (ISO/IEC 23008-12, 23000-22). */
const PICTURE_ITEMS = new Set(['hvc1', 'av01', 'avc1', 'jpeg', 'grid', 'iovl', 'iden'])
/** References that make an item a part of another one: its thumbnail, its mask or depth, a tile of it. */
const PART_OF = new Set(['thmb', 'auxl'])

/** Pictures that stand for themselves: not hidden behind another as its thumbnail, mask or tile. */
function countPictures(boxes: readonly Box[], types: ReadonlyMap<number, string>): number {
  const iref = body(boxes, 'iref')
  const idBytes = iref[0] === 0 ? 2 : 4
  const parts = new Set<number>()
  for (const { type, body: list } of boxesIn(iref.subarray(4))) {
    const from = readUInt(list, 0, idBytes)
    if (PART_OF.has(type)) parts.add(from)
    if (type !== 'dimg') continue
    const count = readUInt(list, idBytes, 2)
    for (let k = 0; k < count; k += 1) parts.add(readUInt(list, idBytes + 2 + k * idBytes, idBytes))
  }
  const own = [...types].filter(([id, type]) => PICTURE_ITEMS.has(type) && !parts.has(id))
  return Math.max(1, own.length)
}

function readPrimaryLook(boxes: readonly Box[]): Pick<PictureParts, 'stored' | 'containerQuarterTurns'> {
  const primary = body(boxes, 'pitm')
  const primaryId = primary[0] === 0 ? readUInt(primary, 4, 2) : readUInt(primary, 4, 4)
  const propertyBoxes = boxesIn(body(boxes, 'iprp'))
  const properties = boxesIn(body(propertyBoxes, 'ipco')).map(readProperty)
  let stored: PictureParts['stored'] = null
  let containerQuarterTurns = 0
  for (const index of readAssociations(body(propertyBoxes, 'ipma')).get(primaryId) ?? []) {
    const property = properties[index - 1]
    if (property?.kind === 'size') stored = { widthPx: property.widthPx, heightPx: property.heightPx }
    if (property?.kind === 'turn') containerQuarterTurns += property.quarterTurns
  }
  return { stored, containerQuarterTurns }
}

function readProperty(box: Box): Property {
  if (box.type === 'ispe') {
    const widthPx = readUInt(box.body, 4, 4)
    const heightPx = readUInt(box.body, 8, 4)
    return widthPx > 0 && heightPx > 0 ? { kind: 'size', widthPx, heightPx } : { kind: 'other' }
  }
  if (box.type === 'irot') return { kind: 'turn', quarterTurns: readUInt(box.body, 0, 1) & 3 }
  return { kind: 'other' }
}

/** `ipma`: which properties each item has, by their number. */
function readAssociations(ipma: Buffer): Map<number, number[]> {
  const idBytes = ipma[0] === 0 ? 2 : 4
  const indexBytes = (readUInt(ipma, 3, 1) & 1) === 1 ? 2 : 1
  const indexMask = indexBytes === 2 ? 0x7fff : 0x7f
  const found = new Map<number, number[]>()
  let at = 8
  while (at + idBytes + 1 <= ipma.length) {
    const id = readUInt(ipma, at, idBytes)
    const count = readUInt(ipma, at + idBytes, 1)
    at += idBytes + 1
    const indexes = Array.from({ length: count }, (_, k) => readUInt(ipma, at + k * indexBytes, indexBytes) & indexMask)
    found.set(id, indexes)
    at += count * indexBytes
  }
  return found
}
