import { useVirtualizer } from '@tanstack/react-virtual'
import { type KeyboardEvent, type RefObject, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react'
import type { Photo } from '../../app/evidence/photo.ts'
import type { PhotoId } from '../../app/job/ids.ts'
import { useJob } from '../state/job-state.tsx'
import { useRelated } from '../state/selection.tsx'
import styles from './contact-sheet.module.css'
import { GroupHeading } from './group-heading.tsx'
import { PhotoTile } from './photo-tile.tsx'
import type { PhotoGroup } from './photo-groups.ts'
import { rowOfPhoto, sheetRows, type Step, steppedPhoto } from './sheet-rows.ts'
import type { Pick } from './sheet-selection.ts'

const GAP_PX = 8
const HEADING_PX = 34
/** Height of the words under a picture. */
const WORDS_PX = 42

interface ContactSheetProps {
  readonly groups: readonly PhotoGroup[]
  readonly tilePx: number
  /** The picked photos, and where the keyboard is. */
  readonly picked: ReadonlySet<PhotoId>
  readonly lead: PhotoId | null
  readonly onPick: (id: PhotoId, how: Pick) => void
  readonly onPickAll: () => void
  readonly onOpen: (id: PhotoId) => void
}

/** All photos as small pictures. Only the lines in sight are drawn. */
export function ContactSheet(props: ContactSheetProps) {
  const { groups, tilePx, picked, lead, onPick, onOpen } = props
  const scroller = useRef<HTMLDivElement>(null)
  const columns = Math.max(1, Math.floor((useWidth(scroller) - GAP_PX) / (tilePx + GAP_PX)))
  const rows = useMemo(() => sheetRows(groups, columns), [groups, columns])
  const { photoIds: related } = useRelated()
  const { facets } = useJob()
  const letters = useMemo(() => new Map(facets.map((facet) => [facet.id, facet.letter])), [facets])
  const rowPx = Math.round(tilePx * 0.75) + WORDS_PX + GAP_PX
  const virtual = useVirtualizer({
    count: rows.length,
    getScrollElement: () => scroller.current,
    estimateSize: (index) => (rows[index]?.kind === 'heading' ? HEADING_PX : rowPx),
    overscan: 3,
  })
  useEffect(() => virtual.measure(), [virtual, rowPx, rows])
  const leadRow = lead === null ? -1 : rowOfPhoto(rows, lead)
  useEffect(() => {
    if (leadRow >= 0) virtual.scrollToIndex(leadRow, { align: 'auto' })
  }, [virtual, leadRow, lead])
  const items = virtual.getVirtualItems()
  const isLeadDrawn = items.some(({ index }) => index === leadRow)
  return (
    <div
      ref={scroller}
      className={styles['scroller']}
      role="listbox"
      aria-multiselectable="true"
      aria-label="Photos"
      tabIndex={0}
      {...(isLeadDrawn && lead !== null ? { 'aria-activedescendant': tileId(lead) } : {})}
      onKeyDown={(event) => moveByKey(event, { ...props, rows })}
    >
      <div role="presentation" className={styles['rows']} style={{ height: virtual.getTotalSize() }}>
        {items.map((item) => {
          const row = rows[item.index]
          if (row === undefined) return null
          return (
            <div
              key={item.key}
              role="presentation"
              className={styles['row']}
              style={{ transform: `translateY(${item.start}px)`, height: item.size }}
            >
              {row.kind === 'heading' ? (
                <GroupHeading group={row.group} />
              ) : (
                row.photos.map((photo) => (
                  <PhotoTile
                    key={photo.id}
                    id={tileId(photo.id)}
                    photo={photo}
                    facetLetter={photo.tags.facetId === null ? null : (letters.get(photo.tags.facetId) ?? null)}
                    widthPx={tilePx}
                    isPicked={picked.has(photo.id)}
                    isLead={photo.id === lead}
                    isRelated={related.has(photo.id)}
                    onPick={onPick}
                    onOpen={onOpen}
                  />
                ))
              )}
            </div>
          )
        })}
      </div>
    </div>
  )
}

function tileId(id: PhotoId): string {
  return `photo-tile-${id}`
}

function useWidth(element: RefObject<HTMLElement | null>): number {
  const [width, setWidth] = useState(0)
  useLayoutEffect(() => {
    const watched = element.current
    if (watched === null) return undefined
    const watcher = new ResizeObserver(() => setWidth(watched.clientWidth))
    watcher.observe(watched)
    return () => watcher.disconnect()
  }, [element])
  return width
}

const steps: Readonly<Record<string, Step>> = {
  ArrowLeft: 'left',
  ArrowRight: 'right',
  ArrowUp: 'up',
  ArrowDown: 'down',
  Home: 'first',
  End: 'last',
}

interface Movement extends ContactSheetProps {
  readonly rows: ReturnType<typeof sheetRows>
}

function moveByKey(event: KeyboardEvent, { rows, groups, lead, onPick, onPickAll, onOpen }: Movement): void {
  if (event.altKey) return
  const hasCtrl = event.ctrlKey || event.metaKey
  if (hasCtrl && event.key.toLowerCase() === 'a') {
    event.preventDefault()
    onPickAll()
    return
  }
  const step = steps[event.key]
  if (step !== undefined && !hasCtrl) {
    event.preventDefault()
    const first: Photo | undefined = groups[0]?.photos[0]
    const to = lead === null ? first?.id : steppedPhoto(rows, lead, step)
    if (to !== undefined) onPick(to, event.shiftKey ? 'range' : 'alone')
  } else if (event.key === 'Enter' && lead !== null) {
    event.preventDefault()
    onOpen(lead)
  }
}
