import { photoLabel, type Photo } from '../../app/evidence/photo.ts'
import { photoSubject, whenTakenWords } from '../../app/packet/photo-words.ts'
import { type Command, useCommands } from '../state/commands.ts'
import { useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { IconButton } from '../ui/icon-button.tsx'
import { KeyHint } from '../ui/key-hint.tsx'
import { photosById } from './photo-index.ts'
import styles from './photo-viewer.module.css'
import type { Viewer, ViewerActions } from './use-viewer.ts'

const keys = {
  previous: 'ArrowLeft',
  next: 'ArrowRight',
  whole: '0',
  fullSize: '1',
  closer: '+ or =',
  farther: '-',
  panLeft: 'Shift+ArrowLeft',
  panRight: 'Shift+ArrowRight',
  panUp: 'Shift+ArrowUp',
  panDown: 'Shift+ArrowDown',
  turnLeft: '[',
  turnRight: ']',
  compare: 'B',
  swap: 'Shift+B',
  mark: 'M',
  close: 'Escape or Enter',
} as const

const ZOOM_STEP = 1.4
const PAN_STEP_PX = 120

/** Makes the keys of the large view work. */
export function useViewerKeys(actions: ViewerActions, { isComparing }: { isComparing: boolean }): void {
  const command = (id: keyof typeof keys, label: string, perform: () => void): Command => ({
    id: `photo-viewer.${id}`,
    label,
    keys: keys[id],
    enabled: id !== 'swap' || isComparing,
    perform,
  })
  useCommands([
    command('previous', 'Photo before', () => actions.step(-1)),
    command('next', 'Next photo', () => actions.step(1)),
    command('whole', 'Whole picture', actions.whole),
    command('fullSize', 'Picture pixels one to one', actions.fullSize),
    command('closer', 'Closer', () => actions.zoom(ZOOM_STEP)),
    command('farther', 'Farther', () => actions.zoom(1 / ZOOM_STEP)),
    command('panLeft', 'Look further left', () => actions.pan(PAN_STEP_PX, 0)),
    command('panRight', 'Look further right', () => actions.pan(-PAN_STEP_PX, 0)),
    command('panUp', 'Look further up', () => actions.pan(0, PAN_STEP_PX)),
    command('panDown', 'Look further down', () => actions.pan(0, -PAN_STEP_PX)),
    command('turnLeft', 'Turn left, for looking only', () => actions.turn(-1)),
    command('turnRight', 'Turn right, for looking only', () => actions.turn(1)),
    command('compare', 'Compare with another photo, or stop', actions.compare),
    command('swap', 'Put the compared photo in front', actions.swap),
    command('mark', 'Draw over the photo, or stop', actions.mark),
    command('close', 'Back to all photos', actions.close),
  ])
}

interface ViewerBarProps {
  readonly photo: Photo
  readonly place: string
  readonly viewer: Viewer
  readonly isMarking: boolean
}

/** What can be done with the large photo, by button. */
export function ViewerBar({ photo, place, viewer, isMarking }: ViewerBarProps) {
  const { photos } = useJob()
  const { actions, view, other, canMark } = viewer
  return (
    <header className={styles['bar']}>
      <Button look="quiet" onPress={actions.close}>
        All photos <KeyHint keys="Escape" />
      </Button>
      <IconButton icon="back" label="Photo before" keys={keys.previous} onPress={() => actions.step(-1)} />
      <IconButton icon="forward" label="Next photo" keys={keys.next} onPress={() => actions.step(1)} />
      <p className={styles['title']}>
        <strong>{photoLabel(photo.number)}</strong> {photoSubject(photo)}
        <span className={styles['quiet']}>
          {place}
          {whenTakenWords(photo, photosById(photos))}
        </span>
      </p>
      <Button look={isMarking ? 'main' : 'quiet'} isDisabled={!canMark} aria-pressed={isMarking} onPress={actions.mark}>
        Draw over it <KeyHint keys={keys.mark} />
      </Button>
      <Button look="quiet" onPress={actions.fullSize} aria-pressed={view.zoom > 1}>
        100% <KeyHint keys={keys.fullSize} />
      </Button>
      <IconButton icon="fit" label="Whole picture" keys={keys.whole} onPress={actions.whole} />
      <IconButton
        icon="rotate"
        label="Turn right, for looking only"
        keys={keys.turnRight}
        onPress={() => actions.turn(1)}
      />
      <IconButton
        icon="compare"
        label="Compare with another photo"
        keys={keys.compare}
        pushed={other !== null}
        isDisabled={isMarking}
        onPress={actions.compare}
      />
    </header>
  )
}
