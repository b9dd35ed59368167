/** The long edge that a preview may have at most, pixels. */
const MAX_LONG_EDGE_PX = 1600
const MIN_THIRD_PX = 1280

/**
 * The long edge of a preview: a third of the original where that is 1280 to 1600, which decodes much faster than any
 * size between a third and a half; else 1600, or the original's own size where that is smaller.
 */
export function previewLongEdgePx(originalLongEdgePx: number): number {
  const third = Math.floor(originalLongEdgePx / 3)
  if (third >= MIN_THIRD_PX && third <= MAX_LONG_EDGE_PX) return third
  return Math.min(originalLongEdgePx, MAX_LONG_EDGE_PX)
}
