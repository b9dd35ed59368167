import { useEffect, useRef, useState } from 'react'
import { photoLabel, type Photo } from '../../app/evidence/photo.ts'
import type { PhotoId } from '../../app/job/ids.ts'
import { photoSubject, whenTakenWords } from '../../app/packet/photo-words.ts'
import { useCommands } from '../state/commands.ts'
import { useJob } from '../state/job-state.tsx'
import { photosById } from './photo-index.ts'
import { Button } from '../ui/button.tsx'
import { IconButton } from '../ui/icon-button.tsx'
import { KeyHint } from '../ui/key-hint.tsx'
import styles from './photo-viewer.module.css'
import { PicturePane } from './picture-pane.tsx'
import { fullSizeView, type PictureView, type PixelSize, WHOLE_PICTURE } from './picture-view.ts'

interface PhotoViewerProps {
  /** The photos to step through, in the order of the sheet. */
  readonly order: readonly Photo[]
  readonly photo: Photo
  /** The photo to compare with at first; null for none. */
  readonly beside: Photo | null
  readonly onShow: (id: PhotoId) => void
  readonly onClose: () => void
}

/** One photo large, or two side by side that zoom and move together. Turning is for looking only. */
export function PhotoViewer({ order, photo, beside, onShow, onClose }: PhotoViewerProps) {
  const [view, setView] = useState<PictureView>(WHOLE_PICTURE)
  const [turns, setTurns] = useState<ReadonlyMap<PhotoId, number>>(new Map())
  const [other, setOther] = useState<Photo | null>(beside)
  const sizes = useRef<{ picture: PixelSize; frame: PixelSize } | null>(null)
  const place = useRef<HTMLDivElement>(null)
  useEffect(() => place.current?.focus({ preventScroll: true }), [])
  const at = order.findIndex(({ id }) => id === photo.id)
  const step = (by: number) => {
    const next = order[at + by]
    if (next === undefined) return
    // Two compared photos stay magnified at the same place; a photo alone starts whole.
    if (other === null) setView(WHOLE_PICTURE)
    onShow(next.id)
  }
  const fullSize = () => {
    const known = sizes.current
    if (known !== null) setView((before) => fullSizeView(before, known.picture, known.frame))
  }
  const turn = (by: number) => setTurns(new Map(turns).set(photo.id, ((turns.get(photo.id) ?? 0) + by + 4) % 4))
  const compare = () => setOther(other === null ? (order[at + 1] ?? order[at - 1] ?? null) : null)
  const actions: ViewerActions = { step, fullSize, turn, compare, close: onClose, whole: () => setView(WHOLE_PICTURE) }
  useViewerKeys(actions)
  return (
    <section
      ref={place}
      tabIndex={-1}
      className={styles['viewer']}
      aria-label={`Photo ${photoLabel(photo.number)}, large`}
    >
      <ViewerBar
        photo={photo}
        place={`${at + 1} of ${order.length}`}
        actions={actions}
        isComparing={other !== null}
        view={view}
      />
      <div className={styles['panes']}>
        {(other === null ? [photo] : [photo, other]).map((shown, index) => (
          <figure key={shown.id} className={styles['figure']}>
            <PicturePane
              photo={shown}
              view={view}
              onView={setView}
              quarterTurns={turns.get(shown.id) ?? 0}
              onSizes={(known) => {
                if (index === 0) sizes.current = known
              }}
            />
            {other === null ? null : (
              <figcaption>
                <strong>{photoLabel(shown.number)}</strong> {photoSubject(shown)}
              </figcaption>
            )}
          </figure>
        ))}
      </div>
    </section>
  )
}

interface ViewerActions {
  step(by: number): void
  whole(): void
  fullSize(): void
  turn(quarterTurns: number): void
  compare(): void
  close(): void
}

const keys = {
  previous: 'ArrowLeft',
  next: 'ArrowRight',
  whole: '0',
  fullSize: '1',
  turnLeft: '[',
  turnRight: ']',
  compare: 'B',
  close: 'Escape or Enter',
} as const

function useViewerKeys(actions: ViewerActions): void {
  const command = (id: keyof typeof keys, label: string, perform: () => void) => ({
    id: `photo-viewer.${id}`,
    label,
    keys: keys[id],
    enabled: true,
    perform,
  })
  useCommands([
    command('previous', 'Photo before', () => actions.step(-1)),
    command('next', 'Next photo', () => actions.step(1)),
    command('whole', 'Whole picture', actions.whole),
    command('fullSize', 'Picture pixels one to one', actions.fullSize),
    command('turnLeft', 'Turn left, for looking only', () => actions.turn(-1)),
    command('turnRight', 'Turn right, for looking only', () => actions.turn(1)),
    command('compare', 'Compare with another photo, or stop', actions.compare),
    command('close', 'Back to all photos', actions.close),
  ])
}

interface ViewerBarProps {
  readonly photo: Photo
  readonly place: string
  readonly actions: ViewerActions
  readonly isComparing: boolean
  readonly view: PictureView
}

function ViewerBar({ photo, place, actions, isComparing, view }: ViewerBarProps) {
  const { photos } = useJob()
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
          {place}, {whenTakenWords(photo, photosById(photos))}
        </span>
      </p>
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
        pushed={isComparing}
        onPress={actions.compare}
      />
    </header>
  )
}
