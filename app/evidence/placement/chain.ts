/** One moment of a walk: how likely its photo is, for each place and offset, at [place * offsets + offset]. */
export interface Moment {
  /** Seconds since the moment before; 0 for the first. */
  readonly seconds: number
  readonly likelihood: Float64Array
}

/** What a chain goes by. */
export interface ChainTables {
  readonly places: number
  /** Stages of a stay at a place that nothing tells apart but how soon it ends. */
  readonly stages: number
  /** Offsets along one axis. */
  readonly steps: number
  /** At [place * offsets + offset], all in the first stage. */
  readonly start: Float64Array
  /** At [from * stands + to], where a stand is [stage * places + place]. */
  readonly placeAfter: (seconds: number) => Float64Array
  /** Along one axis, at [from * steps + to]. */
  readonly offsetAfter: (seconds: number) => Float64Array
}

/** What a chain says when all its moments were heard. */
export interface HeardChain {
  /** For each moment the probability of every place and offset; adds up to 1. */
  readonly states: readonly Float64Array[]
  /** For each moment the probability of having come to each place with it. */
  readonly entries: readonly Float64Array[]
}

/** What is less likely than this beside the likeliest is let go. */
const NEGLIGIBLE = 1e-9
/** Nobody is taken to have come from, or to go to, a place less likely than this. */
const UNLIKELY = 1e-5
/** Changes of place less likely than this between two photos do not happen. */
const NEVER = 1e-6

/**
 * Forward-backward over a hidden Markov chain whose state is a place and an offset of the positions that move
 * independently of each other. Scaled at every moment, so that long walks do not underflow.
 *
 * Pauses after every moment, so that whoever runs it can let other work through.
 *
 * @param welcome for each moment, factors on coming to each place with it
 */
export function* heardFromAll(
  moments: readonly Moment[],
  tables: ChainTables,
  welcome: readonly Float64Array[],
): Generator<void, HeardChain> {
  const size = tables.start.length * tables.stages
  const desk = deskFor(tables, size)
  const states = slices(moments.length, size)
  const entering = slices(moments.length, size)
  for (const [at, { seconds, likelihood }] of moments.entries()) {
    const here = states[at] ?? desk.spare
    const came = entering[at] ?? desk.spare
    const before = states[at - 1]
    if (before === undefined) begin(tables, welcome[0], { here, came })
    else move(desk, { from: before, seconds, welcome: welcome[at], here, came })
    multiply(here, likelihood, here)
    yield
  }
  const after = new Float64Array(size).fill(1)
  const entries = slices(moments.length, tables.places)
  for (let at = moments.length - 1; at >= 0; at--) {
    const moment = moments[at]
    const state = states[at]
    if (moment === undefined || state === undefined) continue
    multiply(state, after, state)
    addEntries(tables, { here: state, came: entering[at] ?? desk.spare }, entries[at] ?? desk.spare)
    if (at > 0) {
      multiply(after, moment.likelihood, desk.spare)
      moveBack(desk, { from: desk.spare, seconds: moment.seconds, welcome: welcome[at], here: after })
    }
    overStages(state, tables)
    yield
  }
  return { states: states.map((state) => state.subarray(0, tables.start.length)), entries }
}

/** Room to work in, so that nothing is made anew at every moment. */
interface Desk {
  readonly tables: ChainTables
  readonly drifted: Float64Array
  readonly half: Float64Array
  readonly spare: Float64Array
}

function deskFor(tables: ChainTables, size: number): Desk {
  const half = new Float64Array(tables.steps ** 2)
  return { tables, drifted: new Float64Array(size), half, spare: new Float64Array(size) }
}

function slices(count: number, size: number): readonly Float64Array[] {
  const all = new Float64Array(count * size)
  return Array.from({ length: count }, (_, at) => all.subarray(at * size, (at + 1) * size))
}

interface Come {
  readonly here: Float64Array
  /** Share of each state that came from another place, 0 to 1. */
  readonly came: Float64Array
}

/** Adds what was found of every stage into the first. */
function overStages(state: Float64Array, { start: { length } }: ChainTables): void {
  for (let at = length; at < state.length; at++) state[at % length] = (state[at % length] ?? 0) + (state[at] ?? 0)
}

function begin({ start, places }: ChainTables, welcome: Float64Array | undefined, { here, came }: Come): void {
  const square = start.length / places
  for (let at = 0; at < start.length; at++) here[at] = (start[at] ?? 0) * (welcome?.[Math.floor(at / square)] ?? 1)
  came.fill(1)
}

function addEntries({ places, steps }: ChainTables, { here, came }: Come, entries: Float64Array): void {
  const square = steps * steps
  for (let stand = 0; stand * square < here.length; stand++) {
    let sum = 0
    for (let at = stand * square; at < (stand + 1) * square; at++) sum += (here[at] ?? 0) * (came[at] ?? 0)
    entries[stand % places] = (entries[stand % places] ?? 0) + sum
  }
}

/**
 * The product of two, made to add up to 1, without what is negligible. Where they exclude each other the first stands. The
 * second is repeated when it is shorter.
 */
function multiply(one: Float64Array, other: Float64Array, into: Float64Array): void {
  const { length } = other
  let total = 0
  let most = 0
  for (let at = 0; at < one.length; at++) {
    const both = (one[at] ?? 0) * (other[at % length] ?? 0)
    total += both
    if (both > most) most = both
  }
  const isOneAlone = !(total > 0)
  if (isOneAlone) total = one.reduce((sum, chance) => sum + chance, 0)
  const least = most * NEGLIGIBLE
  for (let at = 0; at < one.length; at++) {
    const both = (one[at] ?? 0) * (isOneAlone ? 1 : (other[at % length] ?? 0))
    into[at] = both < least ? 0 : both / total
  }
}

interface Move {
  readonly from: Float64Array
  readonly seconds: number
  readonly welcome: Float64Array | undefined
  readonly here: Float64Array
}

function move(desk: Desk, { from, seconds, welcome, here, came }: Move & Come): void {
  const { places, stages, steps, placeAfter, offsetAfter } = desk.tables
  const stands = places * stages
  const square = steps * steps
  const chances = placeAfter(seconds)
  const drifted = steps === 1 ? from : drift(desk, from, offsetAfter(seconds))
  came.fill(0)
  for (let a = 0; a < stands; a++) {
    if (isBelow(UNLIKELY, drifted, { from: a * square, length: square })) continue
    for (let b = 0; b < stands; b++) {
      const chance = (chances[a * stands + b] ?? 0) * (welcome?.[b % places] ?? 1)
      if (a % places === b % places || chance < NEVER) continue
      const shift = (b - a) * square
      for (let at = a * square; at < (a + 1) * square; at++) {
        came[at + shift] = (came[at + shift] ?? 0) + chance * (drifted[at] ?? 0)
      }
    }
  }
  for (let b = 0; b < stands; b++) {
    for (let at = b * square; at < (b + 1) * square; at++) {
      const newly = came[at] ?? 0
      let sum = newly
      for (let a = b % places; a < stands; a += places) {
        sum += (chances[a * stands + b] ?? 0) * (drifted[at + (a - b) * square] ?? 0)
      }
      here[at] = sum
      came[at] = sum > 0 ? newly / sum : 0
    }
  }
}

function moveBack(desk: Desk, { from, seconds, welcome, here }: Move): void {
  const { places, stages, steps, placeAfter, offsetAfter } = desk.tables
  const stands = places * stages
  const square = steps * steps
  const chances = placeAfter(seconds)
  const drifted = steps === 1 ? from : drift(desk, from, turned(offsetAfter(seconds), steps))
  here.fill(0)
  for (let b = 0; b < stands; b++) {
    if (isBelow(UNLIKELY, drifted, { from: b * square, length: square })) continue
    for (let a = 0; a < stands; a++) {
      const isSame = a % places === b % places
      const chance = (chances[a * stands + b] ?? 0) * (isSame ? 1 : (welcome?.[b % places] ?? 1))
      if (chance < NEVER) continue
      const shift = (a - b) * square
      for (let at = b * square; at < (b + 1) * square; at++) {
        here[at + shift] = (here[at + shift] ?? 0) + chance * (drifted[at] ?? 0)
      }
    }
  }
}

function isBelow(
  limit: number,
  values: Float64Array,
  { from, length }: { readonly from: number; readonly length: number },
): boolean {
  let sum = 0
  for (let at = from; at < from + length; at++) sum += values[at] ?? 0
  return sum <= limit
}

/** The table read against its direction. */
function turned(table: Float64Array, steps: number): Float64Array {
  return Float64Array.from(table, (_, at) => table[(at % steps) * steps + Math.floor(at / steps)] ?? 0)
}

/** Moves the offsets of every place along both axes; the result lies on the desk. */
function drift({ tables: { steps }, half, drifted }: Desk, from: Float64Array, table: Float64Array): Float64Array {
  const square = steps * steps
  drifted.fill(0)
  for (let place = 0; place < from.length; place += square) {
    if (isBelow(0, from, { from: place, length: square })) continue
    half.fill(0)
    for (let x = 0; x < square; x += steps) {
      for (let a = 0; a < steps; a++) {
        const source = from[place + x + a] ?? 0
        if (source === 0) continue
        for (let b = 0; b < steps; b++) half[x + b] = (half[x + b] ?? 0) + source * (table[a * steps + b] ?? 0)
      }
    }
    for (let a = 0; a < steps; a++) {
      for (let b = 0; b < steps; b++) {
        const chance = table[a * steps + b] ?? 0
        if (chance === 0) continue
        for (let y = 0; y < steps; y++) {
          const at = place + b * steps + y
          drifted[at] = (drifted[at] ?? 0) + chance * (half[a * steps + y] ?? 0)
        }
      }
    }
  }
  return drifted
}
