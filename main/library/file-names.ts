/** Characters that some file system refuses, and those that turn the direction of writing and so hide what a name ends in. */
// oxlint-disable-next-line no-control-regex -- control characters are just what is looked for
const UNSAFE = /[<>:"/\\|?*\u0000-\u001f\u007f-\u009f\u2028\u2029\u202a-\u202e\u2066-\u2069]/g

/** Names that Windows keeps for devices, with any extension. */
const DEVICE = /^(con|prn|aux|nul|com[0-9¹²³]|lpt[0-9¹²³])(?=\.|$)/i

/** Most file systems allow 255 bytes; this leaves room for the hash in front. */
const MOST_BYTES = 180

/** A file name that every common file system takes and that still reads like the given one. */
export function safeFileName(name: string): string {
  const cleaned = name
    .replaceAll(/\p{Surrogate}/gu, '_')
    .normalize('NFC')
    .replaceAll(UNSAFE, '_')
    .replace(/^[. ]+/, '')
  return shorten(withoutEnd(cleaned).replace(DEVICE, '$1_')) || 'file'
}

/** The name under which a file taken in is kept: hash prefix, then the name it came with. */
export function storedName(sha256: string, fileName: string): string {
  return `${sha256.slice(0, 12)}-${safeFileName(fileName)}`
}

/** A few words turned into part of a folder name: letters and digits of any script, joined by dashes. */
export function slug(words: string): string {
  const joined = (words.normalize('NFC').match(/[\p{L}\p{N}\p{M}]+/gu) ?? []).join('-').toLocaleLowerCase('en')
  return shorten([...joined].slice(0, 40).join('').replace(/-+$/, ''))
}

function shorten(name: string): string {
  if (Buffer.byteLength(name) <= MOST_BYTES) return name
  const extension = /\.[A-Za-z0-9]{1,8}$/.exec(name)?.[0] ?? ''
  let room = MOST_BYTES - Buffer.byteLength(extension)
  let stem = ''
  for (const character of name.slice(0, name.length - extension.length)) {
    room -= Buffer.byteLength(character)
    if (room < 0) break
    stem += character
  }
  return withoutEnd(stem) + extension
}

/** Windows drops dots and spaces at the end of a name. */
function withoutEnd(name: string): string {
  let end = name.length
  while (end > 0 && (name[end - 1] === '.' || name[end - 1] === ' ')) end -= 1
  return name.slice(0, end)
}
