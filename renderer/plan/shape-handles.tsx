import type { PlanPoint } from '../../app/job/places.ts'
import { labelPoint } from '../../app/roof/draw-plan.ts'
import type { Facet } from '../../app/roof/facet.ts'
import { sidesOf } from '../../app/roof/polygon.ts'
import { DragHandle } from './drag-handle.tsx'
import { OutlineLengths } from './draw-overlay.tsx'
import type { Reshaped } from './outline-edit.ts'
import styles from './plan-overlay.module.css'
import { toScreen, type PlanView } from './plan-view.ts'
import { middleOf } from './sheet-geometry.ts'
import type { ShapeActions } from './use-shape-tool.tsx'

/** Sides shorter than this on the screen have no room for a handle of their own, pixels. */
const LEAST_SIDE_PX = 56

interface ShapeHandlesProps {
  readonly facet: Facet
  readonly outline: readonly PlanPoint[]
  readonly picked: number | null
  readonly actions: ShapeActions
  readonly view: PlanView
}

/** Grips on the corners and sides of the facet under edit, and one for the whole of it. */
export function ShapeHandles({ facet, outline, picked, actions, view }: ShapeHandlesProps) {
  const sides = sidesOf(facet.outline).filter(({ from, to }) => {
    const a = toScreen(view, from)
    const b = toScreen(view, to)
    return Math.hypot(a.x - b.x, a.y - b.y) >= LEAST_SIDE_PX
  })
  const home = labelPoint(facet.outline)
  const grip = outline.length === facet.outline.length ? shifted(home, facet.outline[0], outline[0]) : home
  return (
    <>
      {outline.map((corner, index) => (
        <DragHandle
          key={`corner ${index}`}
          label={`Corner ${index + 1} of facet ${facet.letter}`}
          at={corner}
          view={view}
          look="corner"
          picked={picked === index}
          onMove={(move) => actions.moveCorner(index, move)}
          onDrop={actions.drop}
          onPress={() => actions.pick(index)}
          onRemove={() => actions.remove(index)}
        />
      ))}
      {sides.map((side) => (
        <DragHandle
          key={`side ${side.index}`}
          label={`Add a corner on side ${side.index + 1} of facet ${facet.letter}`}
          at={middleOf(side.from, side.to)}
          view={view}
          look="insert"
          onMove={(move) => actions.insertAt(side.index, move)}
          onDrop={actions.drop}
          onPress={() => actions.insertMiddle(side.index)}
        />
      ))}
      <DragHandle
        label={`Move facet ${facet.letter}`}
        at={grip}
        view={view}
        look="move"
        onMove={(move) => actions.moveAll(home, move)}
        onDrop={actions.drop}
        onPress={() => undefined}
      />
    </>
  )
}

/** The grip goes with the facet: as far as the first corner went. */
function shifted(home: PlanPoint, from: PlanPoint | undefined, to: PlanPoint | undefined): PlanPoint {
  if (from === undefined || to === undefined) return home
  return { xFt: home.xFt + to.xFt - from.xFt, yFt: home.yFt + to.yFt - from.yFt }
}

interface ShapeOverlayProps {
  readonly facet: Facet
  readonly draft: readonly Reshaped[] | null
  readonly view: PlanView
}

/** The shapes as they would become, over the plan as it is. */
export function ShapeOverlay({ facet, draft, view }: ShapeOverlayProps) {
  const outline = draft?.[0]?.outline ?? facet.outline
  return (
    <>
      {(draft ?? [{ facet, outline }]).map((changed) => (
        <path key={changed.facet.id} className={styles['changedShape']} d={closedPath(changed.outline, view)} />
      ))}
      <OutlineLengths outline={outline} view={view} />
    </>
  )
}

/** A closed outline on the screen. */
export function closedPath(outline: readonly PlanPoint[], view: PlanView): string {
  const points = outline.map((corner) => toScreen(view, corner))
  return `M${points.map(({ x, y }) => `${x} ${y}`).join('L')}Z`
}
