/**
 * What a camera's positions may be off by, as a square grid of offsets in feet about what is already corrected: the
 * positions of one walk share an error that wanders slowly, and following it tells more than each position alone.
 */
export interface OffsetGrid {
  /** Offsets along one axis; the grid is this by this. */
  readonly stepsFt: Float64Array
  /** How likely each offset is at first, at [x * steps + y]. */
  readonly start: Float64Array
  /** Chances along one axis of having gone from an offset to another, at [from * steps + to]. */
  readonly after: (seconds: number) => Float64Array
}

/** How a camera's error behaves. */
export interface OffsetHabit {
  readonly steps: number
  /** Per axis, of a position as most of its photos state it. */
  readonly typicalFt: number
  /** Per axis, of all that wanders or lasts. */
  readonly sigmaFt: number
  /** Per axis, of what wanders. */
  readonly wanderFt: number
  readonly memoryS: number
}

/** The grid reaches this many standard deviations each way. */
const REACH = 1.7
const LENGTHS_PER_DOUBLING = 4
/** Shares of the spacing below which a Gaussian falls between the grid's lines. */
const FINE = 0.8
const LONGEST_S = 12 * 3600

/** A grid for a camera. With one step there is nothing to follow. */
export function offsetGrid({ steps, sigmaFt, wanderFt, memoryS }: Omit<OffsetHabit, 'typicalFt'>): OffsetGrid {
  const stepsFt = Float64Array.from({ length: steps }, (_, at) =>
    steps === 1 ? 0 : REACH * sigmaFt * ((2 * at) / (steps - 1) - 1),
  )
  const axis = normalised(stepsFt.map((ft) => Math.exp((-ft * ft) / (2 * sigmaFt * sigmaFt))))
  const tables = new Map<number, Float64Array>()
  return {
    stepsFt,
    start: Float64Array.from({ length: steps * steps }, (_, at) => {
      return (axis[Math.floor(at / steps)] ?? 0) * (axis[at % steps] ?? 0)
    }),
    after: (seconds) => {
      const bounded = Math.min(LONGEST_S, Math.max(0, seconds))
      const length = Math.round(LENGTHS_PER_DOUBLING * Math.log2(1 + bounded))
      const known = tables.get(length)
      if (known !== undefined) return known
      const table = wandering({ stepsFt, sigmaFt, wanderFt, memoryS }, 2 ** (length / LENGTHS_PER_DOUBLING) - 1)
      tables.set(length, table)
      return table
    },
  }
}

/** A first-order autoregression that keeps `sigmaFt` and loosens as `wanderFt` does over the memory. */
function wandering(
  habit: Omit<OffsetHabit, 'steps' | 'typicalFt'> & { readonly stepsFt: Float64Array },
  seconds: number,
): Float64Array {
  const { stepsFt, sigmaFt, wanderFt, memoryS } = habit
  const steps = stepsFt.length
  const spacing = steps > 1 ? (stepsFt[1] ?? 0) - (stepsFt[0] ?? 0) : 1
  const fresh = wanderFt ** 2 * (1 - Math.exp((-2 * seconds) / memoryS))
  const keep = Math.sqrt(Math.max(0, 1 - fresh / sigmaFt ** 2))
  const table = new Float64Array(steps * steps)
  stepsFt.forEach((from, row) => {
    const mean = keep * from
    const chances =
      fresh < (FINE * spacing) ** 2
        ? oneStep({ row, steps, drift: (mean - from) / spacing, variance: fresh / spacing ** 2 })
        : stepsFt.map((to) => Math.exp(-((to - mean) ** 2) / (2 * fresh)))
    table.set(normalised(chances), row * steps)
  })
  return table
}

/** Where the wander is short beside the spacing, steps to both sides that have its mean and variance. */
function oneStep(given: { row: number; steps: number; drift: number; variance: number }): Float64Array {
  const { row, steps, drift, variance } = given
  const spread = variance + drift * drift
  const chances = new Float64Array(steps)
  const up = row + 1 < steps ? Math.max(0, (spread + drift) / 2) : 0
  const down = row > 0 ? Math.max(0, (spread - drift) / 2) : 0
  if (row + 1 < steps) chances[row + 1] = up
  if (row > 0) chances[row - 1] = down
  chances[row] = Math.max(0, 1 - up - down)
  return chances
}

function normalised(weights: Float64Array): Float64Array {
  const total = weights.reduce((sum, weight) => sum + weight, 0)
  return weights.map((weight) => weight / total)
}
