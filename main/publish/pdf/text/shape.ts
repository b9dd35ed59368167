import type { Glyph } from 'fontkit'
import { type OpenFont, withoutUnknownUnseen } from './font-shelf.ts'

/** A glyph in its place: offsets and advance in thousandths of the text size. */
export interface PlacedGlyph {
  readonly id: number
  /** The glyph's own width, which the PDF's font states. */
  readonly width: number
  readonly advance: number
  readonly xOffset: number
  readonly yOffset: number
  readonly codePoints: readonly number[]
}

/** Glyphs from left to right, whichever way the text is read. */
export interface GlyphRun {
  readonly glyphs: readonly PlacedGlyph[]
  /** Sum of advances, thousandths of the text size. */
  readonly advance: number
}

const SCRIPTS: readonly (readonly [RegExp, string])[] = [
  [/\p{Script=Arabic}/u, 'arab'],
  [/\p{Script=Hebrew}/u, 'hebr'],
  [/\p{Script=Devanagari}/u, 'dev2'],
  [/\p{Script=Greek}/u, 'grek'],
  [/\p{Script=Cyrillic}/u, 'cyrl'],
]

const KEPT_RUNS = 20_000

interface KnownRuns {
  readonly ltr: Map<string, GlyphRun>
  readonly rtl: Map<string, GlyphRun>
}
const runs = new Map<OpenFont, KnownRuns>()

/** Turns text of one font and one direction into glyphs. Shaping is slow and words come again, so runs are kept. */
export function shape(font: OpenFont, text: string, rtl: boolean): GlyphRun {
  const ofFont = runs.get(font) ?? { ltr: new Map(), rtl: new Map() }
  runs.set(font, ofFont)
  const kept = rtl ? ofFont.rtl : ofFont.ltr
  const known = kept.get(text)
  if (known !== undefined) return known
  const run = (!rtl && font.file.pairwise ? shapeByPairs(font, text) : null) ?? shapeWhole(font, text, rtl)
  if (kept.size >= KEPT_RUNS) kept.clear()
  kept.set(text, run)
  return run
}

/** Features that fontkit applies unasked and that leave most pairs of letters as they are; only kerning moves those. */
const KERNING_ONLY = Object.fromEntries(
  ['ccmp', 'locl', 'rlig', 'calt', 'clig', 'liga', 'rclt', 'mark', 'mkmk', 'curs', 'dist'].map((feature) => [
    feature,
    false,
  ]),
)
/** Pairs that none of the pairwise fonts makes a ligature of: printable ASCII, not beginning with f. A test tries them all. */
const NEVER_LIGATURE = /^[ -eg-~][ -~]$/

function shapeWhole(font: OpenFont, text: string, rtl: boolean): GlyphRun {
  const features = NEVER_LIGATURE.test(text) ? KERNING_ONLY : []
  const script = SCRIPTS.find(([pattern]) => pattern.test(text))?.[1] ?? 'latn'
  const known = withoutUnknownUnseen(font, text)
  const laid = font.font.layout(known, features, script, undefined, rtl ? 'rtl' : 'ltr')
  const spelling = spell(known, laid.glyphs, rtl)
  const scale = 1000 / font.font.unitsPerEm
  const glyphs = laid.glyphs.map((glyph, i) => {
    const position = laid.positions[i]
    return {
      id: glyph.id,
      width: glyph.advanceWidth * scale,
      advance: (position?.xAdvance ?? glyph.advanceWidth) * scale,
      xOffset: (position?.xOffset ?? 0) * scale,
      yOffset: (position?.yOffset ?? 0) * scale,
      codePoints: spelling[i] ?? glyph.codePoints,
    }
  })
  return { glyphs, advance: glyphs.reduce((sum, glyph) => sum + glyph.advance, 0) }
}

/**
 * What each glyph stands for. fontkit knows how many characters, but for a shape that several letters share it names the
 * letter that was first to use it: the characters are dealt out again in reading order, where the numbers agree.
 */
function spell(text: string, glyphs: readonly Glyph[], rtl: boolean): readonly (readonly number[])[] {
  const characters = Array.from(text, (character) => character.codePointAt(0) ?? 0)
  const count = glyphs.reduce((sum, glyph) => sum + glyph.codePoints.length, 0)
  if (count !== characters.length) return glyphs.map((glyph) => glyph.codePoints)
  let next = 0
  const read = (rtl ? glyphs.toReversed() : glyphs).map((glyph) =>
    characters.slice(next, (next += glyph.codePoints.length)),
  )
  return rtl ? read.toReversed() : read
}

type Pairs = Map<string, readonly [PlacedGlyph, PlacedGlyph] | null>
const pairsByFont = new Map<OpenFont, Pairs>()

/**
 * Shapes a word by laying out each pair of neighbours once per font: the same glyphs and kerning as laying out the whole,
 * many times faster. Answers null where a pair is not simply two glyphs on the line (a ligature, a mark), which then
 * needs the whole.
 */
function shapeByPairs(font: OpenFont, text: string): GlyphRun | null {
  const pairs: Pairs = pairsByFont.get(font) ?? new Map()
  pairsByFont.set(font, pairs)
  const characters = [...text]
  if (characters.length < 2) return null
  const glyphs: PlacedGlyph[] = []
  for (let i = 0; i + 1 < characters.length; i += 1) {
    const pair = pairOf(font, pairs, `${characters[i] ?? ''}${characters[i + 1] ?? ''}`)
    if (pair === null) return null
    glyphs.push(pair[0])
    if (i + 2 === characters.length) glyphs.push(pair[1])
  }
  return { glyphs, advance: glyphs.reduce((sum, glyph) => sum + glyph.advance, 0) }
}

function pairOf(font: OpenFont, pairs: Pairs, text: string): readonly [PlacedGlyph, PlacedGlyph] | null {
  const known = pairs.get(text)
  if (known !== undefined) return known
  const [first, second, more] = shapeWhole(font, text, false).glyphs
  const simple =
    first !== undefined &&
    second !== undefined &&
    more === undefined &&
    isOnLine(first) &&
    isOnLine(second) &&
    second.advance === second.width
  const pair = simple ? ([first, second] as const) : null
  pairs.set(text, pair)
  return pair
}

function isOnLine(glyph: PlacedGlyph): boolean {
  return glyph.xOffset === 0 && glyph.yOffset === 0 && glyph.codePoints.length === 1
}
