import { memo } from 'react'
import type { CameraShape, PlanDrawing } from '../../app/roof/plan-drawing.ts'
import { classNames } from '../ui/class-names.ts'
import type { ShapeState } from './facet-shapes.tsx'
import { hitAttribute } from './plan-hit.ts'
import styles from './plan-shapes.module.css'

interface CameraMarksProps {
  readonly cameras: PlanDrawing['cameras']
  readonly stateOf: (photoId: string) => ShapeState
}

/** Where photos were taken, with a wedge where the camera wrote which way it looked, in plan feet. */
export const CameraMarks = memo(function CameraMarks({ cameras, stateOf }: CameraMarksProps) {
  return (
    <g>
      {cameras.map((camera) => (
        <CameraMark key={camera.photoId} camera={camera} state={stateOf(camera.photoId)} />
      ))}
    </g>
  )
})

const CameraMark = memo(function CameraMark({ camera, state }: { camera: CameraShape; state: ShapeState }) {
  const { at, looking } = camera
  return (
    <g
      className={classNames(styles['camera'], styles[state])}
      style={{ transform: `translate(${at.xFt}px, ${at.yFt}px) scale(var(--per-pixel), calc(-1 * var(--per-pixel)))` }}
      {...hitAttribute({ kind: 'photo', id: camera.photoId })}
    >
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
