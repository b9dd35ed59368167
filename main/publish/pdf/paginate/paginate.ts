/**
 * Whether a page may begin with a band: `page` it must; `free` it may; `unwelcome` only where no better place is on the
 * page, inside a group; `never` only where nothing else is possible: after a heading, inside the ends of a paragraph.
 */
export type BreakBefore = 'page' | 'free' | 'unwelcome' | 'never'

/** A band across the page that is never cut: what pagination knows of it. */
export interface Band {
  readonly heightPt: number
  /** How much higher the band may grow where its page has room left. */
  readonly stretchPt: number
  /** Space above it, except at the top of a page. */
  readonly gapBeforePt: number
  readonly breakBefore: BreakBefore
  /** Drawn again at the top of the page when a page begins with this band: a table's head. */
  readonly repeat: Band | null
}

/** A band in its place on a page, y from the top of the content. */
export interface Placed<B extends Band> {
  readonly band: B
  readonly yPt: number
  readonly heightPt: number
  /** Drawn again, after a page break. */
  readonly repeated: boolean
}

export interface Page<B extends Band> {
  readonly placed: readonly Placed<B>[]
}

/** Sums of heights are off by rounding; a band that fits must not be pushed off its page. */
const SLACK_PT = 0.001

/**
 * Puts bands on pages of one height, in order. Each page takes as many as fit and ends at the last place where a break is
 * free; where there is none, at the last unwelcome one; where there is none either, at the last band that fits. A band
 * higher than the page stands alone and runs over. Room left over goes to the bands that may grow.
 */
export function paginate<B extends Band & { readonly repeat: B | null }>(
  bands: readonly B[],
  pageHeightPt: number,
): readonly Page<B>[] {
  const pages: Page<B>[] = []
  let from = 0
  while (from < bands.length) {
    const to = pageEnd(bands, from, pageHeightPt)
    pages.push({ placed: place(bands, { from, to }, pageHeightPt) })
    from = to
  }
  return pages
}

/** Index after the last band of the page that begins with the band `from`. */
function pageEnd<B extends Band>(bands: readonly B[], from: number, pageHeightPt: number): number {
  let filledPt = 0
  for (let i = from; i < bands.length; i += 1) {
    const band = bands[i]
    if (band === undefined) break
    if (i > from && band.breakBefore === 'page') return i
    filledPt +=
      i === from
        ? (band.repeat === null ? 0 : heightWithGap(band.repeat, band)) + band.heightPt
        : band.gapBeforePt + band.heightPt
    if (filledPt > pageHeightPt + SLACK_PT && i > from) return lastBreak(bands, from, i)
  }
  return bands.length
}

function heightWithGap(repeated: Band, band: Band): number {
  return repeated.heightPt + band.gapBeforePt
}

function lastBreak<B extends Band>(bands: readonly B[], from: number, overflowing: number): number {
  for (const wanted of ['free', 'unwelcome']) {
    for (let i = overflowing; i > from; i -= 1) {
      if (bands[i]?.breakBefore === wanted) return i
    }
  }
  return overflowing
}

function place<B extends Band & { readonly repeat: B | null }>(
  bands: readonly B[],
  range: { from: number; to: number },
  pageHeightPt: number,
): readonly Placed<B>[] {
  const onPage = bands.slice(range.from, range.to)
  const head = onPage[0]?.repeat ?? null
  const all = head === null ? onPage : [head, ...onPage]
  const naturalPt = all.reduce((sum, band, i) => sum + (i === 0 ? 0 : band.gapBeforePt) + band.heightPt, 0)
  const stretchPt = all.reduce((sum, band) => sum + band.stretchPt, 0)
  const share = stretchPt === 0 ? 0 : Math.min(1, Math.max(0, pageHeightPt - naturalPt) / stretchPt)
  let y = 0
  return all.map((band, i) => {
    const yPt = i === 0 ? 0 : y + band.gapBeforePt
    const heightPt = band.heightPt + share * band.stretchPt
    y = yPt + heightPt
    return { band, yPt, heightPt, repeated: head !== null && i === 0 }
  })
}
