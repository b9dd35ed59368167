import { useRef } from 'react'
import type { OutlineId } from '../../../app/job/ids.ts'
import { useJob } from '../../state/job-state.tsx'
import { Button } from '../../ui/button.tsx'
import { KeyHint } from '../../ui/key-hint.tsx'
import { NumberField } from '../../ui/number-field.tsx'
import { SelectField } from '../../ui/select-field.tsx'
import { LOOK, type PlanMode } from '../plan-mode.ts'
import panels from '../plan-panels.module.css'
import { SavedText } from '../saved-text.tsx'
import { useEscapeKey } from '../use-escape-key.ts'
import { EdgeFields } from './edge-fields.tsx'
import { commonPitch, withAllPitches } from './outline-draft.ts'
import { faultOfName } from './outline-name-step.tsx'
import styles from './outlines.module.css'
import { RemoveOutline } from './remove-outline.tsx'
import type { LiveRoof } from './use-live-roof.ts'
import { lettersOf, type OutlineShape } from './use-outline-shape.ts'

interface OutlineShapePanelProps {
  readonly shape: OutlineShape
  readonly live: LiveRoof
  readonly onMode: (mode: PlanMode) => void
}

/** The outline under edit in words and numbers, the picked edge, and what can be done next. */
export function OutlineShapePanel({ shape, live, onMode }: OutlineShapePanelProps) {
  const panel = useRef<HTMLElement>(null)
  const leave = () => onMode(LOOK)
  useEscapeKey(panel, leave)
  const { outline } = shape
  const wrong = live.sentence ?? shape.refusal
  return (
    <section ref={panel} className={panels['tool']} aria-label={`Shape the outline ${outline.name}`}>
      <OutlineFields shape={shape} onChosen={(outlineId) => onMode({ kind: 'shape-outline', outlineId })} />
      {shape.picked === null ? (
        <p className={panels['quiet']}>
          Drag a square to move a corner, a circle to add one, the cross to move all of it. Click an edge for its pitch
          and length; a double click makes it a gable or an eave.
        </p>
      ) : (
        <EdgeFields key={`${shape.picked.ring} ${shape.picked.index}`} shape={shape} place={shape.picked} />
      )}
      {wrong === null ? null : (
        <p className={panels['refusal']} role="alert">
          {wrong}
        </p>
      )}
      {live.goes.length === 0 ? null : <p className={panels['quiet']}>{lettersOf(live.goes)} would go.</p>}
      <div className={panels['line']}>
        <Button look="main" onPress={leave}>
          Done <KeyHint keys="Escape" />
        </Button>
        <Button onPress={() => onMode({ kind: 'outline', courtyardOf: null })}>Add an outline…</Button>
        <Button onPress={() => onMode({ kind: 'outline', courtyardOf: outline.id })}>Add a courtyard…</Button>
        <RemoveOutline outline={outline} onRemoved={leave} />
      </div>
    </section>
  )
}

function OutlineFields({ shape, onChosen }: { shape: OutlineShape; onChosen: (id: OutlineId) => void }) {
  const { outlines } = useJob()
  const { outline } = shape
  const others = outlines.filter(({ id }) => id !== outline.id)
  return (
    <div className={styles['columns']}>
      {others.length === 0 ? null : (
        <SelectField
          label="Outline"
          options={outlines.map(({ id, name }) => ({ key: id, label: name }))}
          value={outline.id}
          onChange={(id) => {
            if (id !== null) onChosen(id)
          }}
        />
      )}
      <SavedText
        label="Name"
        value={outline.name}
        maxLength={60}
        fault={(name) => faultOfName(name, others)}
        onSave={(name) => shape.change((now) => ({ ...now, name }))}
      />
      <NumberField
        label="Pitch of all eaves"
        unit=":12"
        value={onePitch(shape)}
        min={0.25}
        max={36}
        placeholder="mixed"
        onChange={(pitchRise) => {
          if (pitchRise !== null) shape.change((now) => withAllPitches(now, pitchRise))
        }}
      />
      <NumberField
        label="Eave height"
        unit="ft"
        value={outline.eaveHeightFt}
        min={0}
        max={500}
        onChange={(height) => shape.change((now) => ({ ...now, eaveHeightFt: height ?? 0 }))}
      />
    </div>
  )
}

/** The one pitch that all eaves have; null when they differ. */
function onePitch({ outline }: OutlineShape): number | null {
  const pitch = commonPitch(outline)
  const edges = [outline.outer, ...outline.courtyards].flatMap((ring) => ring.edges)
  return edges.every((edge) => edge.kind === 'gable' || edge.pitchRise === pitch) ? pitch : null
}
