import { useRef } from 'react'
import { labelPoint } from '../../../app/roof/draw-plan.ts'
import type { Facet } from '../../../app/roof/facet.ts'
import type { PlanPoint } from '../../../app/job/places.ts'
import type { HouseOutline } from '../../../app/roof/house-outline.ts'
import { sidesOf } from '../../../app/roof/polygon.ts'
import { DragHandle } from '../drag-handle.tsx'
import { toScreen, type PlanView } from '../plan-view.ts'
import { middleOf } from '../sheet-geometry.ts'
import { newEdgeId } from './new-edge-id.ts'
import { houseRings, withCornerAdded, withCornerMoved, withCornerRemoved } from './outline-draft.ts'
import { addedSnap, cornerSnap, movedSnap } from './outline-snap.ts'
import type { OutlineShape } from './use-outline-shape.ts'

/** Edges shorter than this on the screen have no room for a handle of their own, pixels. */
const LEAST_EDGE_PX = 56

interface OutlineHandlesProps {
  readonly shape: OutlineShape
  readonly facets: readonly Facet[]
  readonly view: PlanView
}

/** Grips of the outline under edit: squares on corners, circles on edges, a cross for the whole of it. */
export function OutlineHandles({ shape, facets, view }: OutlineHandlesProps) {
  // A drag that changes how many corners there are begins from the outline as it was when the hand took hold.
  const begun = useRef<HouseOutline | null>(null)
  const start = () => (begun.current ??= shape.outline)
  const drop = () => {
    begun.current = null
    shape.drop()
  }
  const { outline } = shape
  const shared = { view, onDrop: drop }
  return (
    <>
      <CornerHandles shape={shape} facets={facets} view={view} hold={start} onDrop={drop} />
      {edgesWithRoom(handledOutline(begun.current, outline), view).map(({ ring, index, at }) => (
        <DragHandle
          {...shared}
          key={`edge ${ring} ${index}`}
          label={`Edge ${index + 1} of ${ringWords(outline, ring)}; drag to add a corner`}
          at={at}
          look="insert"
          picked={shape.picked?.ring === ring && shape.picked.index === index}
          onMove={(move) => {
            const from = start()
            const place = { ring, index }
            const added = addedSnap({ outline: from, facets }, place, move)
            shape.pick(place)
            shape.show(withCornerAdded(from, place, { at: added, newId: newEdgeId }))
          }}
          onPress={() => shape.pick({ ring, index })}
        />
      ))}
      <DragHandle
        {...shared}
        label={`Move ${outline.name}`}
        at={labelPoint(outline.outer.corners)}
        look="move"
        onMove={(move) => {
          const from = start()
          shape.show(movedSnap({ outline: from, facets }, labelPoint(from.outer.corners), move))
        }}
        onPress={() => shape.pick(null)}
      />
    </>
  )
}

interface CornerHandlesProps extends OutlineHandlesProps {
  /** Takes hold, and gives the outline as it was then. */
  readonly hold: () => HouseOutline
  readonly onDrop: () => void
}

function CornerHandles({ shape, facets, view, hold, onDrop }: CornerHandlesProps) {
  const { outline } = shape
  return (
    <>
      {houseRings(outline).map(({ corners }, ring) =>
        corners.map((corner, index) => (
          <DragHandle
            view={view}
            onDrop={onDrop}
            key={`corner ${ring} ${index}`}
            label={`Corner ${index + 1} of ${ringWords(outline, ring)}`}
            at={corner}
            look="corner"
            onMove={(move) => {
              const from = hold()
              const place = { ring, index }
              shape.show(withCornerMoved(from, place, cornerSnap({ outline: from, facets }, place, move)))
            }}
            onPress={() => shape.pick({ ring, index })}
            onRemove={() => {
              shape.pick(null)
              shape.change((now) => withCornerRemoved(now, { ring, index }))
            }}
          />
        )),
      )}
    </>
  )
}

/** While a corner is pulled out of an edge, the circle under the hand stays; otherwise circles go with their edges. */
function handledOutline(begun: HouseOutline | null, outline: HouseOutline): HouseOutline {
  return begun !== null && cornerCount(begun) !== cornerCount(outline) ? begun : outline
}

interface EdgeHandle {
  readonly ring: number
  readonly index: number
  readonly at: PlanPoint
}

function edgesWithRoom(outline: HouseOutline, view: PlanView): readonly EdgeHandle[] {
  return houseRings(outline).flatMap(({ corners }, ring) =>
    sidesOf(corners).flatMap(({ from, to, index }): readonly EdgeHandle[] => {
      const [a, b] = [toScreen(view, from), toScreen(view, to)]
      const hasRoom = Math.hypot(a.x - b.x, a.y - b.y) >= LEAST_EDGE_PX
      return hasRoom ? [{ ring, index, at: middleOf(from, to) }] : []
    }),
  )
}

function cornerCount(outline: HouseOutline): number {
  return houseRings(outline).reduce((sum, ring) => sum + ring.corners.length, 0)
}

function ringWords(outline: HouseOutline, ring: number): string {
  return ring === 0 ? outline.name : `courtyard ${ring} of ${outline.name}`
}
