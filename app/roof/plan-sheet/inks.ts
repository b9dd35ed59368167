import type { EdgeKind } from '../plan-drawing.ts'
import type { Zone } from '../zones/edition.ts'
import type { Pen } from './marks.ts'

/*
 * Hues from the palette of M. Okabe and K. Ito, "Color Universal Design" (2002, revised 2008), chosen there to be told
 * apart by people with any common kind of colour vision. Widths and dashes differ too, so that a grey print reads the same.
 */
const BLUE = '#0072B2'
const VERMILION = '#D55E00'
const GREEN = '#009E73'
const PURPLE = '#CC79A7'
const SKY = '#56B4E9'

export const INK = '#1C1C1C'
export const QUIET_INK = '#5A5A5A'
export const PAPER = '#FFFFFF'
/** Facets, just off the paper; and the facet that a photo shows. */
export const FACET_FILL = '#F6F6F3'
export const FACET_PICKED_FILL = '#BCD7EA'
export const CAMERA_INK = VERMILION

/** Stands after the letters of an edge whose kind was stated by hand. */
export const BY_HAND = '*'

/** How each kind of edge is drawn, and the two small letters that stand on it. Our own set. */
export const EDGE_LOOKS = {
  ridge: { tag: 'ri', name: 'ridge', pen: { colour: INK, widthPt: 2.2, dashPt: [] } },
  hip: { tag: 'hi', name: 'hip', pen: { colour: BLUE, widthPt: 1.4, dashPt: [] } },
  valley: { tag: 'va', name: 'valley', pen: { colour: VERMILION, widthPt: 1.6, dashPt: [7, 3] } },
  eave: { tag: 'ea', name: 'eave', pen: { colour: INK, widthPt: 0.9, dashPt: [] } },
  rake: { tag: 'ra', name: 'rake', pen: { colour: GREEN, widthPt: 1.4, dashPt: [9, 2.5, 1.5, 2.5] } },
  'pitch-break': { tag: 'pb', name: 'pitch break', pen: { colour: SKY, widthPt: 1.4, dashPt: [4, 2] } },
  'top-edge': { tag: 'te', name: 'top edge', pen: { colour: INK, widthPt: 1.2, dashPt: [2.4, 1.6] } },
  step: { tag: 'st', name: 'step in height', pen: { colour: PURPLE, widthPt: 1.6, dashPt: [1.6, 2] } },
} as const satisfies Record<EdgeKind, { readonly tag: string; readonly name: string; readonly pen: Pen }>

interface ZoneLook {
  readonly tint: string | null
  readonly hatches: readonly { readonly angleDeg: number; readonly stepPt: number; readonly pen: Pen }[]
}

/** How zones are drawn: corners crosswise, edges one way, ridges and hips as dots, the field left as it is. Our own set. */
export const ZONE_LOOKS = {
  corner: {
    tint: '#FBE6D6',
    hatches: [
      { angleDeg: 45, stepPt: 4, pen: { colour: VERMILION, widthPt: 0.5, dashPt: [] } },
      { angleDeg: -45, stepPt: 4, pen: { colour: VERMILION, widthPt: 0.5, dashPt: [] } },
    ],
  },
  edge: { tint: '#E3F1FA', hatches: [{ angleDeg: -45, stepPt: 4, pen: { colour: BLUE, widthPt: 0.5, dashPt: [] } }] },
  ridge: {
    tint: '#E2F3ED',
    hatches: [{ angleDeg: 0, stepPt: 4, pen: { colour: GREEN, widthPt: 1.2, dashPt: [1.2, 2.8] } }],
  },
  field: { tint: null, hatches: [] },
} as const satisfies Record<Zone, ZoneLook>
