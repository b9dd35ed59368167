/** A pair of points that should coincide, `to` being the image of `from`, with its weight. */
export interface PointPair {
  readonly from: { readonly x: number; readonly y: number }
  readonly to: { readonly x: number; readonly y: number }
  readonly weight: number
}

/** x' = scale * R(turn) * x + shift, counter-clockwise positive. */
export interface Similarity {
  readonly turnRad: number
  readonly scale: number
  readonly shift: { readonly x: number; readonly y: number }
  /** Weighted mean of the squared distances that remain. */
  readonly meanSquare: number
}

/** What may change between the two sets of points. */
export type Freedom = 'shift' | 'shift-and-turn' | 'shift-turn-and-scale'

/**
 * The least-squares similarity of the plane between weighted pairs of points, in closed form and without reflection:
 * Umeyama (1991) for two dimensions, where the rotation is the angle of the summed dot and cross products about the means.
 * Null without weight, or when a turn is asked for and all `from` points coincide.
 */
export function fitSimilarity(pairs: readonly PointPair[], freedom: Freedom): Similarity | null {
  const total = pairs.reduce((sum, { weight }) => sum + weight, 0)
  if (!(total > 0)) return null
  const mean = (pick: (pair: PointPair) => number) => pairs.reduce((sum, p) => sum + p.weight * pick(p), 0) / total
  const from = { x: mean((p) => p.from.x), y: mean((p) => p.from.y) }
  const to = { x: mean((p) => p.to.x), y: mean((p) => p.to.y) }
  const dot = mean((p) => (p.from.x - from.x) * (p.to.x - to.x) + (p.from.y - from.y) * (p.to.y - to.y))
  const cross = mean((p) => (p.from.x - from.x) * (p.to.y - to.y) - (p.from.y - from.y) * (p.to.x - to.x))
  const spread = mean((p) => (p.from.x - from.x) ** 2 + (p.from.y - from.y) ** 2)
  if (freedom !== 'shift' && spread === 0) return null
  const turnRad = freedom === 'shift' ? 0 : Math.atan2(cross, dot)
  const scale = freedom === 'shift-turn-and-scale' ? Math.hypot(dot, cross) / spread : 1
  const along = scale * Math.cos(turnRad)
  const across = scale * Math.sin(turnRad)
  const shift = { x: to.x - along * from.x + across * from.y, y: to.y - across * from.x - along * from.y }
  const meanSquare = mean(
    (p) =>
      (along * p.from.x - across * p.from.y + shift.x - p.to.x) ** 2 +
      (across * p.from.x + along * p.from.y + shift.y - p.to.y) ** 2,
  )
  return { turnRad, scale, shift, meanSquare }
}
