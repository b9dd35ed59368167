import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react'
import type { PlanPoint } from '../../../app/job/places.ts'
import {
  closeTraverse,
  closingLabel,
  spreadClosingError,
  type Traverse,
  type TraverseFault,
} from '../../../app/roof/traverse.ts'
import { useCommands } from '../../state/commands.ts'
import { useJob } from '../../state/job-state.tsx'
import { Button } from '../../ui/button.tsx'
import { KeyHint } from '../../ui/key-hint.tsx'
import { linePath } from '../draw-overlay.tsx'
import { PlanCanvas, type PlanScene } from '../plan-canvas.tsx'
import panels from '../plan-panels.module.css'
import type { PlanTool } from '../plan-tool.ts'
import type { PlanView } from '../plan-view.ts'
import { tidyPoint } from '../sheet-geometry.ts'
import { newOutline } from './new-outline.ts'
import { showCorners } from './show-corners.ts'
import { EdgeLabels } from './outline-overlay.tsx'
import styles from './outlines.module.css'
import { BLANK_SIDE, readTraverse, type TypedTraverseSide } from './traverse-text.ts'
import { TraverseTable } from './traverse-table.tsx'
import { useLiveRoof } from './use-live-roof.ts'

interface TraverseStepProps {
  readonly scene: PlanScene
  readonly onUse: (corners: readonly PlanPoint[]) => void
  readonly onBack: () => void
}

/** The sides of an eaves line typed or pasted into a table, laid out on the plan as they are typed. */
export function TraverseStep({ scene, onUse, onBack }: TraverseStepProps) {
  const { job } = useJob()
  const { upAzimuthDeg } = job.frame
  const [rows, setRows] = useState<readonly TypedTraverseSide[]>([BLANK_SIDE])
  const [isSpread, setSpread] = useState(false)
  const [start, setStart] = useState<PlanPoint>({ xFt: 0, yFt: 0 })
  const laid = useMemo(() => layOut(rows, upAzimuthDeg), [rows, upAzimuthDeg])
  const corners = useMemo(() => placed(laid, { isSpread, start }), [laid, isSpread, start])
  useShown(scene, corners, laid)
  const closes = laid?.kind === 'laid-out' && (isSpread || laid.closing.oneIn === null)
  const outline = useMemo(
    () => (closes ? newOutline(corners, { name: 'New outline', pitchRise: null, eaveHeightFt: 0 }) : null),
    [closes, corners],
  )
  const live = useLiveRoof(scene, outline)
  useCommands([{ id: 'plan-sides.back', label: 'Back to drawing', keys: 'Escape', enabled: true, perform: onBack }])
  const tool: PlanTool = {
    cursor: 'crosshair',
    cross: null,
    onClick: ({ at }) => setStart({ xFt: Math.round(at.xFt), yFt: Math.round(at.yFt) }),
    overlay: (view) => <TraverseOverlay corners={corners} laid={laid} isSpread={isSpread} view={view} />,
  }
  return (
    <PlanCanvas scene={live.scene} tool={tool}>
      <section className={panels['tool']} aria-label="Sides of the outline">
        <p className={panels['lead']}>Type or paste each side: its length, and the turn made before it.</p>
        <TraverseTable
          rows={rows}
          onChange={(next) => {
            setRows(next)
            setSpread(false)
          }}
          onEscape={onBack}
        />
        <ClosingLine laid={laid} isSpread={isSpread} roofFault={live.sentence} />
        <div className={panels['line']}>
          <Button look="main" onPress={() => onUse(corners)} isDisabled={!closes || live.sentence !== null}>
            Use these sides
          </Button>
          <Button onPress={() => setSpread(true)} isDisabled={laid?.kind !== 'laid-out' || closes}>
            Spread it
          </Button>
          <Button look="quiet" onPress={onBack}>
            Back to drawing <KeyHint keys="Escape" />
          </Button>
        </div>
      </section>
    </PlanCanvas>
  )
}

/** Keeps the typed sides in sight: after each change of one, not while the person moves the sheet. */
function useShown(scene: PlanScene, corners: readonly PlanPoint[], laid: unknown): void {
  const { keep } = scene.stage
  useEffect(keep, [keep])
  const latest = useRef({ stage: scene.stage, corners })
  useLayoutEffect(() => {
    latest.current = { stage: scene.stage, corners }
  })
  useEffect(() => showCorners(latest.current.stage, latest.current.corners), [laid])
}

function layOut(rows: readonly TypedTraverseSide[], upAzimuthDeg: number): Traverse | TraverseFault | null {
  const read = readTraverse(rows)
  if (!read.ok) return { kind: 'fault', sentence: read.sentence }
  return read.sides.length === 0 ? null : closeTraverse(read.sides, upAzimuthDeg)
}

function placed(
  laid: Traverse | TraverseFault | null,
  { isSpread, start }: { readonly isSpread: boolean; readonly start: PlanPoint },
): readonly PlanPoint[] {
  if (laid?.kind !== 'laid-out') return []
  const corners = isSpread ? spreadClosingError(laid) : laid.corners
  return corners.map((corner) => tidyPoint({ xFt: corner.xFt + start.xFt, yFt: corner.yFt + start.yFt }))
}

interface ClosingLineProps {
  readonly laid: Traverse | TraverseFault | null
  readonly isSpread: boolean
  readonly roofFault: string | null
}

function ClosingLine({ laid, isSpread, roofFault }: ClosingLineProps) {
  if (laid === null) {
    return (
      <p className={panels['quiet']}>
        R and L are square turns; R 45, -45 and az 200 (a true azimuth) say other ones. Several lines can be pasted at
        once, such as 42&apos; 6&quot; R. Click the sheet to say where the first corner is.
      </p>
    )
  }
  if (laid.kind === 'fault') return <p className={panels['quiet']}>{laid.sentence}</p>
  const error = `${laid.closing.lengthFt.toFixed(2)} ft, ${closingLabel(laid.closing)}`
  if (roofFault !== null) return <p className={panels['refusal']}>{roofFault}</p>
  if (laid.closing.oneIn === null) return <p className={panels['quiet']}>The sides close.</p>
  return (
    <p className={isSpread ? panels['quiet'] : panels['refusal']}>
      {isSpread
        ? `The closing error of ${error}, is spread over the sides by their length.`
        : `The last side misses the start by ${error}. Correct a side, or spread the error over all sides.`}
    </p>
  )
}

interface TraverseOverlayProps {
  readonly corners: readonly PlanPoint[]
  readonly laid: Traverse | TraverseFault | null
  readonly isSpread: boolean
  readonly view: PlanView
}

function TraverseOverlay({ corners, laid, isSpread, view }: TraverseOverlayProps) {
  const [first] = corners
  if (first === undefined || laid?.kind !== 'laid-out') return null
  const end = isSpread ? first : { xFt: first.xFt + laid.end.xFt, yFt: first.yFt + laid.end.yFt }
  return (
    <g>
      <path className={styles['traverse']} d={linePath([...corners, end], view)} />
      <path className={styles['gap']} d={linePath([end, first], view)} />
      <EdgeLabels rings={[corners]} view={view} />
    </g>
  )
}
