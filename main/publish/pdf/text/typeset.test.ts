import { create } from 'fontkit'
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { describe, expect, it, vi } from 'vitest'
import { asciiFont, fontFor } from './font-shelf.ts'
import { FACES } from './font-files.ts'
import { shape } from './shape.ts'
import { TYPE } from './text-style.ts'
import { typesetter } from './typeset.ts'
import { woffToSfnt } from './woff-to-sfnt.ts'

vi.setConfig({ testTimeout: 30_000 })

const require = createRequire(import.meta.url)
const words = (text: string) => [{ text }]
const shown = (text: string, widthPt: number) =>
  typesetter()
    .lines(words(text), TYPE.body, widthPt)
    .map((line) => line.pieces.map((piece) => piece.text).join(''))

describe('setting text in lines', () => {
  it('breaks at spaces and drops the space at the break', () => {
    const lines = shown('The walk began at the ladder on the south eave.', 110)
    expect(lines.join(' ')).toBe('The walk began at the ladder on the south eave.')
    expect(lines.length).toBeGreaterThan(1)
  })

  it('keeps every line within its width, words longer than a line too', () => {
    const setter = typesetter()
    const text = `SHA-256 ${'0123456789abcdef'.repeat(4)} and https://example.test/${'a'.repeat(80)}`
    const lines = setter.lines(words(text), TYPE.body, 90)
    expect(lines.every((line) => line.widthPt <= 90.01)).toBe(true)
    expect(
      lines
        .flatMap((line) => line.pieces.map((piece) => piece.text))
        .join('')
        .replaceAll(' ', ''),
    ).toBe(text.replaceAll(' ', ''))
  })

  it('ends a line where the text does', () => {
    expect(shown('one\ntwo\r\nthree', 400)).toEqual(['one', 'two', 'three'])
  })

  it('has one empty line for an empty text', () => {
    expect(shown('', 100)).toEqual([''])
  })

  it('drops control characters, which have no place on paper', () => {
    expect(shown('a\u0000b\u001bc\td', 400)).toEqual(['abc d'])
  })

  it('notes each character that no font has, and leaves a box for it', () => {
    const setter = typesetter()
    const pieces = setter.lines(words('a\u{12000}b'), TYPE.body, 400)[0]?.pieces
    expect([...setter.missing]).toEqual(['\u{12000}'])
    expect(pieces?.map((piece) => piece.glyphs === null)).toEqual([false, true, false])
    expect(pieces?.[1]?.widthPt).toBeCloseTo(6, 5)
  })

  it('knows signs of an engineering text', () => {
    const setter = typesetter()
    setter.lines(words('≥ ≤ ± × ÷ ° ′ ″ ½ ¼ ¾ → ← − – — … • § © ® ™ µ Ω √ ≈ ≠'), TYPE.body, 400)
    expect([...setter.missing]).toEqual([])
  })
})

describe('right-to-left text', () => {
  it('reads an Arabic text from the right', () => {
    const line = typesetter().lines(words('سقف القرميد'), TYPE.body, 400)[0]
    expect(line?.rtl).toBe(true)
    // From left to right stand the last word, the space and the first word.
    expect(line?.pieces.map((piece) => piece.text)).toEqual(['القرميد', ' ', 'سقف'])
  })

  it('keeps numbers and Latin words left to right inside it', () => {
    const line = typesetter().lines(words('قياس 12 بوصة على B'), TYPE.body, 400)[0]
    const order = line?.pieces.map((piece) => piece.text).filter((text) => text.trim() !== '')
    expect(order).toEqual(['B', 'على', 'بوصة', '12', 'قياس'])
  })

  it('keeps the order of a caption that follows a number', () => {
    const caption = [{ text: 'P-007 ', style: 'strong' as const }, { text: 'سطح B مكسور' }]
    const line = typesetter().lines(caption, TYPE.body, 400)[0]
    expect(line?.rtl).toBe(false)
    const order = line?.pieces.map((piece) => piece.text.trim()).filter((text) => text !== '')
    expect(order).toEqual(['P-007', 'مكسور', 'B', 'سطح'])
  })

  it('joins Arabic letters: an initial form differs from the letter alone', () => {
    const font = fontFor('regular', 'س')
    if (font === null) throw new Error('no Arabic font')
    const alone = shape(font, 'س', true).glyphs[0]?.id
    const initial = shape(font, 'سم', true).glyphs.at(-1)?.id
    expect(initial).toBeDefined()
    expect(initial).not.toBe(alone)
  })
})

describe('pictographs', () => {
  it.each(['👨‍👩‍👧', '🇺🇸', '⚠️', '1️⃣'])('keeps %s in one glyph', (emoji) => {
    const piece = typesetter().lines(words(emoji), TYPE.body, 400)[0]?.pieces[0]
    expect(piece?.glyphs?.font.file.path).toContain('noto-emoji')
    expect(piece?.glyphs?.run.glyphs).toHaveLength(1)
  })
})

describe('shaping by pairs', () => {
  const sample = 'AVATAR Toward difficult office flight Wye, To. Ty; (VA) 1/2 in 40-lbf P.A. fjord Höhe façade'.split(
    ' ',
  )

  it.each(sample)('gives for “%s” the glyphs and advances that fontkit gives for the whole word', (word) => {
    const font = fontFor('regular', 'A')
    if (font === null) throw new Error('no font')
    const whole = font.font.layout(word, [], 'latn', undefined, 'ltr')
    const run = shape(font, word, false)
    expect(run.glyphs.map((glyph) => glyph.id)).toEqual(whole.glyphs.map((glyph) => glyph.id))
    const total = whole.positions.reduce((sum, position) => sum + position.xAdvance, 0)
    expect(run.advance).toBeCloseTo((total * 1000) / font.font.unitsPerEm, 6)
  })
})

describe('pairs of printable ASCII', () => {
  const ascii = Array.from({ length: 95 }, (_, i) => String.fromCharCode(0x20 + i))

  it.each(['regular', 'strong', 'italic', 'mono'] as const)(
    'that are laid out without ligatures have none in the %s face',
    (face) => {
      const font = asciiFont(face)
      if (font === null) throw new Error('no font')
      const alone = new Map(
        ascii.map((character) => [character, font.font.glyphForCodePoint(character.charCodeAt(0)).id]),
      )
      const ligatures = ascii.flatMap((first) =>
        ascii
          .filter((second) => {
            const ids = font.font.layout(first + second, [], 'latn', undefined, 'ltr').glyphs.map((glyph) => glyph.id)
            return ids.length !== 2 || ids[0] !== alone.get(first) || ids[1] !== alone.get(second)
          })
          .map((second) => first + second),
      )
      expect(ligatures.filter((pair) => !pair.startsWith('f'))).toEqual([])
    },
  )
})

describe('unpacking a web font', () => {
  it('gives the same glyphs as fontkit reads from the packed file', () => {
    const packed = readFileSync(require.resolve(FACES.regular[0]?.path ?? ''))
    const plain = create(woffToSfnt(packed))
    const wrapped = create(packed)
    for (const character of 'Aé9½') {
      const [a, b] = [plain, wrapped].map((font) => font.glyphForCodePoint(character.codePointAt(0) ?? 0))
      expect(a?.id).toBe(b?.id)
      expect(a?.advanceWidth).toBe(b?.advanceWidth)
    }
  })

  it('leaves a plain font as it is', () => {
    const plain = readFileSync(require.resolve('pdfjs-dist/standard_fonts/LiberationSans-Regular.ttf'))
    expect(woffToSfnt(plain)).toBe(plain)
  })
})
