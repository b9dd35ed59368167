import type { PlanPoint } from '../../../app/job/places.ts'
import type { HouseOutline } from '../../../app/roof/house-outline.ts'
import overlay from '../plan-overlay.module.css'
import { toScreen, type PlanView } from '../plan-view.ts'
import { edgeLabels } from './edge-labels.ts'
import { houseRings, type RingPlace } from './outline-draft.ts'
import styles from './outlines.module.css'

interface OutlineOverlayProps {
  readonly outline: HouseOutline
  readonly picked: RingPlace | null
  readonly view: PlanView
}

/** The eaves line over the plan: eaves whole, gables dashed, the picked edge thick, each with its number and length. */
export function OutlineOverlay({ outline, picked, view }: OutlineOverlayProps) {
  return (
    <g className={overlay['drawing']}>
      {houseRings(outline).map(({ corners, edges }, ring) =>
        edges.map((edge, index) => {
          const from = corners[index]
          const to = corners[(index + 1) % corners.length]
          if (from === undefined || to === undefined) return null
          const [a, b] = [toScreen(view, from), toScreen(view, to)]
          const d = `M${a.x} ${a.y}L${b.x} ${b.y}`
          const isPicked = picked?.ring === ring && picked.index === index
          return (
            <g key={edge.id}>
              {isPicked ? <path d={d} className={styles['pickedEdge']} /> : null}
              <path d={d} className={styles[edge.kind]} />
            </g>
          )
        }),
      )}
      <EdgeLabels rings={houseRings(outline).map(({ corners }) => corners)} view={view} />
    </g>
  )
}

/** The dimensions of an outline's edges, beside them. */
export function EdgeLabels({
  rings,
  view,
}: {
  readonly rings: readonly (readonly PlanPoint[])[]
  readonly view: PlanView
}) {
  return (
    <g>
      {edgeLabels(rings, view).map(({ ring, edge, text, at }) => (
        <text
          key={`${ring} ${edge}`}
          className={overlay['sideLength']}
          x={at.x}
          y={at.y}
          textAnchor="middle"
          dominantBaseline="central"
        >
          {text}
        </text>
      ))}
    </g>
  )
}
