import { boxesIn, readUInt } from './heif-boxes.ts'

/** Where an item's bytes lie: 0 in the file, 1 in the `idat` box, 2 in another item. */
export type ItemPlace = { construction: number; extents: { offset: number; length: number }[] }

/** More items than any camera writes; a count above it is a broken file. */
const MAX_ITEMS = 100_000

/** `iinf`: item id to item type; items of type `mime` carry their media type, as `mime:application/rdf+xml`. */
export function readItemTypes(iinf: Buffer): Map<number, string> {
  const types = new Map<number, string>()
  const entriesAt = iinf[0] === 0 ? 6 : 8
  for (const { type, body } of boxesIn(iinf.subarray(entriesAt))) {
    const version = body[0]
    if (type !== 'infe' || (version !== 2 && version !== 3)) continue
    const idBytes = version === 2 ? 2 : 4
    const typeAt = 4 + idBytes + 2
    const itemType = body.toString('latin1', typeAt, typeAt + 4)
    const id = readUInt(body, 4, idBytes)
    types.set(id, itemType === 'mime' ? `mime:${mediaTypeOf(body.subarray(typeAt + 4))}` : itemType)
  }
  return types
}

/** After the item's name and its closing 0 comes the media type, closed by 0 too. */
function mediaTypeOf(namesAndTypes: Buffer): string {
  const nameEnd = namesAndTypes.indexOf(0)
  const rest = namesAndTypes.subarray(nameEnd + 1)
  const end = rest.indexOf(0)
  return rest.toString('latin1', 0, end < 0 ? rest.length : end)
}

/** `iloc`, versions 0 to 2: item id to the place of its bytes. */
export function readItemPlaces(iloc: Buffer): Map<number, ItemPlace> {
  const version = iloc[0]
  const sizes = readUInt(iloc, 4, 2)
  const [offsetBytes, lengthBytes, baseBytes] = [(sizes >> 12) & 15, (sizes >> 8) & 15, (sizes >> 4) & 15]
  const indexBytes = version === 0 ? 0 : sizes & 15
  const idBytes = version === 2 ? 4 : 2
  const count = Math.min(readUInt(iloc, 6, idBytes), MAX_ITEMS)
  const places = new Map<number, ItemPlace>()
  let at = 6 + idBytes
  const take = (length: number): number => {
    at += length
    return readUInt(iloc, at - length, length)
  }
  for (let k = 0; k < count && at < iloc.length; k += 1) {
    const id = take(idBytes)
    const construction = version === 0 ? 0 : take(2) & 15
    take(2)
    const base = take(baseBytes)
    const statedExtents = take(2)
    const extentCount = offsetBytes + lengthBytes === 0 ? 0 : statedExtents
    const extents: ItemPlace['extents'] = []
    for (let n = 0; n < extentCount && at < iloc.length; n += 1) {
      take(indexBytes)
      const offset = take(offsetBytes)
      extents.push({ offset: base + offset, length: take(lengthBytes) })
    }
    places.set(id, { construction, extents })
  }
  return places
}
