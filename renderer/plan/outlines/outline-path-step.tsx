import { useEffect, useMemo, useRef, useState } from 'react'
import type { PlanPoint } from '../../../app/job/places.ts'
import type { HouseOutline } from '../../../app/roof/house-outline.ts'
import { useCommands } from '../../state/commands.ts'
import { useJob } from '../../state/job-state.tsx'
import { Button } from '../../ui/button.tsx'
import { KeyHint } from '../../ui/key-hint.tsx'
import { sideWords, TypedSide } from '../draw-panel.tsx'
import { PlanCanvas, type PlanScene } from '../plan-canvas.tsx'
import panels from '../plan-panels.module.css'
import { type Drawing, useDrawTool } from '../use-draw-tool.tsx'
import { newEdgeId } from './new-edge-id.ts'
import { newOutline } from './new-outline.ts'
import { commonPitch, eavesRing, withCourtyard } from './outline-draft.ts'
import { useLiveRoof } from './use-live-roof.ts'

interface OutlinePathStepProps {
  readonly scene: PlanScene
  /** Corners drawn before. */
  readonly path: readonly PlanPoint[]
  /** The outline whose courtyard is drawn; null for a new outline. */
  readonly courtyardOf: HouseOutline | null
  readonly onClosed: (corners: readonly PlanPoint[]) => void
  readonly onTraverse: () => void
  readonly onCancel: () => void
}

/** Clicking or typing the sides of an eaves line; from the third corner on, the roof over it is in sight. */
export function OutlinePathStep(props: OutlinePathStepProps) {
  const { scene, courtyardOf, onCancel } = props
  const { facets } = useJob()
  const [length, setLength] = useState('')
  const lengthField = useRef<HTMLDivElement>(null)
  const { keep, area } = scene.stage
  useEffect(keep, [keep])
  const drawing = useDrawTool({
    facets,
    startWith: props.path,
    onClosed: props.onClosed,
    onDigit: (typed) => {
      setLength(typed)
      lengthField.current?.querySelector('input')?.focus()
    },
  })
  const { path } = drawing
  const started = useMemo(() => startedOutline(path, courtyardOf), [path, courtyardOf])
  const live = useLiveRoof(scene, started)
  usePathKeys(drawing, onCancel)
  return (
    <PlanCanvas scene={live.scene} tool={drawing.tool}>
      <section className={panels['tool']} aria-label={courtyardOf === null ? 'Draw an outline' : 'Draw a courtyard'}>
        <p className={panels['lead']}>{path.length > 0 ? sideWords(drawing) : leadWords(courtyardOf)}</p>
        <TypedSide
          drawing={drawing}
          length={length}
          onLength={setLength}
          lengthField={lengthField}
          onAdded={() => area?.focus({ preventScroll: true })}
        />
        {drawing.refusal === null ? null : (
          <p className={panels['refusal']} role="alert">
            {drawing.refusal}
          </p>
        )}
        {live.sentence === null ? null : <p className={panels['quiet']}>Closed here: {live.sentence}</p>}
        <PathButtons {...props} drawing={drawing} />
      </section>
    </PlanCanvas>
  )
}

function leadWords(courtyardOf: HouseOutline | null): string {
  return courtyardOf === null
    ? 'Click the first corner of the eaves line, then go round the house.'
    : `Click the first corner of the courtyard in "${courtyardOf.name}".`
}

function startedOutline(path: readonly PlanPoint[], courtyardOf: HouseOutline | null): HouseOutline | null {
  if (path.length < 3) return null
  if (courtyardOf === null) return newOutline(path, { name: 'New outline', pitchRise: null, eaveHeightFt: 0 })
  return withCourtyard(courtyardOf, eavesRing(path, commonPitch(courtyardOf) ?? 4, newEdgeId))
}

function PathButtons({
  drawing,
  courtyardOf,
  onTraverse,
  onCancel,
}: OutlinePathStepProps & { readonly drawing: Drawing }) {
  const corners = drawing.path.length
  return (
    <div className={panels['line']}>
      <Button look="main" onPress={drawing.close} isDisabled={corners < 3}>
        Close the outline <KeyHint keys="Enter" />
      </Button>
      <Button onPress={drawing.removeLast} isDisabled={corners === 0}>
        Remove last <KeyHint keys="Backspace" />
      </Button>
      {courtyardOf === null ? (
        <Button onPress={onTraverse} isDisabled={corners > 0}>
          Type all sides…
        </Button>
      ) : null}
      <Button look="quiet" onPress={onCancel}>
        Cancel <KeyHint keys="Escape" />
      </Button>
    </div>
  )
}

function usePathKeys(drawing: Drawing, onCancel: () => void): void {
  const corners = drawing.path.length
  useCommands([
    {
      id: 'plan-outline.close',
      label: 'Close the outline',
      keys: 'Enter',
      enabled: corners >= 3,
      perform: drawing.close,
    },
    {
      id: 'plan-outline.back',
      label: 'Remove the last corner',
      keys: 'Backspace',
      enabled: corners > 0,
      perform: drawing.removeLast,
    },
    { id: 'plan-outline.cancel', label: 'Stop drawing', keys: 'Escape', enabled: true, perform: onCancel },
  ])
}
