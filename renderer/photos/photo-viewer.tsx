import { useEffect, useRef } from 'react'
import { photoLabel, type Photo } from '../../app/evidence/photo.ts'
import type { PhotoId } from '../../app/job/ids.ts'
import { photoSubject } from '../../app/packet/photo-words.ts'
import { MarkingPane } from './marks/marking-pane.tsx'
import styles from './photo-viewer.module.css'
import { PicturePane } from './picture-pane.tsx'
import { useViewer } from './use-viewer.ts'
import { useViewerKeys, ViewerBar } from './viewer-bar.tsx'

interface PhotoViewerProps {
  /** The photos to step through, in the order of the sheet. */
  readonly order: readonly Photo[]
  readonly photo: Photo
  /** The photo to compare with at first; null for none. */
  readonly beside: Photo | null
  readonly onShow: (id: PhotoId) => void
  readonly onClose: () => void
  /** Whether the photo is being drawn over, so that the keys of tagging rest. */
  readonly isMarking: boolean
  readonly onMarking: (isMarking: boolean) => void
}

/** One photo large, or two side by side that zoom and move together. Turning is for looking only. */
export function PhotoViewer(props: PhotoViewerProps) {
  const { order, photo, isMarking, onMarking } = props
  const viewer = useViewer(props)
  const { view, setView, other, turnsOf, onSizes, actions } = viewer
  const place = useRef<HTMLDivElement>(null)
  // The keys come back to the picture after marking, too.
  useEffect(() => place.current?.focus({ preventScroll: true }), [isMarking])
  useViewerKeys(actions, { isComparing: other !== null })
  const { widthPx, heightPx } = photo.file
  const at = order.findIndex(({ id }) => id === photo.id)
  return (
    <section
      ref={place}
      tabIndex={-1}
      className={styles['viewer']}
      aria-label={`Photo ${photoLabel(photo.number)}, large`}
    >
      <ViewerBar
        photo={photo}
        place={at < 0 ? '' : `${at + 1} of ${order.length}, `}
        viewer={viewer}
        isMarking={isMarking}
      />
      <div className={styles['panes']}>
        {isMarking && widthPx !== null && heightPx !== null ? (
          <MarkingPane
            key={photo.id}
            photo={photo}
            picture={{ widthPx, heightPx }}
            view={view}
            onView={setView}
            quarterTurns={turnsOf(photo)}
            onSizes={onSizes}
            onDone={() => onMarking(false)}
          />
        ) : (
          (other === null ? [photo] : [photo, other]).map((shown, index) => (
            <figure key={shown.id} className={styles['figure']}>
              <PicturePane
                photo={shown}
                view={view}
                onView={setView}
                quarterTurns={turnsOf(shown)}
                onSizes={(known) => {
                  if (index === 0) onSizes(known)
                }}
              />
              {other === null ? null : (
                <figcaption>
                  <strong>{photoLabel(shown.number)}</strong> {photoSubject(shown)}
                </figcaption>
              )}
            </figure>
          ))
        )}
      </div>
    </section>
  )
}
