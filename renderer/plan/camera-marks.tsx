import { memo, useMemo } from 'react'
import type { CameraShape, PlanDrawing } from '../../app/roof/plan-drawing.ts'
import { classNames } from '../ui/class-names.ts'
import type { ShapeState } from './facet-shapes.tsx'
import { camerasAttribute } from './plan-hit.ts'
import styles from './plan-shapes.module.css'

interface CameraMarksProps {
  readonly cameras: PlanDrawing['cameras']
  readonly stateOf: (photoId: string) => ShapeState
  /** Pixels per foot. */
  readonly scale: number
}

const states = ['plain', 'related', 'selected'] as const satisfies readonly ShapeState[]

/**
 * Where photos were taken, with a wedge where the camera wrote which way it looked, in pixels from the plan's origin. All
 * cameras of a state are one path: thousands of marks of their own would take seconds to appear. What is under the pointer
 * is found by place.
 */
export const CameraMarks = memo(function CameraMarks({ cameras, stateOf, scale }: CameraMarksProps) {
  const byState = useMemo(() => {
    const groups: Record<ShapeState, CameraShape[]> = { plain: [], related: [], selected: [] }
    for (const camera of cameras) groups[stateOf(camera.photoId)].push(camera)
    return groups
  }, [cameras, stateOf])
  return (
    <g>
      {states.map((state) => (
        <CameraGroup key={state} cameras={byState[state]} state={state} scale={scale} />
      ))}
    </g>
  )
})

interface CameraGroupProps {
  readonly cameras: readonly CameraShape[]
  readonly state: ShapeState
  readonly scale: number
}

function CameraGroup({ cameras, state, scale }: CameraGroupProps) {
  const [wedges, bodies] = useMemo(
    () => [cameras.map((camera) => wedge(camera, scale)).join(''), cameras.map(({ at }) => body(at, scale)).join('')],
    [cameras, scale],
  )
  if (cameras.length === 0) return null
  return (
    <g className={classNames(styles['camera'], styles[state])}>
      <path className={styles['wedge']} d={wedges} />
      <path className={styles['cameraBody']} d={bodies} {...camerasAttribute} />
    </g>
  )
}

const WEDGE_PX = 25.5
/** Half the angle of a wedge, radians: about what a phone's main camera sees. */
const HALF_ANGLE = 0.446

function wedge({ at, looking }: CameraShape, scale: number): string {
  if (looking === null) return ''
  const turn = Math.atan2(looking.x, looking.y)
  const corner = (angle: number) => `${tenth(Math.sin(angle) * WEDGE_PX)} ${tenth(-Math.cos(angle) * WEDGE_PX)}`
  const x = at.xFt * scale
  const y = -at.yFt * scale
  const [fromX = '', fromY = ''] = corner(turn - HALF_ANGLE).split(' ')
  const [toX = '', toY = ''] = corner(turn + HALF_ANGLE).split(' ')
  const to = `${tenth(x + Number(toX))} ${tenth(y + Number(toY))}`
  return `M${tenth(x)} ${tenth(y)}l${fromX} ${fromY}A${WEDGE_PX} ${WEDGE_PX} 0 0 1 ${to}Z`
}

function body(at: CameraShape['at'], scale: number): string {
  return `M${tenth(at.xFt * scale - 4.5)} ${tenth(-at.yFt * scale - 4.5)}h9v9h-9z`
}

function tenth(px: number): string {
  return px.toFixed(1)
}
