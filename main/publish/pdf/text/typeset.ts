import type { Anchor, Text } from '../../../../app/packet/document.ts'
import { type Atom, atomise, graphemesOf, mirrored, type Word } from './text-atoms.ts'
import type { OpenFont } from './font-shelf.ts'
import { type GlyphRun, shape } from './shape.ts'
import type { TextStyle } from './text-style.ts'

/** Glyphs of one font and style in their place on a line, or a box for a character that no font has. */
export interface Piece {
  readonly xPt: number
  readonly widthPt: number
  readonly sizePt: number
  readonly colour: string
  readonly link: Anchor | null
  readonly text: string
  readonly rtl: boolean
  readonly glyphs: { readonly font: OpenFont; readonly run: GlyphRun } | null
}

/** A line of text, ready to draw: pieces from left to right, x from the line's left end. */
export interface TextLine {
  readonly heightPt: number
  /** From the line's top. */
  readonly baselinePt: number
  readonly widthPt: number
  /** Whether the text is read from right to left, so that it starts at the right. */
  readonly rtl: boolean
  readonly pieces: readonly Piece[]
}

/** Sets text in lines, and remembers the characters that no font has. */
export interface Typesetter {
  /** Lines no wider than the width; at least one, if empty. */
  readonly lines: (text: Text, style: TextStyle, widthPt: number) => readonly TextLine[]
  /** Width of the widest word, below which text would be broken inside words. */
  readonly widestWordPt: (text: Text, style: TextStyle) => number
  readonly missing: ReadonlySet<string>
}

const MISSING_WIDTH = 0.6
/** Rounding of widths must not push a word that fits to the next line. */
const SLACK_PT = 0.01

interface Sized {
  readonly atom: Atom
  readonly widthPt: number
}

/** A typesetter for one packet. */
export function typesetter(): Typesetter {
  const missing = new Set<string>()
  const noteMissing = (word: Word) => {
    for (const atom of word.letters) if (atom.font === null) missing.add(atom.text)
  }
  return {
    missing,
    lines: (text, style, widthPt) => {
      const { words, rtl } = atomise(text, style)
      words.forEach(noteMissing)
      return fillLines(words, widthPt).map((atoms) => finishLine(atoms, style, rtl))
    },
    widestWordPt: (text, style) => Math.max(0, ...atomise(text, style).words.map((word) => width(word.letters))),
  }
}

function width(atoms: readonly Atom[]): number {
  return atoms.reduce((sum, atom) => sum + atomWidth(atom), 0)
}

function atomWidth(atom: Atom): number {
  if (atom.font === null) return atom.style.sizePt * MISSING_WIDTH
  return (glyphsOf(atom, atom.font).advance / 1000) * sizeOf(atom)
}

function sizeOf(atom: Atom): number {
  return atom.style.sizePt * (atom.font?.file.sizeFactor ?? 1)
}

function glyphsOf(atom: Atom, font: OpenFont): GlyphRun {
  const rtl = isRtl(atom)
  return shape(font, rtl ? mirrored(atom.text) : atom.text, rtl)
}

/** Fills lines word by word; a word wider than a whole line is broken between graphemes. */
function fillLines(words: readonly Word[], widthPt: number): readonly (readonly Sized[])[] {
  const lines: (readonly Sized[])[] = []
  let line: Sized[] = []
  let filledPt = 0
  let pending: Sized[] = []
  const endLine = () => {
    lines.push(line)
    line = []
    filledPt = 0
    pending = []
  }
  for (const word of words) {
    const letters = word.letters.map((atom) => ({ atom, widthPt: atomWidth(atom) }))
    const wordPt = sum(letters)
    if (line.length > 0 && filledPt + sum(pending) + wordPt > widthPt + SLACK_PT) endLine()
    const parts = wordPt > widthPt + SLACK_PT ? breakAnywhere(word.letters, widthPt) : [letters]
    parts.forEach((part, i) => {
      if (i > 0) endLine()
      line.push(...pending, ...part)
      filledPt = sum(line)
    })
    pending = word.spaces.map((atom) => ({ atom, widthPt: atomWidth(atom) }))
    if (word.endsLine) endLine()
  }
  if (line.length > 0 || lines.length === 0) lines.push(line)
  return lines
}

function sum(atoms: readonly Sized[]): number {
  return atoms.reduce((total, atom) => total + atom.widthPt, 0)
}

function breakAnywhere(letters: readonly Atom[], widthPt: number): readonly (readonly Sized[])[] {
  const lines: Sized[][] = [[]]
  let filledPt = 0
  for (const atom of letters) {
    for (const grapheme of graphemesOf(atom.text)) {
      const piece = { ...atom, text: grapheme }
      const piecePt = atomWidth(piece)
      if (filledPt + piecePt > widthPt + SLACK_PT && filledPt > 0) {
        lines.push([])
        filledPt = 0
      }
      const line = lines.at(-1)
      const last = line?.at(-1)
      const joins =
        last !== undefined &&
        last.atom.font === atom.font &&
        last.atom.style === atom.style &&
        last.atom.level === atom.level &&
        last.atom.link === atom.link
      const joined = joins ? { ...atom, text: last.atom.text + grapheme } : piece
      if (joins) line?.pop()
      line?.push({ atom: joined, widthPt: atomWidth(joined) })
      filledPt = sum(line ?? [])
    }
  }
  return lines
}

function finishLine(atoms: readonly Sized[], style: TextStyle, rtl: boolean): TextLine {
  const pieces: Piece[] = []
  let x = 0
  for (const stretch of stretches(visualOrder(atoms))) {
    const piece = pieceOf(stretch, x)
    pieces.push(piece)
    x += piece.widthPt
  }
  // Capitals stand in the middle of the leading; they are two thirds of the size high.
  return {
    heightPt: style.leadingPt,
    baselinePt: (style.leadingPt + style.sizePt * 0.66) / 2,
    widthPt: x,
    rtl,
    pieces,
  }
}

/** Neighbours that nothing but word borders part, from left to right. */
function stretches(atoms: readonly Sized[]): readonly (readonly [Sized, ...Sized[]])[] {
  const found: [Sized, ...Sized[]][] = []
  for (const sized of atoms) {
    const last = found.at(-1)
    if (last !== undefined && goesOn(last[0].atom, sized.atom)) last.push(sized)
    else found.push([sized])
  }
  return found
}

function goesOn(a: Atom, b: Atom): boolean {
  const sameLook = a.font === b.font && a.style === b.style && a.link === b.link
  return sameLook && a.font !== null && !isRtl(a) && !isRtl(b)
}

function pieceOf(stretch: readonly [Sized, ...Sized[]], xPt: number): Piece {
  const { atom } = stretch[0]
  return {
    xPt,
    widthPt: sum(stretch),
    sizePt: sizeOf(atom),
    colour: atom.style.colour,
    link: atom.link,
    text: stretch.map((sized) => sized.atom.text).join(''),
    rtl: isRtl(atom),
    glyphs: atom.font === null ? null : { font: atom.font, run: runOf(stretch, atom.font) },
  }
}

function runOf(stretch: readonly Sized[], font: OpenFont): GlyphRun {
  const runs = stretch.map((sized) => glyphsOf(sized.atom, font))
  return { glyphs: runs.flatMap((run) => run.glyphs), advance: runs.reduce((total, run) => total + run.advance, 0) }
}

function isRtl(atom: Atom): boolean {
  return (atom.level & 1) === 1
}

/** Atoms of a line from left to right: rule L2 of the Unicode bidirectional algorithm (UAX 9). */
function visualOrder(atoms: readonly Sized[]): readonly Sized[] {
  const highest = Math.max(0, ...atoms.map((sized) => sized.atom.level))
  let order = [...atoms]
  for (let level = highest; level >= 1; level -= 1) order = reverseRuns(order, level)
  return order
}

function reverseRuns(atoms: readonly Sized[], level: number): Sized[] {
  const found: Sized[] = []
  let run: Sized[] = []
  for (const sized of atoms) {
    if (sized.atom.level >= level) {
      run.unshift(sized)
    } else {
      found.push(...run, sized)
      run = []
    }
  }
  return [...found, ...run]
}
