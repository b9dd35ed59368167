import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { create, type Font } from 'fontkit'
import { EMOJI, FACES, type Face, type FontFile } from './font-files.ts'
import { woffToSfnt } from './woff-to-sfnt.ts'

/** A font file that has been opened. */
export interface OpenFont {
  readonly file: FontFile
  /** The font as plain bytes, for embedding. */
  readonly sfnt: Buffer
  readonly font: Font
}

const require = createRequire(import.meta.url)

/** Opened fonts never change, so that one shelf serves every packet of a run. */
const opened = new Map<string, OpenFont>()

/** Opens a font once. Throws when its package is not installed. */
function openFont(file: FontFile): OpenFont {
  const known = opened.get(file.path)
  if (known !== undefined) return known
  const sfnt = woffToSfnt(readFileSync(require.resolve(file.path)))
  const font = { file, sfnt, font: create(sfnt) }
  opened.set(file.path, font)
  return font
}

/** Characters that never show: joiners, direction marks, variation selectors, soft hyphens. */
const UNSEEN = /^[\p{Default_Ignorable_Code_Point}]$/u
/** Soft hyphen. */
const FIRST_UNSEEN = 0xad
const PICTURE = /\p{Emoji_Presentation}|\p{Extended_Pictographic}\uFE0F|\uFE0F?\u20E3/u

/** The first font of a face that has every character of a grapheme; null when none has. */
export function fontFor(face: Face, grapheme: string): OpenFont | null {
  const known = chosen.get(face)?.get(grapheme)
  if (known !== undefined) return known
  const files = PICTURE.test(grapheme) ? [EMOJI, ...FACES[face]] : FACES[face]
  const file = files.find((candidate) => hasAll(openFont(candidate), grapheme))
  const font = file === undefined ? null : openFont(file)
  const ofFace = chosen.get(face) ?? new Map<string, OpenFont | null>()
  chosen.set(face, ofFace.set(grapheme, font))
  return font
}

const chosen = new Map<Face, Map<string, OpenFont | null>>()

/** The font of a face that has all printable ASCII characters; null when no single one has. */
export function asciiFont(face: Face): OpenFont | null {
  const known = asciiFonts.get(face)
  if (known !== undefined) return known
  const first = FACES[face][0]
  const font = first === undefined ? null : openFont(first)
  const whole = font !== null && hasAll(font, PRINTABLE_ASCII) ? font : null
  asciiFonts.set(face, whole)
  return whole
}

const asciiFonts = new Map<Face, OpenFont | null>()
const PRINTABLE_ASCII = Array.from({ length: 95 }, (_, i) => String.fromCharCode(0x20 + i)).join('')

/** Whether a font has all characters of a grapheme that show. */
function hasAll(font: OpenFont, grapheme: string): boolean {
  for (const character of grapheme) {
    if (!UNSEEN.test(character) && !font.font.hasGlyphForCodePoint(character.codePointAt(0) ?? 0)) return false
  }
  return true
}

/** Whether a grapheme has nothing to show. */
export function isUnseen(grapheme: string): boolean {
  const first = grapheme.charCodeAt(0)
  if (first < FIRST_UNSEEN) return false
  return [...grapheme].every((character) => UNSEEN.test(character))
}

/** Text without the unseen characters that a font has no glyph for, which would come out as boxes. */
export function withoutUnknownUnseen(font: OpenFont, text: string): string {
  return [...text]
    .filter((character) => !UNSEEN.test(character) || font.font.hasGlyphForCodePoint(character.codePointAt(0) ?? 0))
    .join('')
}
