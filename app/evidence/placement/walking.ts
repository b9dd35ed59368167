import { PLACEMENT_CALIBRATION } from './calibration.ts'

/** How an inspector moves between places. The last place is the ground. */
export interface Walking {
  /** Where a walk begins. */
  readonly start: Float64Array
  /** Where a photo by itself was taken, without a walk to place it in. */
  readonly usual: Float64Array
  readonly stages: number
  /** Chances of being at `to` that many seconds after `from`, at [from * stands + to]: see `ChainTables`. */
  readonly after: (seconds: number) => Float64Array
}

/** The tables are kept at four lengths to the doubling. */
const LENGTHS_PER_DOUBLING = 4
const LONGEST_S = 12 * 3600
/** Half of all walks begin with photos from the ground. */
const STARTS_ON_GROUND = 0.6

/**
 * Walking as a Markov process in continuous time: every stay runs through stages of constant rates (Erlang's distribution),
 * as nobody climbs to a slope to leave it at once, and is left for a neighbour. Going up or down is rare beside that.
 *
 * @param neighbours weights from facet to facet
 * @param areaSqFt areas of the facets; more photos are taken on larger ones
 */
export function walkingOver(neighbours: readonly Float64Array[], areaSqFt: readonly number[]): Walking {
  const { stages } = PLACEMENT_CALIBRATION
  const count = neighbours.length + 1
  const stands = count * stages
  const rates = stagedRates(leavingRates(neighbours, areaSqFt), count, stages)
  const tables = new Map<number, Float64Array>()
  const share = neighbours.map((_, facet) => Math.sqrt(areaSqFt[facet] ?? 1))
  const total = share.reduce((sum, weight) => sum + weight, 0)
  const after = (seconds: number): Float64Array => {
    const bounded = Math.min(LONGEST_S, Math.max(0, seconds))
    const length = Math.round(LENGTHS_PER_DOUBLING * Math.log2(1 + bounded))
    const known = tables.get(length)
    if (known !== undefined) return known
    const table = exponential(rates, stands, 2 ** (length / LENGTHS_PER_DOUBLING) - 1)
    tables.set(length, table)
    return table
  }
  const usual = new Float64Array(count)
  after(LONGEST_S)
    .subarray(0, stands)
    .forEach((chance, stand) => (usual[stand % count] = (usual[stand % count] ?? 0) + chance))
  return {
    start: Float64Array.from([...share.map((s) => ((1 - STARTS_ON_GROUND) * s) / total), STARTS_ON_GROUND]),
    usual,
    stages,
    after,
  }
}

/** Rates of leaving every place for every other, at [from * count + to]. */
function leavingRates(neighbours: readonly Float64Array[], areaSqFt: readonly number[]): Float64Array {
  const { onFacetS, onGroundS, onRoofS } = PLACEMENT_CALIBRATION
  const count = neighbours.length + 1
  const rates = new Float64Array(count * count)
  const mean = areaSqFt.slice(0, neighbours.length).reduce((sum, area) => sum + area, 0) / neighbours.length
  neighbours.forEach((row, from) => {
    const pull = row.map((weight, to) => weight * Math.sqrt(areaSqFt[to] ?? 0))
    const total = pull.reduce((sum, weight) => sum + weight, 0)
    const leave = Math.sqrt(mean / (areaSqFt[from] ?? mean)) / onFacetS
    pull.forEach((weight, to) => (rates[from * count + to] = total > 0 ? (leave * weight) / total : 0))
    rates[from * count + count - 1] = 1 / onRoofS
    rates[(count - 1) * count + from] = 1 / onGroundS / neighbours.length
  })
  return rates
}

/** The same rates through stages, so that the mean stay is kept: stage after stage, then to the first one elsewhere. */
function stagedRates(leaving: Float64Array, count: number, stages: number): Float64Array {
  const stands = count * stages
  const rates = new Float64Array(stands * stands)
  for (let place = 0; place < count; place++) {
    const row = leaving.subarray(place * count, (place + 1) * count)
    const leave = stages * row.reduce((sum, rate) => sum + rate, 0)
    for (let stage = 0; stage < stages; stage++) {
      const from = stage * count + place
      rates[from * stands + from] = -leave
      if (stage + 1 < stages) rates[from * stands + from + count] = leave
      else row.forEach((rate, to) => (rates[from * stands + to] = (rates[from * stands + to] ?? 0) + stages * rate))
    }
  }
  return rates
}

/** Matrix exponential of rates times seconds, by scaling and squaring of the second-order series. */
function exponential(rates: Float64Array, count: number, seconds: number): Float64Array {
  const fastest = rates.reduce((most, rate) => Math.max(most, -rate), 0) * seconds
  const halvings = Math.max(0, Math.ceil(Math.log2(Math.max(1e-9, fastest) / 0.02)))
  const small = rates.map((rate) => (rate * seconds) / 2 ** halvings)
  const squared = product(small, small, count)
  let table = small.map((rate, at) => rate + (squared[at] ?? 0) / 2 + (at % (count + 1) === 0 ? 1 : 0))
  for (let doubling = 0; doubling < halvings; doubling++) table = product(table, table, count)
  return table
}

function product(a: Float64Array, b: Float64Array, count: number): Float64Array<ArrayBuffer> {
  const out = new Float64Array(count * count)
  for (let from = 0; from < count; from++) {
    for (let via = 0; via < count; via++) {
      const step = a[from * count + via] ?? 0
      for (let to = 0; to < count; to++) {
        out[from * count + to] = (out[from * count + to] ?? 0) + step * (b[via * count + to] ?? 0)
      }
    }
  }
  return out
}
