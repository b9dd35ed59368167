/** The part of fontkit that the publisher uses; the package brings no types. Lengths are in font units. */
declare module 'fontkit' {
  export interface Glyph {
    readonly id: number
    readonly advanceWidth: number
    readonly codePoints: readonly number[]
    readonly path: GlyphOutline
  }
  export interface GlyphOutline {
    /** Commands of an SVG path, y up. */
    toSVG(): string
  }
  export interface GlyphPosition {
    readonly xAdvance: number
    readonly xOffset: number
    readonly yOffset: number
  }
  export interface Font {
    readonly unitsPerEm: number
    hasGlyphForCodePoint(codePoint: number): boolean
    glyphForCodePoint(codePoint: number): Glyph
    getGlyph(id: number): Glyph
    layout(
      text: string,
      features?: readonly string[] | Readonly<Record<string, boolean>>,
      script?: string,
      language?: string,
      direction?: 'ltr' | 'rtl',
    ): { readonly glyphs: readonly Glyph[]; readonly positions: readonly GlyphPosition[] }
  }
  export function create(bytes: Uint8Array): Font
}
