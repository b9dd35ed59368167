import { memo } from 'react'
import type { CameraShape, PlanDrawing } from '../../app/roof/plan-drawing.ts'
import { classNames } from '../ui/class-names.ts'
import { atScale, type ShapeState } from './facet-shapes.tsx'
import { hitAttribute } from './plan-hit.ts'
import styles from './plan-shapes.module.css'

interface CameraMarksProps {
  readonly cameras: PlanDrawing['cameras']
  readonly stateOf: (photoId: string) => ShapeState
  /** Pixels per foot. */
  readonly scale: number
}

/** Where photos were taken, with a wedge where the camera wrote which way it looked, in pixels from the plan's origin. */
export const CameraMarks = memo(function CameraMarks({ cameras, stateOf, scale }: CameraMarksProps) {
  return (
    <g>
      {cameras.map((camera) => (
        <g key={camera.photoId} transform={atScale(camera.at, scale)}>
          <CameraMark camera={camera} state={stateOf(camera.photoId)} />
        </g>
      ))}
    </g>
  )
})

const CameraMark = memo(function CameraMark({ camera, state }: { camera: CameraShape; state: ShapeState }) {
  const { looking } = camera
  return (
    <g className={classNames(styles['camera'], styles[state])} {...hitAttribute({ kind: 'photo', id: camera.photoId })}>
      <title>{camera.label}</title>
      {looking === null ? null : (
        <path
          className={styles['wedge']}
          d="M0 0L-11 -23A25.5 25.5 0 0 1 11 -23Z"
          transform={`rotate(${(Math.atan2(looking.x, looking.y) * 180) / Math.PI})`}
        />
      )}
      <rect className={styles['cameraBody']} x="-4.5" y="-4.5" width="9" height="9" rx="2" />
    </g>
  )
})
