const MAX_XMP_BYTES = 4 * 1024 * 1024

/** The XMP properties that are read, by their namespace (Adobe XMP specification part 2; Exif for XMP). */
const PROPERTIES = {
  dateTimeOriginal: { namespace: 'http://ns.adobe.com/exif/1.0/', name: 'DateTimeOriginal' },
  dateCreated: { namespace: 'http://ns.adobe.com/photoshop/1.0/', name: 'DateCreated' },
  createDate: { namespace: 'http://ns.adobe.com/xap/1.0/', name: 'CreateDate' },
  make: { namespace: 'http://ns.adobe.com/tiff/1.0/', name: 'Make' },
  model: { namespace: 'http://ns.adobe.com/tiff/1.0/', name: 'Model' },
  serial: { namespace: 'http://ns.adobe.com/exif/1.0/aux/', name: 'SerialNumber' },
} as const satisfies Record<string, { namespace: string; name: string }>

/** Texts of XMP properties, '' where absent. */
export type XmpFacts = Record<keyof typeof PROPERTIES, string>

/** Picks a few simple properties out of an XMP packet, written as attributes or as elements. */
export function readXmpFacts(packet: Buffer | string | null): XmpFacts {
  const text = packet === null || packet.length > MAX_XMP_BYTES ? '' : packet.toString()
  const read = (key: keyof typeof PROPERTIES): string => property(text, PROPERTIES[key])
  return {
    dateTimeOriginal: read('dateTimeOriginal'),
    dateCreated: read('dateCreated'),
    createDate: read('createDate'),
    make: read('make'),
    model: read('model'),
    serial: read('serial'),
  }
}

function property(text: string, { namespace, name }: { namespace: string; name: string }): string {
  const prefix = prefixOf(text, namespace)
  if (prefix === null) return ''
  const tag = `${prefix}:${name}`
  const attribute = between(text, `${tag}="`, '"') ?? between(text, `${tag}='`, "'")
  return unescapeXml(attribute ?? between(text, `<${tag}>`, `</${tag}>`) ?? '').trim()
}

/** XMP lets a packet choose its prefixes; they are declared as `xmlns:prefix="namespace"`. */
function prefixOf(text: string, namespace: string): string | null {
  const declared = Math.max(text.indexOf(`="${namespace}"`), text.indexOf(`='${namespace}'`))
  if (declared < 0) return null
  return /xmlns:([\w.-]{1,64})$/.exec(text.slice(Math.max(0, declared - 80), declared))?.[1] ?? null
}

function between(text: string, before: string, after: string): string | null {
  const start = text.indexOf(before)
  if (start < 0) return null
  const end = text.indexOf(after, start + before.length)
  return end < 0 ? null : text.slice(start + before.length, end)
}

function unescapeXml(text: string): string {
  return text
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&apos;', "'")
    .replaceAll('&amp;', '&')
}
