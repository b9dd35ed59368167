import { isUtf8 } from 'node:buffer'

/** The text of a subtitle file: UTF-16 by its byte order mark, else UTF-8 where it is valid, else the old Windows code page. */
export function decodeSubtitles(bytes: Buffer): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder('utf-16le').decode(bytes)
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder('utf-16be').decode(bytes)
  return new TextDecoder(isUtf8(bytes) ? 'utf-8' : 'windows-1252').decode(bytes)
}
