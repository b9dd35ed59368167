import { parentPort } from 'node:worker_threads'
import libheif from 'libheif-js/wasm-bundle.js'
import { toStandardRange } from './standard-range.js'

// Decodes the first picture of a HEIF-family file away from the program: what a broken file does to memory or time ends
// with this thread. Speaks the C interface of libheif (libheif/heif.h); pointers are numbers into its memory.

/** libheif/heif_image.h: heif_colorspace_RGB, heif_chroma_interleaved_RGB, _RGBA and _RRGGBB_LE. */
const RGB = 1
const CHROMA = { rgb: 10, rgba: 11, rgb16: 14 }
const INTERLEAVED = 10

/** libheif/heif_security.h: where in heif_security_limits the pixels of a picture and all memory are bounded. */
const LIMIT_AT = { pixels: 8, block: 40, total: 64 }
/** libheif/heif_decoding.h: strict_decoding in heif_decoding_options, behind two bytes, four pointers and a byte. */
const STRICT_AT = 21
const MOST_BLOCK_BYTES = 900_000_000
const MOST_TOTAL_BYTES = 1_500_000_000

parentPort?.on('message', ({ bytes, maxPixels }) => {
  try {
    const made = decode(bytes, maxPixels)
    parentPort?.postMessage({ ok: true, ...made }, [made.pixels.buffer])
  } catch (cause) {
    parentPort?.postMessage({ ok: false, why: cause instanceof Error ? cause.message : String(cause) })
  }
})

function decode(bytes, maxPixels) {
  const owned = []
  const take = (pointer, release) => {
    if (pointer !== 0) owned.push(() => release(pointer))
    return pointer
  }
  try {
    const context = take(libheif._heif_context_alloc(), libheif._heif_context_free)
    setLimits(context, maxPixels)
    const input = take(libheif._malloc(bytes.length), libheif._free)
    libheif.HEAPU8.set(bytes, input)
    call(libheif._heif_context_read_from_memory, context, input, bytes.length, 0)
    const handle = take(
      callForPointer(libheif._heif_context_get_primary_image_handle, context),
      libheif._heif_image_handle_release,
    )
    const width = libheif._heif_image_handle_get_width(handle)
    const height = libheif._heif_image_handle_get_height(handle)
    if (width <= 0 || height <= 0 || width * height > maxPixels) throw new Error('the picture is too large')
    const icc = iccOf(handle)
    const nclx = nclxOf(handle, owned)
    return { width, height, icc, ...pixelsOf(handle, { nclx: icc === null ? nclx : null, take }) }
  } finally {
    for (const release of owned.reverse()) release()
  }
}

/**
 * Bytes of three or four channels without gaps between rows; `transfer` says from which
 * curve they were brought into standard range, `isWhole` whether every part of the picture could be decoded.
 */
function pixelsOf(handle, { nclx, take }) {
  const hasAlpha = libheif._heif_image_handle_has_alpha_channel(handle) === 1
  const needsMore = nclx !== null && toStandardRange.needed(nclx)
  const chroma = needsMore ? CHROMA.rgb16 : hasAlpha ? CHROMA.rgba : CHROMA.rgb
  const { image, isWhole } = decodeAsFarAsItGoes(handle, { chroma, take })
  const width = libheif._heif_image_get_width(image, INTERLEAVED)
  const height = libheif._heif_image_get_height(image, INTERLEAVED)
  const strideAt = take(libheif._malloc(4), libheif._free)
  const plane = libheif._heif_image_get_plane_readonly(image, INTERLEAVED, strideAt)
  if (plane === 0) throw new Error('it holds no pixels')
  const stride = readU32(strideAt)
  const pixelBytes = needsMore ? 6 : hasAlpha ? 4 : 3
  const rowBytes = width * pixelBytes
  const packed = new Uint8Array(rowBytes * height)
  for (let y = 0; y < height; y += 1) {
    const from = plane + y * stride
    packed.set(libheif.HEAPU8.subarray(from, from + rowBytes), y * rowBytes)
  }
  if (!needsMore) return { pixels: packed, channels: pixelBytes, transfer: null, isWhole }
  const bits = libheif._heif_image_get_bits_per_pixel_range(image, INTERLEAVED)
  const pixels = toStandardRange(new Uint16Array(packed.buffer), { ...nclx, bits })
  return { pixels, channels: 3, transfer: nclx.transfer, isWhole }
}

/** Strictly first; a picture with faults is decoded again as far as it goes. */
function decodeAsFarAsItGoes(handle, { chroma, take }) {
  const options = take(libheif._heif_decoding_options_alloc(), libheif._heif_decoding_options_free)
  const decodeOnce = (strict) => {
    libheif.HEAPU8[options + STRICT_AT] = strict
    const made = callForPointer(
      (error, at, to) => libheif._heif_decode_image(error, at, to, RGB, chroma, options),
      handle,
    )
    return take(made, libheif._heif_image_release)
  }
  try {
    const image = decodeOnce(1)
    return { image, isWhole: libheif._heif_image_get_decoding_warnings(image, 0, 0, 0) === 0 }
  } catch {
    return { image: decodeOnce(0), isWhole: false }
  }
}

function iccOf(handle) {
  const size = libheif._heif_image_handle_get_raw_color_profile_size(handle)
  if (size <= 0 || size > 4 * 1024 * 1024) return null
  const target = libheif._malloc(size)
  try {
    call(libheif._heif_image_handle_get_raw_color_profile, handle, target)
    return libheif.HEAPU8.slice(target, target + size)
  } finally {
    libheif._free(target)
  }
}

/** ITU-T H.273 code points of primaries and transfer, or null where the file states none. */
function nclxOf(handle, owned) {
  try {
    const nclx = callForPointer(libheif._heif_image_handle_get_nclx_color_profile, handle)
    owned.push(() => libheif._heif_nclx_color_profile_free(nclx))
    return { primaries: readU32(nclx + 4), transfer: readU32(nclx + 8) }
  } catch {
    return null
  }
}

function setLimits(context, maxPixels) {
  const limits = libheif._heif_context_get_security_limits(context)
  writeU64(limits + LIMIT_AT.pixels, maxPixels)
  writeU64(limits + LIMIT_AT.block, MOST_BLOCK_BYTES)
  writeU64(limits + LIMIT_AT.total, MOST_TOTAL_BYTES)
}

/** Calls a function that returns `heif_error` (code, subcode, message: three words at the place given first). */
function call(work, ...given) {
  const error = libheif._malloc(12)
  try {
    work(error, ...given)
    if (readU32(error) !== 0) throw new Error(readText(readU32(error + 8)))
  } finally {
    libheif._free(error)
  }
}

/** Calls a function whose last argument is where it puts the pointer that it makes. */
function callForPointer(work, given) {
  const target = libheif._malloc(4)
  try {
    writeU32(target, 0)
    call((error) => work(error, given, target))
    return readU32(target)
  } finally {
    libheif._free(target)
  }
}

function view() {
  return new DataView(libheif.HEAPU8.buffer)
}

function readU32(at) {
  return view().getUint32(at, true)
}

function writeU32(at, value) {
  view().setUint32(at, value, true)
}

function writeU64(at, value) {
  view().setBigUint64(at, BigInt(value), true)
}

function readText(at) {
  const bytes = libheif.HEAPU8.subarray(at, at + 300)
  return Buffer.from(bytes.subarray(0, Math.max(0, bytes.indexOf(0)))).toString('utf8')
}
