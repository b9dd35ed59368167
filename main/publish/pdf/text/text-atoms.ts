import bidiFactory from 'bidi-js'
import LineBreaker from 'linebreak'
import type { Anchor, Text } from '../../../../app/packet/document.ts'
import { asciiFont, fontFor, isUnseen, type OpenFont } from './font-shelf.ts'
import { inlineStyle, type TextStyle } from './text-style.ts'

/** Text of one style, one direction and one font inside one word. */
export interface Atom {
  readonly text: string
  readonly style: TextStyle
  readonly link: Anchor | null
  /** Bidirectional level: odd is right to left. */
  readonly level: number
  /** Null for a character that no font has. */
  readonly font: OpenFont | null
}

/** What stands between two places where a line may break: its letters, and the spaces after them. */
export interface Word {
  readonly letters: readonly Atom[]
  readonly spaces: readonly Atom[]
  /** The line ends after this word. */
  readonly endsLine: boolean
}

export interface AtomisedText {
  readonly words: readonly Word[]
  /** The text as a whole is read from right to left. */
  readonly rtl: boolean
}

/** Its tables are large; most packets never need them. */
let bidiTables: ReturnType<typeof bidiFactory> | null = null
function bidi(): ReturnType<typeof bidiFactory> {
  bidiTables ??= bidiFactory()
  return bidiTables
}

/** Blocks of right-to-left scripts, and marks that turn the direction. */
const RTL =
  /[\u0590-\u08FF\u200F\u202B\u202E\u2067\uFB1D-\uFDFF\uFE70-\uFEFC]|[\uD802\uD803\uD83A\uD83B][\uDC00-\uDFFF]/
const FIRST_STRONG = /\p{L}/u
const PLAIN = /^[\x20-\x7e]*$/
/** Characters that never join with a neighbour: letters and signs of western texts, without combining marks. */
const LONE =
  /^[\x20-\x7e\xa0-\u02ff\u0370-\u0482\u048a-\u052f\u1e00-\u1fff\u2010-\u2027\u2030-\u205e\u20a0-\u20bf\u2190-\u21ff\u2200-\u22ff]*$/
const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' })

interface Marked {
  readonly text: string
  readonly levels: Uint8Array | null
  /** Style and link by start offset, in order. */
  readonly spans: readonly { readonly start: number; readonly style: TextStyle; readonly link: Anchor | null }[]
}

/** Texts are measured for their widest word and then set: cut them once. */
const cutTexts = new WeakMap<Text, { readonly base: TextStyle; readonly cut: AtomisedText }>()

/** Cuts text at style, direction, font and line-break borders. A grapheme is never cut. */
export function atomise(text: Text, base: TextStyle): AtomisedText {
  const known = cutTexts.get(text)
  if (known?.base === base) return known.cut
  const cut = cutText(text, base)
  cutTexts.set(text, { base, cut })
  return cut
}

function cutText(text: Text, base: TextStyle): AtomisedText {
  const marked = mark(text, base)
  const rtl =
    marked.levels !== null && ((bidi().getEmbeddingLevels(marked.text, 'auto').paragraphs[0]?.level ?? 0) & 1) === 1
  return { words: words(marked), rtl }
}

/** A text as one string without control characters, which have no place on paper. */
export function plainText(text: Text): string {
  return text.map((inline) => clean(inline.text)).join('')
}

function clean(text: string): string {
  if (PLAIN.test(text)) return text
  return text
    .replace(/\r\n?|\u2028|\u2029|\u0085/g, '\n')
    .replaceAll('\t', ' ')
    .replace(/[\p{Surrogate}]/gu, '\uFFFD')
    .replace(/[^\P{Cc}\n]/gu, '')
}

/**
 * Parts in a right-to-left script inside a text that reads from left to right are isolated (UAX 9, 2.4.2), so that a
 * caption keeps its own order after a number. Isolating marks are never shown.
 */
function mark(text: Text, base: TextStyle): Marked {
  const hasRtl = text.some((inline) => RTL.test(inline.text))
  const isolates = hasRtl && !RTL.test(firstLetter(text))
  const spans: { start: number; style: TextStyle; link: Anchor | null }[] = []
  let whole = ''
  for (const inline of text) {
    const cleaned = clean(inline.text)
    if (cleaned === '') continue
    spans.push({ start: whole.length, style: inlineStyle(base, inline), link: inline.link ?? null })
    whole += isolates && RTL.test(cleaned) ? `\u2068${cleaned}\u2069` : cleaned
  }
  return { text: whole, levels: hasRtl ? bidi().getEmbeddingLevels(whole, 'auto').levels : null, spans }
}

function firstLetter(text: Text): string {
  return FIRST_STRONG.exec(text.map((inline) => inline.text).join(''))?.[0] ?? ''
}

function words(marked: Marked): readonly Word[] {
  const breaker = new LineBreaker(marked.text)
  const found: Word[] = []
  let start = 0
  for (let next = breaker.nextBreak(); next !== null; next = breaker.nextBreak()) {
    const whole = marked.text.slice(start, next.position)
    const letters = whole.trimEnd()
    const spaces = whole.slice(letters.length).replaceAll('\n', '')
    const endsLine = whole.endsWith('\n')
    const spacesFrom = start + letters.length
    found.push({ letters: atoms(marked, start, letters), spaces: atoms(marked, spacesFrom, spaces), endsLine })
    start = next.position
  }
  return found
}

/** Atoms of a stretch of the text. Spaces and joining marks stay in the font before them where it has them. */
function atoms(marked: Marked, start: number, text: string): readonly Atom[] {
  const plain = plainAtom(marked, start, text)
  if (plain !== null) return plain
  const found: Atom[] = []
  let offset = start
  for (const grapheme of graphemesOf(text)) {
    const span = spanAt(marked, offset)
    const level = marked.levels?.[offset] ?? 0
    offset += grapheme.length
    if (isUnseen(grapheme) || span === undefined) continue
    // A hyphen that must not break a line looks like any other.
    const shown = grapheme.replaceAll('\u2011', '-').replaceAll('\u00A0', ' ')
    const font = fontFor(span.style.face, shown)
    const last = found.at(-1)
    const joins =
      last !== undefined &&
      font !== null &&
      last.font === font &&
      last.level === level &&
      last.style === span.style &&
      last.link === span.link
    if (joins) found[found.length - 1] = { ...last, text: last.text + shown }
    else found.push({ text: shown, style: span.style, link: span.link, level, font })
  }
  return found
}

/** Most words are plain ASCII of one style, for which there is no need to look at each character. */
function plainAtom(marked: Marked, start: number, text: string): readonly Atom[] | null {
  if (text === '') return []
  if (marked.levels !== null || !PLAIN.test(text)) return null
  const span = spanAt(marked, start)
  const font = span === undefined ? null : asciiFont(span.style.face)
  if (span === undefined || font === null || spanAt(marked, start + text.length - 1) !== span) return null
  return [{ text, style: span.style, link: span.link, level: 0, font }]
}

function spanAt(marked: Marked, offset: number) {
  return marked.spans.findLast((span) => span.start <= offset)
}

/** The graphemes of a text: what a reader takes for one character. */
export function graphemesOf(text: string): readonly string[] {
  return LONE.test(text) ? text.split('') : Array.from(graphemes.segment(text), (part) => part.segment)
}

/** A text read from right to left with its brackets turned. */
export function mirrored(text: string): string {
  return Array.from(text, (character) => bidi().getMirroredCharacter(character) ?? character).join('')
}
