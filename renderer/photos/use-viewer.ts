import { useRef, useState } from 'react'
import type { Photo } from '../../app/evidence/photo.ts'
import type { PhotoId } from '../../app/job/ids.ts'
import {
  fullSizeView,
  pannedPicture,
  type PictureView,
  type PixelSize,
  WHOLE_PICTURE,
  zoomedPicture,
} from './picture-view.ts'

/** What can be done with the photo shown large. */
export interface ViewerActions {
  step(by: number): void
  whole(): void
  fullSize(): void
  zoom(factor: number): void
  /** Moves the picture, pixels of the screen. */
  pan(x: number, y: number): void
  turn(quarterTurns: number): void
  compare(): void
  /** Puts the compared photo in front. */
  swap(): void
  mark(): void
  close(): void
}

interface Sizes {
  readonly picture: PixelSize
  readonly frame: PixelSize
}

export interface Viewer {
  readonly view: PictureView
  readonly setView: (change: (before: PictureView) => PictureView) => void
  /** The photo beside the one shown; null when nothing is compared. */
  readonly other: Photo | null
  readonly canMark: boolean
  readonly turnsOf: (photo: Photo) => number
  readonly onSizes: (sizes: Sizes) => void
  readonly actions: ViewerActions
}

interface ViewerInput {
  /** The photos to step through, in the order of the sheet. */
  readonly order: readonly Photo[]
  readonly photo: Photo
  /** The photo to compare with at first; null for none. */
  readonly beside: Photo | null
  readonly onShow: (id: PhotoId) => void
  readonly onClose: () => void
  readonly isMarking: boolean
  readonly onMarking: (isMarking: boolean) => void
}

/** How the large photo is looked at, and what can be done with it. */
export function useViewer({ order, photo, beside, onShow, onClose, isMarking, onMarking }: ViewerInput): Viewer {
  const [view, setView] = useState<PictureView>(WHOLE_PICTURE)
  const [turns, setTurns] = useState<ReadonlyMap<PhotoId, number>>(new Map())
  const [otherId, setOther] = useState<PhotoId | null>(beside?.id ?? null)
  const sizes = useRef<Sizes | null>(null)
  const other = order.find(({ id }) => id === otherId) ?? (beside?.id === otherId ? beside : null)
  const at = order.findIndex(({ id }) => id === photo.id)
  const change = (make: (before: PictureView, known: Sizes) => PictureView) => {
    const known = sizes.current
    if (known !== null) setView((before) => make(before, known))
  }
  const canMark = photo.file.widthPx !== null && photo.file.heightPx !== null && photo.preview === 'ready'
  return {
    view,
    setView,
    other: isMarking ? null : other,
    canMark,
    turnsOf: ({ id }) => turns.get(id) ?? 0,
    onSizes: (known) => {
      sizes.current = known
    },
    actions: {
      step(by) {
        const next = order[at + by]
        if (next === undefined) return
        // Two compared photos stay magnified at the same place; a photo alone starts whole.
        if (other === null) setView(WHOLE_PICTURE)
        onShow(next.id)
      },
      whole: () => setView(WHOLE_PICTURE),
      fullSize: () => change((before, { picture, frame }) => fullSizeView(before, picture, frame)),
      zoom: (factor) => change((before, known) => zoomedPicture(before, factor, { x: 0, y: 0, ...known })),
      pan: (x, y) => change((before, known) => pannedPicture(before, { x, y }, known)),
      turn: (by) => setTurns(new Map(turns).set(photo.id, ((turns.get(photo.id) ?? 0) + by + 4) % 4)),
      compare: () => setOther(other === null ? ((order[at + 1] ?? order[at - 1])?.id ?? null) : null),
      swap() {
        if (other === null) return
        setOther(photo.id)
        onShow(other.id)
      },
      mark: () => onMarking(canMark && !isMarking),
      close: onClose,
    },
  }
}
