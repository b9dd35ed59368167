/** How large the page is shown: fitted to the room's width, wholly in the room, or at a fixed share of its real size. */
export type Zoom = 'width' | 'page' | number

/** A point of a page is 1/72 inch, a CSS pixel 1/96 inch (CSS Values and Units Level 4, section 6.2). */
const PX_PER_POINT = 96 / 72
const LEAST = 0.25
const MOST = 4
const STEP = 1.25

interface Room {
  readonly widthPx: number
  readonly heightPx: number
}

interface PageSize {
  readonly widthPt: number
  readonly heightPt: number
}

/** CSS pixels per point for a zoom, so that the page fits where it is asked to. */
export function pageScale(zoom: Zoom, room: Room, page: PageSize): number {
  const toWidth = room.widthPx / page.widthPt
  if (zoom === 'width') return bounded(toWidth)
  if (zoom === 'page') return bounded(Math.min(toWidth, room.heightPx / page.heightPt))
  return zoom * PX_PER_POINT
}

/** The next larger or smaller zoom from what is shown now, between a quarter and four times the real size. */
export function nextZoom(scale: number, direction: 'in' | 'out'): number {
  const share = scale / PX_PER_POINT
  return Math.min(Math.max(direction === 'in' ? share * STEP : share / STEP, LEAST), MOST)
}

/** What is shown now as a share of the real size: `104 %`. */
export function zoomWords(scale: number): string {
  return `${Math.round((scale / PX_PER_POINT) * 100)} %`
}

function bounded(scale: number): number {
  return Math.max(scale, 0.05)
}
