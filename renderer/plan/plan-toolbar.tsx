import { Button } from '../ui/button.tsx'
import { Checkbox } from '../ui/checkbox.tsx'
import { KeyHint } from '../ui/key-hint.tsx'
import type { PlanMode } from './plan-mode.ts'
import styles from './plan-workspace.module.css'

interface PlanToolbarProps {
  readonly mode: PlanMode['kind']
  readonly canShape: boolean
  readonly hasOutline: boolean
  readonly showsCameras: boolean
  readonly onCameras: (shown: boolean) => void
  readonly showsZones: boolean
  readonly onZones: (shown: boolean) => void
  readonly showsTests: boolean
  readonly onTests: (shown: boolean) => void
  readonly showsLengths: boolean
  readonly onLengths: (shown: boolean) => void
  readonly onOutline: () => void
  readonly onShapeOutline: () => void
  readonly onDraw: () => void
  readonly onShape: () => void
  readonly onPin: () => void
  readonly onImage: () => void
  readonly onDoor: () => void
  readonly onSheet: () => void
}

/** What can be done on the plan, and how it is looked at. */
export function PlanToolbar(props: PlanToolbarProps) {
  const { mode, canShape } = props
  return (
    <div className={styles['toolbar']} role="toolbar" aria-label="Roof plan">
      <Button onPress={props.onOutline} isDisabled={mode !== 'look'}>
        Draw an outline <KeyHint keys="O" />
      </Button>
      <Button onPress={props.onShapeOutline} isDisabled={mode !== 'look' || !props.hasOutline}>
        Shape the outline <KeyHint keys="H" />
      </Button>
      <Button onPress={props.onDraw} isDisabled={mode !== 'look'}>
        Draw a facet <KeyHint keys="D" />
      </Button>
      <Button onPress={props.onShape} isDisabled={mode !== 'look' || !canShape}>
        Corners <KeyHint keys="E" />
      </Button>
      <Button onPress={props.onPin} isDisabled={mode !== 'look'}>
        Place a pin <KeyHint keys="P" />
      </Button>
      <Button onPress={props.onImage} isDisabled={mode !== 'look'}>
        Image <KeyHint keys="I" />
      </Button>
      <Button onPress={props.onDoor} isDisabled={mode !== 'look'}>
        Front door <KeyHint keys="F" />
      </Button>
      <span className={styles['gap']} />
      <Checkbox isSelected={props.showsLengths} onChange={props.onLengths}>
        Lengths
      </Checkbox>
      <Checkbox isSelected={props.showsTests} onChange={props.onTests}>
        Tests
      </Checkbox>
      <Checkbox isSelected={props.showsCameras} onChange={props.onCameras}>
        Cameras
      </Checkbox>
      <Checkbox isSelected={props.showsZones} onChange={props.onZones}>
        Zones
      </Checkbox>
      <Button look="quiet" onPress={props.onSheet} isDisabled={mode !== 'look'}>
        Sheet…
      </Button>
    </div>
  )
}
