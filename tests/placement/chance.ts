/** Repeatable chance for simulated walks: the same seed gives the same walk on every machine. */
export interface Chance {
  /** 0 up to but not including 1. */
  readonly unit: () => number
  readonly between: (low: number, high: number) => number
  /** Normal with mean 0. */
  readonly normal: (sigma: number) => number
  readonly chance: (share: number) => boolean
  readonly pick: <T>(from: readonly [T, ...T[]]) => T
  /** An index, by weight. */
  readonly weighted: (weights: readonly number[]) => number
}

/** A 32-bit counter mixed by multiplications and shifts ("mulberry32", public domain). */
export function chanceFrom(seed: number): Chance {
  let state = seed >>> 0
  const unit = (): number => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
  const between = (low: number, high: number) => low + (high - low) * unit()
  return {
    unit,
    between,
    normal: (sigma) => sigma * Math.sqrt(-2 * Math.log(1 - unit())) * Math.cos(2 * Math.PI * unit()),
    chance: (share) => unit() < share,
    pick: (from) => from[Math.floor(unit() * from.length)] ?? from[0],
    weighted: (weights) => {
      let left = unit() * weights.reduce((sum, weight) => sum + weight, 0)
      const found = weights.findIndex((weight) => (left -= weight) < 0)
      return found === -1 ? weights.length - 1 : found
    },
  }
}
