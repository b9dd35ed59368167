import type { PlanPoint } from '../../job/places.ts'
import { PLACEMENT_CALIBRATION } from './calibration.ts'
import type { Sight } from './line-of-sight.ts'
import type { PlanCells } from './plan-cells.ts'

/** All that is known of one photo by itself. */
export interface PhotoEvidence {
  /** Corrected position and its error per axis; null without one. */
  readonly position: { readonly at: PlanPoint; readonly sigmaFt: number } | null
  readonly sight: Sight
  /** For each facet, how often a photo from it shows each other one. */
  readonly shares: readonly Float64Array[]
  /** How likely what was said or confirmed is, for each place shown. */
  readonly said: Float64Array
  /** Where the thing photographed is pinned, when a person said so. */
  readonly pin: PlanPoint | null
}

/** How likely a photo's evidence is for each place stood on and each offset, at [place * offsets + offset]. */
export interface Likelihoods {
  /** When it shows the place stood on. */
  readonly own: Float64Array
  /** When it shows another. */
  readonly across: Float64Array
}

/** A camera near a pin stands within about this of it. */
const PIN_REACH_FT = 10
const PIN_FLOOR = 0.02
/** Places and offsets less likely than this add nothing to what is shown. */
const UNLIKELY = 1e-7

/**
 * The Gaussian of the position averaged over each place's points, times how likely the photo shows what it is said to.
 *
 * @param offsetsFt offsets along one axis; the square grid of them is used
 */
export function likelihoods(evidence: PhotoEvidence, cells: PlanCells, offsetsFt: Float64Array): Likelihoods {
  const tables = axisTables(evidence, cells, offsetsFt)
  const steps = offsetsFt.length
  return {
    own: averaged(cells, { tables, steps, worth: ownWorth(evidence, cells) }),
    across: averaged(cells, { tables, steps, worth: acrossWorth(evidence, cells) }),
  }
}

/**
 * The places that a photo shows, given how likely each place stood on and offset is after all photos were heard; adds up
 * to 1.
 *
 * @param heard `standing` is the chance of each place and offset, `likelihood` what the photo itself put in, `facing`
 *   the factor by which each place's own photos are likelier in the photo's direction
 */
export function placesShown(
  evidence: PhotoEvidence,
  cells: PlanCells,
  heard: {
    readonly offsetsFt: Float64Array
    readonly standing: Float64Array
    readonly likelihood: Float64Array
    readonly facing: Float64Array
  },
): Float64Array {
  const { offsetsFt, standing, likelihood, facing } = heard
  const count = cells.places.length
  const shown = new Float64Array(count)
  const weights = pointWeights(evidence, cells, {
    offsetsFt,
    ratio: standing.map((chance, at) => (chance > UNLIKELY ? chance / (likelihood[at] ?? 1) : 0)),
  })
  const { own, usual, hits, factors } = evidence.sight
  const onPlace = new Float64Array(count)
  weights.forEach((weight, point) => {
    if (weight === 0) return
    const place = cells.placeOf[point] ?? 0
    onPlace[place] = (onPlace[place] ?? 0) + weight
    shown[place] = (shown[place] ?? 0) + weight * (own[point] ?? 0) * (facing[place] ?? 1)
    for (let ahead = 0; ahead < factors.length; ahead++) {
      const other = hits[point * factors.length + ahead] ?? -1
      if (other < 0) continue
      shown[other] = (shown[other] ?? 0) + weight * (factors[ahead] ?? 0) * (evidence.shares[place]?.[other] ?? 0)
    }
  })
  evidence.shares.forEach((shares, place) => {
    shares.forEach((share, other) => (shown[other] = (shown[other] ?? 0) + (onPlace[place] ?? 0) * usual * share))
  })
  const said = shown.map((chance, place) => chance * (evidence.said[place] ?? 0))
  const total = said.reduce((sum, chance) => sum + chance, 0)
  return total > 0 ? said.map((chance) => chance / total) : said.fill(1 / count)
}

/** Gaussian factors of every lattice column and row for every offset; a product of two is the density at a point. */
interface AxisTables {
  readonly x: Float64Array
  readonly y: Float64Array
  /** Columns and rows so far from the position that no offset brings it there. */
  readonly isFarX: Uint8Array
  readonly isFarY: Uint8Array
}

/** Standard deviations beyond which a Gaussian is nothing beside the share of wholly wrong positions. */
const FAR = 5

function axisTables({ position }: PhotoEvidence, cells: PlanCells, offsetsFt: Float64Array): AxisTables | null {
  if (position === null) return null
  const { at, sigmaFt } = position
  const steps = offsetsFt.length
  const reachFt = FAR * sigmaFt + Math.abs(offsetsFt[0] ?? 0)
  const factor = (axisFt: Float64Array, ft: number, isFar: Uint8Array): Float64Array => {
    const table = new Float64Array(axisFt.length * steps)
    for (let index = 0; index < axisFt.length; index++) {
      const apartFt = ft - (axisFt[index] ?? 0)
      isFar[index] = Number(Math.abs(apartFt) > reachFt)
      for (let step = 0; isFar[index] === 0 && step < steps; step++) {
        const z = (apartFt - (offsetsFt[step] ?? 0)) / sigmaFt
        table[index * steps + step] = Math.exp((-z * z) / 2) / sigmaFt / Math.sqrt(2 * Math.PI)
      }
    }
    return table
  }
  const isFarX = new Uint8Array(cells.xFt.length)
  const isFarY = new Uint8Array(cells.yFt.length)
  return { x: factor(cells.xFt, at.xFt, isFarX), y: factor(cells.yFt, at.yFt, isFarY), isFarX, isFarY }
}

interface Averaging {
  readonly tables: AxisTables | null
  readonly steps: number
  readonly worth: Float64Array
}

/** Adds each column's points first: a column shares the factor of its x. */
function averaged(cells: PlanCells, { tables, steps, worth }: Averaging): Float64Array {
  const { starts, column, row } = cells
  const square = steps * steps
  const out = new Float64Array(cells.places.length * square)
  const gross = tables === null ? 1 : PLACEMENT_CALIBRATION.grossPosition
  const floor = tables === null ? 1 : grossDensity(cells)
  const rows = new Float64Array(steps)
  for (let place = 0; place < cells.places.length; place++) {
    const to = starts[place + 1] ?? 0
    const count = to - (starts[place] ?? 0)
    let sum = 0
    for (let point = starts[place] ?? 0; point < to; point++) {
      sum += worth[point] ?? 0
      const across = column[point] ?? 0
      if (tables === null || tables.isFarX[across] === 1) continue
      const up = row[point] ?? 0
      if (tables.isFarY[up] === 0) addTo(rows, worth[point] ?? 0, { table: tables.y, at: up * steps })
      if (point + 1 < to && column[point + 1] === across) continue
      for (let i = 0; i < steps; i++) {
        const x = ((1 - gross) * (tables.x[across * steps + i] ?? 0)) / count
        const at = place * square + i * steps
        for (let j = 0; j < steps; j++) out[at + j] = (out[at + j] ?? 0) + x * (rows[j] ?? 0)
      }
      rows.fill(0)
    }
    const anywhere = (gross * floor * sum) / count
    for (let at = place * square; at < (place + 1) * square; at++) out[at] = (out[at] ?? 0) + anywhere
  }
  return out
}

function addTo(
  sums: Float64Array,
  factor: number,
  { table, at }: { readonly table: Float64Array; readonly at: number },
): void {
  for (let j = 0; j < sums.length; j++) sums[j] = (sums[j] ?? 0) + factor * (table[at + j] ?? 0)
}

/** For each point, the density of the position there over all offsets, each weighed by the ratio given for its place. */
function pointWeights(
  evidence: PhotoEvidence,
  cells: PlanCells,
  { offsetsFt, ratio }: { readonly offsetsFt: Float64Array; readonly ratio: Float64Array },
): Float64Array {
  const { starts, column, row } = cells
  const steps = offsetsFt.length
  const square = steps * steps
  const tables = axisTables(evidence, cells, offsetsFt)
  const gross = tables === null ? 1 : PLACEMENT_CALIBRATION.grossPosition
  const floor = tables === null ? 1 : grossDensity(cells)
  const weights = new Float64Array(column.length)
  const rows = new Float64Array(steps)
  for (let place = 0; place < cells.places.length; place++) {
    const from = starts[place] ?? 0
    const to = starts[place + 1] ?? 0
    let all = 0
    for (let at = place * square; at < (place + 1) * square; at++) all += ratio[at] ?? 0
    let summed = -1
    for (let point = from; all > 0 && point < to; point++) {
      const across = column[point] ?? 0
      const up = (row[point] ?? 0) * steps
      let near = 0
      if (tables !== null && tables.isFarX[across] === 0 && tables.isFarY[row[point] ?? 0] === 0) {
        if (summed !== across) {
          rows.fill(0)
          for (let i = 0; i < steps; i++) {
            addTo(rows, tables.x[across * steps + i] ?? 0, { table: ratio, at: place * square + i * steps })
          }
          summed = across
        }
        for (let j = 0; j < steps; j++) near += (rows[j] ?? 0) * (tables.y[up + j] ?? 0)
      }
      weights[point] = (((1 - gross) * near + gross * floor * all) * pinWorth(evidence, cells, point)) / (to - from)
    }
  }
  return weights
}

function ownWorth(evidence: PhotoEvidence, cells: PlanCells): Float64Array {
  const { sight, said } = evidence
  const worth = new Float64Array(cells.placeOf.length)
  for (let point = 0; point < worth.length; point++) {
    const own = (sight.own[point] ?? 0) * (said[cells.placeOf[point] ?? 0] ?? 0)
    worth[point] = own * pinWorth(evidence, cells, point)
  }
  return worth
}

function acrossWorth(evidence: PhotoEvidence, cells: PlanCells): Float64Array {
  const { sight, shares, said } = evidence
  const ahead = sight.factors.length
  const ground = shares.length
  const usual = shares.map(
    (row) => row.reduce((sum, share, other) => sum + share * (said[other] ?? 0), 0) * sight.usual,
  )
  const worth = new Float64Array(cells.placeOf.length)
  for (let point = 0; point < worth.length; point++) {
    const place = cells.placeOf[point] ?? ground
    const row = shares[place]
    if (row === undefined) continue
    let sum = usual[place] ?? 0
    for (let step = 0; step < ahead; step++) {
      const other = sight.hits[point * ahead + step] ?? -1
      if (other >= 0) sum += (sight.factors[step] ?? 0) * (row[other] ?? 0) * (said[other] ?? 0)
    }
    worth[point] = sum * pinWorth(evidence, cells, point)
  }
  return worth
}

function pinWorth({ pin }: PhotoEvidence, { xFt, yFt, column, row }: PlanCells, point: number): number {
  if (pin === null) return 1
  const x = ((xFt[column[point] ?? 0] ?? 0) - pin.xFt) / PIN_REACH_FT
  const y = ((yFt[row[point] ?? 0] ?? 0) - pin.yFt) / PIN_REACH_FT
  return PIN_FLOOR + (1 - PIN_FLOOR) * Math.exp(-(x * x + y * y) / 2)
}

/** A wholly wrong position is anywhere on the plan alike. */
function grossDensity({ xFt, yFt, stepFt }: PlanCells): number {
  return 1 / (xFt.length * yFt.length * stepFt * stepFt)
}
