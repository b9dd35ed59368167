/**
 * Whether a picture's pixels are sRGB as they stand, so that no colour transform is needed: there is no ICC profile, or
 * the profile's own description says sRGB (ICC.1:2022, 7.3 tag table and 9.2.41 profileDescriptionTag).
 */
export function isSrgbAsStored(profile: Buffer | undefined): boolean {
  return profile === undefined || /^sRGB\b/.test(describe(profile))
}

const TAG_TABLE_AT = 128
const TAG_ENTRY_LENGTH = 12
const MAX_TAGS = 100

function describe(profile: Buffer): string {
  if (profile.length < TAG_TABLE_AT + 4) return ''
  const count = Math.min(profile.readUInt32BE(TAG_TABLE_AT), MAX_TAGS)
  for (let k = 0; k < count; k += 1) {
    const at = TAG_TABLE_AT + 4 + k * TAG_ENTRY_LENGTH
    if (at + TAG_ENTRY_LENGTH > profile.length) return ''
    if (profile.toString('latin1', at, at + 4) !== 'desc') continue
    const start = profile.readUInt32BE(at + 4)
    return textOf(profile.subarray(start, start + profile.readUInt32BE(at + 8)))
  }
  return ''
}

/** Version 2 profiles hold plain text, version 4 holds translations in UTF-16, the first of which is taken. */
function textOf(tag: Buffer): string {
  const type = tag.toString('latin1', 0, 4)
  if (type === 'desc' && tag.length > 12)
    return tag.toString('latin1', 12, 12 + tag.readUInt32BE(8)).replace(/\0.*$/s, '')
  if (type !== 'mluc' || tag.length < 28) return ''
  const length = tag.readUInt32BE(20)
  const start = tag.readUInt32BE(24)
  const text = Buffer.from(tag.subarray(start, start + (length - (length % 2))))
  return text.length % 2 === 0 ? text.swap16().toString('utf16le') : ''
}
