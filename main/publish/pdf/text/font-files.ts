/** The four faces that text is set in. */
export type Face = 'regular' | 'strong' | 'italic' | 'mono'

/** A font file of an installed package, and what has to be known before it is opened. */
export interface FontFile {
  /** Path inside node_modules; also the font's name in the PDF engine. */
  readonly path: string
  /** Letters of some fonts are larger than the text they stand in. */
  readonly sizeFactor: number
  /** Glyphs depend on two neighbours at most, so that words can be put together from pairs. */
  readonly pairwise: boolean
}

const SOURCE_SUBSETS = ['latin', 'latin-ext', 'greek', 'greek-ext', 'cyrillic', 'cyrillic-ext', 'vietnamese']
const NOTO_SUBSETS = ['latin-ext', 'greek-ext', 'cyrillic-ext', 'vietnamese', 'devanagari']

/** Pictographs of one colour. Asked first for characters that are pictures by nature. */
export const EMOJI: FontFile = {
  path: '@fontsource/noto-emoji/files/noto-emoji-emoji-400-normal.woff',
  sizeFactor: 0.85,
  pairwise: false,
}

/** Files in the order in which they are asked for a glyph, by face. Every face ends in the same wide fonts. */
export const FACES: Record<Face, readonly FontFile[]> = {
  regular: [...subsets('source-sans-3', '400-normal'), ...wideFonts('400')],
  strong: [...subsets('source-sans-3', '600-normal'), ...wideFonts('600')],
  italic: [...subsets('source-sans-3', '400-italic'), ...wideFonts('400')],
  mono: [...subsets('source-code-pro', '400-normal'), ...subsets('source-sans-3', '400-normal'), ...wideFonts('400')],
}

function subsets(family: string, style: string): readonly FontFile[] {
  return SOURCE_SUBSETS.map((subset) => fontsource(family, `${subset}-${style}`, { pairwise: true }))
}

function wideFonts(weight: '400' | '600'): readonly FontFile[] {
  return [
    fontsource('noto-sans-arabic', `arabic-${weight}-normal`, { sizeFactor: 0.95 }),
    fontsource('noto-sans-hebrew', `hebrew-${weight}-normal`, {}),
    ...NOTO_SUBSETS.map((subset) => fontsource('noto-sans', `${subset}-${weight}-normal`, { sizeFactor: 0.95 })),
    // Arrows and comparison signs, then ticks and boxes, which no subset above holds.
    fontsource('noto-sans-math', 'latin-400-normal', { sizeFactor: 0.95 }),
    fontsource('noto-sans-symbols-2', 'symbols-400-normal', { sizeFactor: 0.95 }),
    fontsource('noto-sans-arabic', `math-${weight}-normal`, {}),
    EMOJI,
  ]
}

function fontsource(family: string, file: string, known: Partial<Pick<FontFile, 'sizeFactor' | 'pairwise'>>): FontFile {
  return { path: `@fontsource/${family}/files/${family}-${file}.woff`, sizeFactor: 1, pairwise: false, ...known }
}
