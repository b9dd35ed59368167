/** A point on the sheet in points (1/72 in) from its top left corner, x right, y down. */
export interface SheetPoint {
  readonly xPt: number
  readonly yPt: number
}

/** A pen: `dashPt` is on, off, on, off; empty for a solid line. */
export interface Pen {
  readonly colour: string
  readonly widthPt: number
  readonly dashPt: readonly number[]
}

/** What a plan sheet is made of. Whoever draws it (PDF, SVG) needs to know only these. */
export type PlanMark =
  | {
      readonly kind: 'path'
      readonly points: readonly SheetPoint[]
      readonly closed: boolean
      readonly pen: Pen | null
      readonly fill: string | null
    }
  | {
      readonly kind: 'pill'
      /** Middle; a circle when half width and half height are equal. */
      readonly at: SheetPoint
      readonly halfWidthPt: number
      readonly halfHeightPt: number
      readonly pen: Pen | null
      readonly fill: string | null
    }
  | {
      readonly kind: 'text'
      /** Left end, middle or right end of the base line. */
      readonly at: SheetPoint
      readonly text: string
      readonly sizePt: number
      readonly weight: 'regular' | 'strong'
      readonly align: 'start' | 'middle' | 'end'
      readonly colour: string
      /** White ground behind the letters, so that lines don't run through them. */
      readonly onWhite: boolean
    }

/** A place on the sheet that links to somewhere and can be linked to: a pin's marker. */
export interface PlanTarget {
  readonly pinLabel: string
  readonly at: SheetPoint
  readonly halfWidthPt: number
  readonly halfHeightPt: number
}

/** A solid pen. */
export function solidPen(colour: string, widthPt: number): Pen {
  return { colour, widthPt, dashPt: [] }
}

/** Text whose letters stand centred on a point, up and down as well. */
export function centredText(
  text: string,
  at: SheetPoint,
  look: { sizePt: number; colour: string; strong: boolean; onWhite: boolean },
): PlanMark {
  // Capitals and figures of text faces are about two thirds of the size high.
  const baseline = { xPt: at.xPt, yPt: at.yPt + look.sizePt * 0.33 }
  const weight = look.strong ? 'strong' : 'regular'
  return {
    kind: 'text',
    at: baseline,
    text,
    sizePt: look.sizePt,
    weight,
    align: 'middle',
    colour: look.colour,
    onWhite: look.onWhite,
  }
}

/** Text that starts at the left end of its base line. */
export function plainText(
  text: string,
  at: SheetPoint,
  look: { sizePt: number; colour: string; strong: boolean },
): PlanMark {
  const weight = look.strong ? 'strong' : 'regular'
  return { kind: 'text', at, text, sizePt: look.sizePt, weight, align: 'start', colour: look.colour, onWhite: false }
}

/** A straight line. */
export function line(from: SheetPoint, to: SheetPoint, pen: Pen): PlanMark {
  return { kind: 'path', points: [from, to], closed: false, pen, fill: null }
}
