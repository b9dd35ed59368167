/** Characters that some file system refuses, control characters included. */
// oxlint-disable-next-line no-control-regex -- control characters are just what is looked for
const UNSAFE = /[<>:"/\\|?*\u0000-\u001f\u007f]/g

/** Most file systems allow 255 bytes; this leaves room for the hash in front. */
const MOST_BYTES = 180

/** A file name that every common file system takes and that still reads like the given one. */
export function safeFileName(name: string): string {
  const cleaned = name
    .normalize('NFC')
    .replaceAll(UNSAFE, '_')
    .replace(/[. ]+$/, '')
    .replace(/^\.+/, '')
  return shorten(cleaned === '' ? 'file' : cleaned)
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
  let stem = [...name.slice(0, name.length - extension.length)]
  while (Buffer.byteLength(stem.join('') + extension) > MOST_BYTES) stem = stem.slice(0, -1)
  return stem.join('') + extension
}
