import { useMemo, useRef, useState } from 'react'
import type { OutlineId } from '../../../app/job/ids.ts'
import type { PlanPoint } from '../../../app/job/places.ts'
import type { HouseOutline } from '../../../app/roof/house-outline.ts'
import { useCommands } from '../../state/commands.ts'
import { useEdit, useJob } from '../../state/job-state.tsx'
import { Button } from '../../ui/button.tsx'
import { focusFirstField } from '../../ui/focus-first-field.ts'
import { KeyHint } from '../../ui/key-hint.tsx'
import { NumberField } from '../../ui/number-field.tsx'
import { TextField } from '../../ui/text-field.tsx'
import { PlanCanvas, type PlanScene } from '../plan-canvas.tsx'
import panels from '../plan-panels.module.css'
import type { PlanTool } from '../plan-tool.ts'
import { useEscapeKey } from '../use-escape-key.ts'
import { newOutline, proposedName, proposedPitch } from './new-outline.ts'
import { OutlineOverlay } from './outline-overlay.tsx'
import { useLiveRoof } from './use-live-roof.ts'

interface OutlineNameStepProps {
  readonly scene: PlanScene
  readonly corners: readonly PlanPoint[]
  readonly onBack: () => void
  readonly onSaved: (outlineId: OutlineId) => void
}

interface Words {
  readonly name: string
  readonly pitchRise: number | null
  readonly eaveHeightFt: number
}

/** A closed eaves line gets its name, one pitch for all eaves and its height; saving builds the roof. */
export function OutlineNameStep({ scene, corners, onBack, onSaved }: OutlineNameStepProps) {
  const { outlines } = useJob()
  const edit = useEdit()
  const [words, setWords] = useState<Words>(() => ({
    name: proposedName(outlines),
    pitchRise: proposedPitch(outlines),
    eaveHeightFt: outlines.at(-1)?.eaveHeightFt ?? 0,
  }))
  const [asked, setAsked] = useState(false)
  const form = useRef<HTMLFormElement>(null)
  useEscapeKey(form, onBack)
  useCommands([{ id: 'plan-outline.back', label: 'Back to drawing', keys: 'Escape', enabled: true, perform: onBack }])
  const outline = useMemo(() => newOutline(corners, words), [corners, words])
  const [isSaving, setSaving] = useState(false)
  // Once the saved outline is on the plan, the one drawn here would lie on it.
  const isThere = isSaving && outlines.some(({ name }) => name === words.name.trim())
  const live = useLiveRoof(scene, isThere ? null : outline)
  const nameFault = isThere ? null : faultOfName(words.name, outlines)
  async function save() {
    setAsked(true)
    if (nameFault !== null || words.pitchRise === null || live.sentence !== null) return
    const { id: _draft, ...given } = outline
    setSaving(true)
    const saved = await edit('outlines.save', { id: null, outline: given })
    setSaving(false)
    if (saved !== null) onSaved(saved.id)
  }
  return (
    <PlanCanvas scene={live.scene} tool={stillTool(outline)}>
      <form
        ref={form}
        className={panels['tool']}
        aria-label="New outline"
        onSubmit={(event) => {
          event.preventDefault()
          void save()
        }}
      >
        <p className={panels['lead']}>New outline: give its pitch; single edges can be changed afterwards.</p>
        <WordFields words={words} nameFault={nameFault} isPitchAsked={asked} onChange={setWords} />
        {live.sentence === null ? null : (
          <p className={panels['refusal']} role="alert">
            {live.sentence}
          </p>
        )}
        <div className={panels['line']}>
          <Button look="main" type="submit" isDisabled={live.sentence !== null}>
            Build the roof <KeyHint keys="Enter" />
          </Button>
          <Button look="quiet" onPress={onBack}>
            Back to drawing
          </Button>
        </div>
      </form>
    </PlanCanvas>
  )
}

/** Shows the outline and does nothing else. */
function stillTool(outline: HouseOutline): PlanTool {
  return {
    cursor: 'default',
    cross: null,
    overlay: (view) => <OutlineOverlay outline={outline} picked={null} view={view} />,
  }
}

interface WordFieldsProps {
  readonly words: Words
  readonly nameFault: string | null
  readonly isPitchAsked: boolean
  readonly onChange: (change: (words: Words) => Words) => void
}

function WordFields({ words, nameFault, isPitchAsked, onChange }: WordFieldsProps) {
  return (
    <div ref={focusFirstField} className={panels['pair']}>
      <NumberField
        label="Pitch of all eaves"
        unit=":12"
        value={words.pitchRise}
        min={0.25}
        max={36}
        onChange={(pitchRise) => onChange((before) => ({ ...before, pitchRise }))}
        error={isPitchAsked && words.pitchRise === null ? 'Type the rise in 12 inches, such as 5.' : null}
      />
      <TextField
        label="Name"
        value={words.name}
        onChange={(name) => onChange((before) => ({ ...before, name }))}
        error={nameFault}
        maxLength={60}
      />
      <NumberField
        label="Eave height"
        unit="ft"
        value={words.eaveHeightFt}
        min={0}
        max={500}
        onChange={(height) => onChange((before) => ({ ...before, eaveHeightFt: height ?? 0 }))}
      />
    </div>
  )
}

/** What is wrong with an outline's name, in words; null when it can stay. */
export function faultOfName(name: string, others: readonly { readonly name: string }[]): string | null {
  if (name.trim() === '') return 'An outline needs a name.'
  return others.some((other) => other.name === name.trim()) ? `"${name.trim()}" is there already.` : null
}
