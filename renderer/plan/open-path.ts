import type { PlanPoint } from '../../app/job/places.ts'
import { crossingOf, samePlace, type PlanLine } from './sheet-geometry.ts'

/** The sides drawn so far, without the one that would close the outline. */
export function drawnSides(path: readonly PlanPoint[]): PlanLine[] {
  return path.slice(1).flatMap((to, index) => {
    const from = path[index]
    return from === undefined ? [] : [{ from, to }]
  })
}

/** Why the next corner can't go where it was put, in words; null when it can. */
export function cornerRefusal(path: readonly PlanPoint[], next: PlanPoint): string | null {
  const last = path.at(-1)
  if (last === undefined) return null
  if (samePlace(last, next)) return 'This corner is at the same place as the one before. Put it elsewhere.'
  const taken = path.slice(1).findIndex((corner) => samePlace(corner, next))
  if (taken !== -1) return `Corner ${taken + 2} is already there. Put this one elsewhere.`
  const newSide = { from: last, to: next }
  const crossed = drawnSides(path).findIndex((side) => crossingOf(side, newSide) !== null)
  if (crossed === -1) return null
  return `Side ${path.length} would cross side ${crossed + 1}. Put its corner elsewhere.`
}
