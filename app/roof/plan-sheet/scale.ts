/** A scale that a plan is printed at: how long a foot is on paper, and its name in words. */
export interface PlanScale {
  readonly ptPerFt: number
  readonly name: string
}

const PT_PER_IN = 72

/** Usual architect scales: so many inches on paper are a foot. */
const INCHES_PER_FOOT: readonly (readonly [number, string])[] = [
  [1, '1 in'],
  [1 / 2, '1/2 in'],
  [3 / 8, '3/8 in'],
  [1 / 4, '1/4 in'],
  [3 / 16, '3/16 in'],
  [1 / 8, '1/8 in'],
  [3 / 32, '3/32 in'],
  [1 / 16, '1/16 in'],
]
/** Usual engineer scales: an inch on paper is so many feet. */
const FEET_PER_INCH = [20, 30, 40, 50, 60, 100, 200, 300, 400, 500, 600, 1000, 2000, 5000]
const RATIOS = [10, 20, 25, 50, 75, 100, 125, 200, 250, 500, 1000, 2000, 2500, 5000, 10_000, 25_000, 50_000]

const US_SCALES: readonly PlanScale[] = [
  ...INCHES_PER_FOOT.map(([inches, words]) => ({ ptPerFt: inches * PT_PER_IN, name: `${words} = 1 ft` })),
  ...FEET_PER_INCH.map((feet) => ({ ptPerFt: PT_PER_IN / feet, name: `1 in = ${feet} ft` })),
]
const METRIC_SCALES: readonly PlanScale[] = RATIOS.map((ratio) => ({
  ptPerFt: (12 * PT_PER_IN) / ratio,
  name: `1 : ${ratio}`,
}))

/**
 * The largest named scale at which something so many feet wide and high fits a space in points. US paper prints to
 * architect and engineer scales, A4 to ratios. Plans too large for every scale get the smallest.
 */
export function largestScale(
  sizeFt: { readonly width: number; readonly height: number },
  spacePt: { readonly width: number; readonly height: number },
  scales: 'us' | 'metric',
): PlanScale {
  const list = namedScales(scales)
  const fits = (scale: PlanScale) =>
    sizeFt.width * scale.ptPerFt <= spacePt.width && sizeFt.height * scale.ptPerFt <= spacePt.height
  const smallest = { ptPerFt: PT_PER_IN / 5000, name: '1 in = 5000 ft' }
  return list.find(fits) ?? list.at(-1) ?? smallest
}

/** The named scales of a kind of paper, largest first. */
export function namedScales(scales: 'us' | 'metric'): readonly PlanScale[] {
  return scales === 'us' ? US_SCALES : METRIC_SCALES
}

/** Length of the scale bar in feet: a round number with at least four parts that stays within a width on paper. */
export function scaleBarFt(scale: PlanScale, widestPt: number): number {
  const widestFt = widestPt / scale.ptPerFt
  const power = 10 ** Math.floor(Math.log10(widestFt))
  const step = [8, 4, 2, 1].find((factor) => factor * power <= widestFt) ?? 1
  return step * power
}
