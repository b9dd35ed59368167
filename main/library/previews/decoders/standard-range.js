// Brings pixels that state their colour by code points (ITU-T H.273) into sRGB: wide primaries by a matrix, high dynamic
// range by a plain tone curve. Pictures with an ICC profile don't come here.

const BT2020 = 9
const DISPLAY_P3 = 12
const PQ = 16
const HLG = 18

/** Linear light to linear BT.709, from the primaries' chromaticities and white point D65 (H.273 table 2). */
const TO_BT709 = new Map([
  [BT2020, [1.660491, -0.587641, -0.07285, -0.12455, 1.1329, -0.008349, -0.018151, -0.100579, 1.11873]],
  [DISPLAY_P3, [1.22494, -0.22494, 0, -0.042057, 1.042057, 0, -0.019638, -0.078636, 1.098274]],
])
const SAME = [1, 0, 0, 0, 1, 0, 0, 0, 1]

/** Nits shown as white: BT.2408 names 203 for diffuse white; brighter light is rolled off up to this many times that. */
const WHITE_NITS = 203
const MOST_WHITES = 1000 / WHITE_NITS

/**
 * @param pixels red, green, blue in words of `bits` bits
 * @param colour `primaries` and `transfer` as H.273 numbers them
 * @returns red, green, blue in bytes, sRGB
 */
export function toStandardRange(pixels, { primaries, transfer, bits }) {
  const matrix = TO_BT709.get(primaries) ?? SAME
  const most = 2 ** bits - 1
  const linear = Float32Array.from({ length: most + 1 }, (_, value) => toLinear(value / most, transfer))
  const roll = transfer === PQ || transfer === HLG ? rollOff : (light) => light
  const encoded = Uint8Array.from({ length: 4097 }, (_, step) => Math.round(toSrgb(step / 4096) * 255))
  const shown = (light) => encoded[Math.round(Math.min(1, Math.max(0, roll(light))) * 4096)]
  const out = new Uint8Array(pixels.length)
  const [a, b, c, d, e, f, g, h, i] = matrix
  for (let at = 0; at + 2 < pixels.length; at += 3) {
    const red = linear[Math.min(most, pixels[at])]
    const green = linear[Math.min(most, pixels[at + 1])]
    const blue = linear[Math.min(most, pixels[at + 2])]
    out[at] = shown(a * red + b * green + c * blue)
    out[at + 1] = shown(d * red + e * green + f * blue)
    out[at + 2] = shown(g * red + h * green + i * blue)
  }
  return out
}

/** Whether pixels of this colour differ from sRGB so much that they have to be converted. */
toStandardRange.needed = ({ primaries, transfer }) => TO_BT709.has(primaries) || transfer === PQ || transfer === HLG

/** 1 is diffuse white. PQ: SMPTE ST 2084; HLG: BT.2100 with the reference display's system gamma left out; else sRGB. */
function toLinear(signal, transfer) {
  if (transfer === PQ) {
    const power = signal ** (1 / 78.84375)
    const light = Math.max(power - 0.8359375, 0) / (18.8515625 - 18.6875 * power)
    return (10_000 * light ** (1 / 0.1593017578125)) / WHITE_NITS
  }
  if (transfer === HLG) {
    const scene = signal <= 0.5 ? signal ** 2 / 3 : (Math.exp((signal - 0.55991073) / 0.17883277) + 0.28466892) / 12
    return scene / 0.265
  }
  return signal <= 0.04045 ? signal / 12.92 : ((signal + 0.055) / 1.055) ** 2.4
}

/** Keeps what lies under four fifths of white and bends the rest so that the brightest light becomes white. */
function rollOff(light) {
  const knee = 0.8
  if (light <= knee) return light
  const over = Math.min((light - knee) / (MOST_WHITES - knee), 1)
  return knee + (1 - knee) * (1 - (1 - over) ** 3)
}

function toSrgb(light) {
  return light <= 0.0031308 ? light * 12.92 : 1.055 * light ** (1 / 2.4) - 0.055
}
