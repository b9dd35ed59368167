import { useEdit } from '../../state/job-state.tsx'
import { Button } from '../../ui/button.tsx'
import { Checkbox } from '../../ui/checkbox.tsx'
import { NumberField } from '../../ui/number-field.tsx'
import { SelectField } from '../../ui/select-field.tsx'
import panels from '../plan-panels.module.css'
import { SavedText } from '../saved-text.tsx'
import { kindOptions } from './kind-options.ts'
import styles from './underlay.module.css'
import type { Laying } from './use-laying.ts'

interface ImageFieldsProps {
  readonly laying: Laying
}

/** What an image under the plan is, and how it lies: each field saved when it is left. */
export function ImageFields({ laying }: ImageFieldsProps) {
  const { image, keep } = laying
  return (
    <>
      <div className={styles['fields']}>
        <SelectField
          label="What it is"
          options={kindOptions}
          value={image.kind}
          onChange={(kind) => void (kind === null ? undefined : keep({ kind }))}
        />
        <SavedText
          label="Name"
          value={image.label}
          maxLength={120}
          fault={(label) => (label.trim() === '' ? 'Give the image a name.' : null)}
          onSave={(label) => void keep({ label })}
        />
        <SavedText
          label="Where it comes from"
          value={image.source}
          maxLength={400}
          onSave={(source) => void keep({ source })}
        />
        <NumberField
          label="Its top points"
          unit="°"
          value={image.imageUpAzimuthDeg}
          min={0}
          max={360}
          onChange={(deg) => void (deg === null ? undefined : keep({ imageUpAzimuthDeg: deg % 360 }))}
        />
        <NumberField
          label="How strongly it shows"
          unit="%"
          value={image.opacityPercent}
          min={10}
          max={100}
          onChange={(percent) => void (percent === null ? undefined : keep({ opacityPercent: Math.round(percent) }))}
        />
      </div>
      <Steps laying={laying} />
    </>
  )
}

function Steps({ laying }: ImageFieldsProps) {
  const edit = useEdit()
  const { image, keep, begin } = laying
  return (
    <div className={panels['line']}>
      <Button look={image.knownLine === null ? 'main' : 'plain'} onPress={() => begin('scale')}>
        {image.knownLine === null ? 'Give one length on it' : 'Scale it anew'}
      </Button>
      <Button onPress={() => begin('check')} isDisabled={image.knownLine === null}>
        Check a second length
      </Button>
      <Button onPress={() => begin('fit')}>Fit one place</Button>
      <Checkbox isSelected={image.isShown} onChange={(isShown) => void keep({ isShown })}>
        Shown
      </Checkbox>
      <Button look="danger" onPress={() => void edit('plan-images.remove', { id: image.id })}>
        Take it off the plan
      </Button>
    </div>
  )
}
