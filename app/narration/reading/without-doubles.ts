import type { Sign } from '../words/condition-words.ts'
import type { Observation } from './observe.ts'

/** Signs that say the same thing of the same part in one sentence, the first the more telling. */
const STRONGER: Readonly<Partial<Record<Sign, readonly Sign[]>>> = {
  'crack-to-fastener': ['crack', 'break', 'across', 'hole', 'lengthwise'],
  gap: ['deform', 'raise'],
  off: ['deform', 'loose', 'raise', 'gap'],
  deform: ['rust', 'crease', 'dent'],
  corner: ['crack', 'break', 'shatter', 'chip', 'missing', 'off', 'across', 'crack-to-fastener'],
  lock: ['crack', 'break', 'shatter', 'chip', 'missing', 'off', 'across'],
  across: ['crack', 'break'],
  shatter: ['crack', 'break', 'across', 'missing', 'debris'],
  lengthwise: ['crack', 'break', 'across'],
  chip: ['crack', 'break', 'shatter', 'missing', 'debris'],
  crack: ['break'],
  hole: ['scour', 'missing', 'expose', 'break'],
  slip: ['loose', 'lift', 'off', 'missing', 'gap'],
  lift: ['rust', 'loose', 'deform', 'release', 'gap'],
  loose: ['gap', 'deform', 'off', 'release', 'sound', 'weakly-sound'],
  missing: ['off', 'slip', 'loose', 'expose', 'break', 'lift', 'deform', 'crack'],
  mismatch: ['scour'],
  repair: ['mismatch', 'tear', 'sound', 'weakly-sound', 'crack', 'scour', 'age', 'release', 'hole', 'loose'],
  'mark-by-others': ['repair', 'scour', 'age', 'mismatch'],
  discontinued: ['mismatch', 'no-access'],
  debris: ['expose', 'missing', 'across', 'age', 'loose'],
  raise: ['loose', 'rust', 'lift', 'break', 'slip', 'deform', 'missing'],
  'no-access': ['sound', 'weakly-sound', 'loose', 'expose', 'age', 'debris'],
  sound: ['weakly-sound', 'repair', 'expose'],
  tear: ['expose', 'crack'],
  'high-nail': ['raise', 'missing'],
  scour: ['age', 'missing', 'expose'],
  flaw: ['crack', 'chip'],
}

/** One observation for one thing: the more telling sign stays, with the words of all. */
export function withoutDoubles(found: readonly Observation[]): readonly Observation[] {
  const out: Observation[] = []
  for (const one of found) {
    const at = out.findIndex(
      (other) =>
        (other.component === one.component && (other.condition === one.condition || weakerOf(other, one) !== null)) ||
        isSameUnnamed(other, one),
    )
    const other = out[at]
    if (other === undefined) out.push(one)
    else {
      const weaker = weakerOf(other, one)
      const stays = weaker === other ? one : other
      out[at] = {
        ...stays,
        ...namedOf(stays, stays === one ? other : one),
        merged: [...other.merged, ...one.merged],
      }
    }
  }
  return out
}

/** Conditions that a sentence often says twice, once without the part: "old repair here, roof cement around the pipe". */
const SAID_TWICE: ReadonlySet<string> = new Set(['prior-repair', 'debris-on-roof', 'sound', 'not-accessible'])

/** The same thing said once with its part and once without, or a crack and where it runs to on one unnamed piece. */
function isSameUnnamed(a: Observation, b: Observation): boolean {
  if (a.part === null && b.part === null) return a.component !== b.component && weakerOf(a, b) !== null
  return (a.part === null || b.part === null) && a.condition === b.condition && SAID_TWICE.has(a.condition)
}

/** The part of two observations that are one: the named one. A part carried on from before must fit both. */
function namedOf(stays: Observation, goes: Observation): Pick<Observation, 'part' | 'component'> {
  if (stays.part !== null) return { part: stays.part, component: stays.component }
  const { part, component } = goes
  return { part, component: part === null || part.stands !== 'near' ? component : stays.component }
}

function weakerOf(a: Observation, b: Observation): Observation | null {
  const overlap =
    Math.min(a.signAt.at + a.signAt.length, b.signAt.at + b.signAt.length) > Math.max(a.signAt.at, b.signAt.at)
  if (overlap && a.signAt.length !== b.signAt.length) return a.signAt.length < b.signAt.length ? a : b
  if (STRONGER[a.sign]?.includes(b.sign) === true) return b
  return STRONGER[b.sign]?.includes(a.sign) === true ? a : null
}
