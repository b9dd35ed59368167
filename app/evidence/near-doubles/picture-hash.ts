/** Side of the grey picture that a hash is made from, pixels. */
export const HASH_SIDE = 32
/** Side of the block of low frequencies that the hash keeps. */
const KEPT = 8

/** `cosines[k][n]` of the type-II discrete cosine transform: Ahmed, Natarajan and Rao, IEEE Trans. Computers C-23 (1974) 90. */
const cosines: readonly (readonly number[])[] = Array.from({ length: KEPT }, (_, k) =>
  Array.from({ length: HASH_SIDE }, (_, n) => Math.cos((Math.PI / HASH_SIDE) * (n + 0.5) * k)),
)

/**
 * The 64-bit perceptual hash of a picture, 16 hex digits: which of its 8 by 8 lowest frequencies lie above their median.
 * Two pictures that look alike differ in few bits, whatever their size, quality or brightness. The frequencies come from
 * the discrete cosine transform; the one of the mean brightness counts only as a bit like the others.
 * @param grey 32 by 32 grey levels, row by row
 */
export function pictureHash(grey: ArrayLike<number>): string {
  const frequencies = lowFrequencies(grey)
  const [mean, ...others] = frequencies
  const median = medianOf(others)
  const bits = [mean ?? 0, ...others].map((value) => (value > median ? 1 : 0))
  return Array.from({ length: 16 }, (_, k) =>
    Number.parseInt(bits.slice(k * 4, k * 4 + 4).join(''), 2).toString(16),
  ).join('')
}

/** The transform's 64 lowest coefficients, without scaling factors, which change no order between hashes of one kind. */
function lowFrequencies(grey: ArrayLike<number>): readonly number[] {
  const ofRows = Array.from({ length: HASH_SIDE }, (_, y) =>
    cosines.map((wave) => wave.reduce((sum, factor, x) => sum + factor * (grey[y * HASH_SIDE + x] ?? 0), 0)),
  )
  return cosines.flatMap((wave) =>
    cosines.map((_, u) => wave.reduce((sum, factor, y) => sum + factor * (ofRows[y]?.[u] ?? 0), 0)),
  )
}

function medianOf(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b)
  return sorted[Math.floor(sorted.length / 2)] ?? 0
}

/** In how many of their 64 bits two hashes differ. */
export function hashDistance(a: string, b: string): number {
  let bits = 0
  for (let from = 0; from < 16; from += 8) {
    const differing = Number.parseInt(a.slice(from, from + 8), 16) ^ Number.parseInt(b.slice(from, from + 8), 16)
    bits += onesIn(differing)
  }
  return bits
}

/** Ones of a 32-bit number, by adding neighbours. */
function onesIn(word: number): number {
  const pairs = word - ((word >>> 1) & 0x55555555)
  const fours = (pairs & 0x33333333) + ((pairs >>> 2) & 0x33333333)
  return Math.imul((fours + (fours >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24
}
