/** What stands behind a statement of the trade. */
export type Basis = 'common-practice' | 'published' | 'published-second-hand'

/** How each basis is printed. */
export const basisWords = {
  'common-practice': 'common practice, no source',
  published: 'published',
  'published-second-hand': 'published, seen at second hand',
} as const satisfies Record<Basis, string>

/** Definitions, indicators and other explanations of all conditions are inspectors' usual reading; no standard is behind them. */
export const conditionsBasis: Basis = 'common-practice'
