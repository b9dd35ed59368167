import type { TraverseSide } from '../../../app/roof/traverse.ts'
import { parseTypedLength } from '../typed-length.ts'

/** One side as typed in two fields. */
export interface TypedTraverseSide {
  readonly length: string
  readonly turn: string
}

/** A line of a table of sides that nobody has filled in. */
export const BLANK_SIDE: TypedTraverseSide = { length: '', turn: '' }

/**
 * Parts pasted lines such as `42' 6" R`, `R 42' 6"`, `18 left`, `12.5 ft az 200` or `30<tab>+45` into length and turn.
 * Blank lines are left out; a line that can't be parted stays whole in the length, where its fault is shown.
 */
export function partTraverseLines(pasted: string): readonly TypedTraverseSide[] {
  return pasted
    .split(/\r?\n|;/)
    .map((line) => line.trim())
    .filter((line) => line !== '')
    .map(partLine)
}

const TURN = String.raw`(?:(?:r|l|right|left)(?:\s*\d+(?:\.\d+)?\s*°?)?|[+\-−]\d+(?:\.\d+)?\s*°?|(?:az|azimuth)\s*\d+(?:\.\d+)?\s*°?|straight)`
const LENGTH_THEN_TURN = new RegExp(String.raw`^(.*?\S)(?:\s*[,\t]\s*|\s+|(?<=["″”'′’]))(${TURN})$`, 'i')
/** The shorter turn is tried first: in `R 42' 6"` the number belongs to the length. */
const TURNS_THEN_LENGTH = ['r|l|right|left', TURN].map(
  (turn) => new RegExp(String.raw`^(${turn})(?:\s*[,\t]\s*|\s+)(\S.*)$`, 'i'),
)

function partLine(line: string): TypedTraverseSide {
  const ended = LENGTH_THEN_TURN.exec(line)
  if (ended !== null && parseTypedLength(ended[1] ?? '') !== null) {
    return { length: (ended[1] ?? '').trim(), turn: (ended[2] ?? '').trim() }
  }
  for (const form of TURNS_THEN_LENGTH) {
    const begun = form.exec(line)
    if (begun !== null && parseTypedLength(begun[2] ?? '') !== null) {
      return { length: (begun[2] ?? '').trim(), turn: (begun[1] ?? '').trim() }
    }
  }
  return { length: line, turn: '' }
}

/**
 * Reads the turn made before a side: `R` and `L` are square turns, `R 45` and `-45` others, `az 200` a true azimuth;
 * nothing, or `straight`, goes on straight.
 *
 * @returns null when the text is no turn
 */
export function parseTurn(
  typed: string,
): { readonly kind: 'turn'; readonly deg: number } | { readonly kind: 'azimuth'; readonly deg: number } | null {
  const text = typed.trim().toLowerCase().replace('−', '-').replace(/\s*°$/, '')
  if (text === '' || text === 'straight') return { kind: 'turn', deg: 0 }
  const azimuth = /^(?:az|azimuth)\s*(\d+(?:\.\d+)?)$/.exec(text)
  if (azimuth !== null) return Number(azimuth[1]) <= 360 ? { kind: 'azimuth', deg: Number(azimuth[1]) % 360 } : null
  const side = /^(r|l|right|left)(?:\s*(\d+(?:\.\d+)?))?$/.exec(text)
  if (side !== null) return turnOf(Number(side[2] ?? 90) * (side[1]?.startsWith('r') === true ? 1 : -1))
  return /^[+-]?\d+(?:\.\d+)?$/.test(text) ? turnOf(Number(text)) : null
}

function turnOf(deg: number): { readonly kind: 'turn'; readonly deg: number } | null {
  return Math.abs(deg) < 180 ? { kind: 'turn', deg } : null
}

/** Sides read from the table, or the first line that can't be read. Lines with both fields empty are passed over. */
export type ReadTraverse =
  | { readonly ok: true; readonly sides: readonly TraverseSide[] }
  | { readonly ok: false; readonly row: number; readonly sentence: string }

/** Reads typed sides; the sentence of a fault names the side as people count it. */
export function readTraverse(rows: readonly TypedTraverseSide[]): ReadTraverse {
  const sides: TraverseSide[] = []
  for (const [row, { length, turn }] of rows.entries()) {
    if (length.trim() === '' && turn.trim() === '') continue
    const lengthFt = parseTypedLength(length)
    if (lengthFt === null) {
      return { ok: false, row, sentence: `Side ${row + 1}: type a length such as 42' 6", 42.5 or 13 m.` }
    }
    const turned = parseTurn(turn)
    if (turned === null) return { ok: false, row, sentence: `Side ${row + 1}: type R, L, R 45, -45 or az 200.` }
    sides.push(
      turned.kind === 'turn'
        ? { kind: 'turn', lengthFt, turnDeg: turned.deg }
        : { kind: 'azimuth', lengthFt, azimuthDeg: turned.deg },
    )
  }
  return { ok: true, sides }
}
