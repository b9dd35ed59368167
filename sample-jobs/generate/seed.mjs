/** Deterministic numbers from text or integers: the same house comes out every time. */

/**
 * A stream of numbers in 0..1 that depends on the seed only (mulberry32).
 * @param {number} seed any integer
 * @returns {() => number}
 */
export function stream(seed) {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = state
    t = Math.imul(t ^ (t >>> 15), t | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

/**
 * A 32-bit seed from a text (FNV-1a).
 * @param {string} text
 * @returns {number}
 */
export function seedOf(text) {
  let hash = 0x811c9dc5
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193)
  return hash >>> 0
}

/**
 * Two independent standard normal numbers from a stream (Box-Muller).
 * @param {() => number} random
 * @returns {[number, number]}
 */
export function normalPair(random) {
  const radius = Math.sqrt(-2 * Math.log(1 - random()))
  const angle = 2 * Math.PI * random()
  return [radius * Math.cos(angle), radius * Math.sin(angle)]
}
