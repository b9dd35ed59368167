import { conditions } from '../../evidence/catalog/conditions.ts'
import type { MeasureKey, Measurement } from '../../evidence/finding.ts'
import type { Sign } from '../words/condition-words.ts'
import { isAway } from './extent-of.ts'
import type { Marks } from './marks.ts'
import type { SpokenMeasure } from './quantities.ts'

/** What measured words are read for: the condition, and the signs that led to it. */
export interface Measured {
  readonly condition: keyof typeof conditions
  readonly signs: readonly Sign[]
}

export interface SaidMeasurement {
  readonly measurement: Measurement
  readonly at: SpokenMeasure
}

/**
 * Measured values of a sentence for one observation, with what was measured told by the words beside the number and else
 * by the condition. Forces go to the lift that they were read at. Rough values and ranges say so in their note.
 */
export function measurementsOf(
  marks: Marks,
  measured: Measured,
  list: readonly SpokenMeasure[],
): readonly SaidMeasurement[] {
  const force = list.find(({ unit }) => unit === 'lbf') ?? null
  const out: SaidMeasurement[] = []
  for (const at of list) {
    const what = keyOf(marks, measured, { at, before: out.map(({ measurement }) => measurement.what) })
    if (what === null) continue
    const isLift = what === 'lift-in'
    out.push({
      at,
      measurement: {
        what,
        value: at.value,
        forceLbf: isLift && force !== null && force.value <= 1000 ? force.value : null,
        by: byOf(marks, isLift),
        instrument: instrumentOf(marks),
        note: at.isRough ? `as spoken: ${wordsOf(marks, at)}` : '',
      },
    })
  }
  return out
}

function keyOf(
  marks: Marks,
  { condition, signs }: Measured,
  { at, before }: { at: SpokenMeasure; before: readonly MeasureKey[] },
): MeasureKey | null {
  const { measures } = conditions[condition]
  if (at.unit === 'percent') return 'moisture-percent'
  if (at.unit === 'sqft') return 'area-sqft'
  if (at.unit === 'lbf') return null
  if (at.unit === 'ft') return isAway(marks, at) ? null : measures.includes('length-ft') ? 'length-ft' : null
  if (isAway(marks, at)) return null
  const near = marks.words.slice(Math.max(0, at.at - 6), at.at + at.length + 4).map(({ stem }) => stem)
  const says = (...stems: string[]) => stems.some((stem) => near.includes(stem))
  const isCrack = signs.some((sign) => CRACKS.has(sign))
  if (condition === 'pad-released') return before.includes('pad-length-in') ? 'pad-width-in' : 'pad-length-in'
  if (says('bar', 'expos', 'strip') && measures.includes('bared-exposure-in')) return 'bared-exposure-in'
  if (says('lift', 'rise', 'rais') && measures.includes('lift-in')) return 'lift-in'
  if (says('slip', 'slid', 'mov', 'drop', 'shift') && measures.includes('slip-in')) return 'slip-in'
  if (isCrack && says('long', 'length')) return 'crack-length-in'
  if ((says('wid', 'open', 'gap', 'apart') || at.value <= 0.5) && measures.includes('crack-width-in'))
    return 'crack-width-in'
  if (says('gap', 'open', 'apart', 'away', 'off') && measures.includes('gap-in')) return 'gap-in'
  // How wide the hole of a missing tile is says nothing of the strip that was bared.
  return measures.find((key) => key.endsWith('-in') && key !== 'bared-exposure-in') ?? null
}

const CRACKS: ReadonlySet<Sign> = new Set<Sign>(['crack', 'crack-to-fastener', 'break', 'across', 'lock'])

function byOf(marks: Marks, isLift: boolean): Measurement['by'] {
  if (instrumentOf(marks) !== '') return 'instrument'
  return isLift ? 'hand' : 'eye'
}

/** The instrument that is named, in its own words. */
function instrumentOf({ words }: Marks): string {
  const found = words.find(({ text }) => /^(gauge|tape|ruler|caliper|calipers|meter|scale)$/.test(text))
  return found === undefined || found.text === 'scale' ? '' : found.text
}

function wordsOf({ words }: Marks, { at, length }: SpokenMeasure): string {
  return words
    .slice(Math.max(0, at - 1), at + length + 2)
    .map(({ text }) => text)
    .join(' ')
}
