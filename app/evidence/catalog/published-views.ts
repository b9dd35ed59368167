import type { Basis } from './basis.ts'

/** A published statement that a reader may bring to a finding. */
export interface PublishedView {
  readonly statement: string
  readonly source: string
  readonly basis: Basis
  /** True where published views disagree. */
  readonly contested: boolean
}

/** Published statements on tile, shingle and metal roofs in wind, for and against, in our own words. */
export const publishedViews = {
  'caps-blow-off': {
    statement:
      'Hip and ridge tiles are commonly among the losses found after hurricanes; caps held by mortar alone, or by one nail, came off.',
    source: 'FEMA P-55, volume II, chapter 11, page 11-40',
    basis: 'published',
    contested: false,
  },
  'mortar-set-blow-off': {
    statement:
      'Mortar-set field tile came off over wide areas in a 2004 Florida hurricane, and foam-set tile that failed showed very small contact areas.',
    source: 'FEMA P-55, volume II, figures 11-42 and 11-43',
    basis: 'published',
    contested: false,
  },
  'broken-by-debris': {
    statement:
      'Tile is brittle and is often broken by flying debris, including tile from the same roof or the next one.',
    source: 'FEMA P-55, volume II, page 11-40',
    basis: 'published',
    contested: false,
  },
  'coastal-screws': {
    statement:
      'On a roof six years old near the coast, screws had rusted through; stainless steel is advised within 3,000 ft of the shore.',
    source: 'FEMA P-55, volume II, page 11-40',
    basis: 'published',
    contested: false,
  },
  'minor-damage-lower-speeds': {
    statement:
      'Where wind speeds were lower, minor damage to hip, ridge and eave tiles was common; poorly applied foam and losses on new mechanically attached tile were also seen.',
    source: 'Roofing-trade journal supplement on the 2004 hurricanes',
    basis: 'published',
    contested: false,
  },
  'rarely-wind-alone': {
    statement:
      'Broken tiles rarely come from wind alone; large hail or flying debris is the usual reason, and single tiles can be exchanged.',
    source: 'Tile industry alliance technical brief 2022-001',
    basis: 'published',
    contested: true,
  },
  'wind-rocking': {
    statement:
      'Wind can rock tiles that stay in place, and so tire their attachment, break fasteners and rub the underlayment.',
    source: 'Articles by consulting engineers and adjusters',
    basis: 'published-second-hand',
    contested: true,
  },
  'where-tile-is-walked': {
    statement: 'Tile bears a foot best on the lower 3 in, over the headlap; interlocking edges break under a foot.',
    source: 'Home-inspector association training article',
    basis: 'published',
    contested: false,
  },
  'shingle-fastening': {
    statement:
      'High or missing nails, poor bonding and racking lines were found in shingle losses; pull-through resistance is 20 lb at least, 25 lb for 90 to 120 mph and 30 lb above.',
    source: 'Roofing-trade journal supplement on the 2004 hurricanes; ASTM D3462; FEMA P-499 fact sheet 7.3',
    basis: 'published',
    contested: false,
  },
  'metal-edge-fastening': {
    statement:
      'Exposed fasteners 3 to 6 in apart in two rows at hip, ridge and rake hold better than cleats, and screws better than nails; once a nailer goes, panels follow.',
    source: 'FEMA P-499, fact sheet on metal roofs',
    basis: 'published',
    contested: false,
  },
  'concrete-tile-hail': {
    statement:
      'Hail on concrete tile leaves crescents at edges, stars or shattered tile, with spatter marks near by; voids, a missing surface coat and foot breaks are not hail.',
    source: 'Published description of hail on roofs, web copy',
    basis: 'published-second-hand',
    contested: false,
  },
} as const satisfies Record<string, PublishedView>
export type PublishedViewKey = keyof typeof publishedViews
