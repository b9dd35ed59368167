import type { PlanPoint } from '../../app/job/places.ts'

/** The closed path of an outline, in plan feet. */
export function outlinePath(outline: readonly PlanPoint[]): string {
  return `M${outline.map((corner) => `${corner.xFt} ${corner.yFt}`).join('L')}Z`
}
