import { readFigure } from './typed-figure.ts'

/** What a person typed for a force. Kilograms are no force: they are only offered as pounds, never taken over silently. */
export type TypedForce =
  | { readonly kind: 'none' }
  /** `typed` is empty where pounds were typed. */
  | { readonly kind: 'read'; readonly forceLbf: number; readonly typed: string; readonly caution: string | null }
  | { readonly kind: 'offer'; readonly forceLbf: number; readonly typed: string; readonly sentence: string }
  | { readonly kind: 'refused'; readonly sentence: string }

/** One pound-force in newtons (NIST SP 811, appendix B.8). */
const NEWTONS_PER_LBF = 4.4482216152605
/** Standard acceleration of free fall, newtons to one kilogram-force (NIST SP 811). */
const NEWTONS_PER_KGF = 9.80665
/** A person with a hand gauge rarely pulls harder on one tile; common practice, no source. */
const UNUSUAL_LBF = 150
const MOST_LBF = 1000

const POUNDS: readonly string[] = ['', 'lbf', 'lb', 'lbs', 'lb.', 'pound', 'pounds', '#']
const NEWTONS: readonly string[] = ['n', 'newton', 'newtons']
const KILOGRAMS: readonly string[] = ['kg', 'kgf', 'kp', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms']
const NO_FORCE: readonly string[] = ['', '-', 'by hand', 'hand', 'none', 'no force', 'not read', 'n/a']

/** Reads a force as people type it: "35", "35 lbf", "155 N", "by hand". Kilograms come back as an offer to be confirmed. */
export function readForce(text: string): TypedForce {
  const typed = text.trim()
  if (NO_FORCE.includes(typed.toLowerCase())) return { kind: 'none' }
  const figure = readFigure(typed)
  if (figure === null) return refused(`"${typed}" is not a force. Write pounds, such as 35, or "by hand".`)
  const { value, unit } = figure
  if (value < 0) return refused('A force cannot be negative. Write how hard the tile was pulled.')
  if (POUNDS.includes(unit)) return read(value, '')
  if (NEWTONS.includes(unit)) return read(value / NEWTONS_PER_LBF, typed)
  if (KILOGRAMS.includes(unit)) {
    const forceLbf = (value * NEWTONS_PER_KGF) / NEWTONS_PER_LBF
    if (forceLbf > MOST_LBF) return tooMuch(forceLbf)
    const sentence = `${typed} is a weight on the scale of kilograms; as a force it is ${forceLbf.toFixed(1)} lbf. Confirm that, or write pounds.`
    return { kind: 'offer', forceLbf, typed, sentence }
  }
  return refused(`"${unit}" is not a unit of force that is known here. Write pounds (lbf) or newtons (N).`)
}

function read(forceLbf: number, typed: string): TypedForce {
  if (forceLbf > MOST_LBF) return tooMuch(forceLbf)
  const caution =
    forceLbf > UNUSUAL_LBF
      ? `${forceLbf.toFixed(0)} lbf is far more than a person pulls on one tile by a hand gauge. Check the figure and its unit.`
      : null
  return { kind: 'read', forceLbf, typed, caution }
}

function tooMuch(forceLbf: number): TypedForce {
  return refused(`${forceLbf.toFixed(0)} lbf can't be right for one tile. Check the figure and its unit.`)
}

function refused(sentence: string): TypedForce {
  return { kind: 'refused', sentence }
}
