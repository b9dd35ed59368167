import type { HouseOutline } from '../../../app/roof/house-outline.ts'
import { type DrawnRoof, roofDrawer } from './drawn-roof.ts'
import type { HouseAround } from './roof-preview.ts'

/** Asks for the roof over an outline. */
export interface RoofAsked {
  readonly number: number
  readonly outline: HouseOutline
  /** Null: the same house as when it was asked before. */
  readonly around: HouseAround | null
}

export interface RoofAnswered {
  readonly number: number
  readonly roof: DrawnRoof
}

const draw = roofDrawer()
let around: HouseAround | null = null

addEventListener('message', ({ data }: MessageEvent<RoofAsked>) => {
  around = data.around ?? around
  if (around === null) return
  postMessage({ number: data.number, roof: draw(data.outline, around) } satisfies RoofAnswered)
})
