import { useVirtualizer } from '@tanstack/react-virtual'
import {
  type KeyboardEvent,
  type MouseEvent,
  type RefObject,
  useEffect,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
} from 'react'
import type { Photo } from '../../app/evidence/photo.ts'
import type { PhotoId } from '../../app/job/ids.ts'
import { useJob } from '../state/job-state.tsx'
import { usePlacement } from '../state/placement.tsx'
import { useRelated } from '../state/selection.tsx'
import styles from './contact-sheet.module.css'
import { GroupHeading } from './group-heading.tsx'
import { PhotoTile } from './photo-tile.tsx'
import type { PhotoGroup } from './photo-groups.ts'
import { suggestedWords } from './suggested-words.ts'
import { rowOfPhoto, type SheetRow, sheetRows, type Step, steppedPhoto } from './sheet-rows.ts'
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
  const { groups, tilePx, lead, onPick, onOpen } = props
  const scroller = useRef<HTMLDivElement>(null)
  const width = useWidth(scroller) - 2 * GAP_PX
  const columns = Math.max(1, Math.floor((width + GAP_PX) / (tilePx + GAP_PX)))
  // Pictures grow to fill the line.
  const widthPx = Math.max(tilePx, Math.floor((width - (columns - 1) * GAP_PX) / columns))
  const rows = useMemo(() => sheetRows(groups, columns), [groups, columns])
  // The keys belong to the sheet as soon as it is there, also on the way back from the large view.
  useEffect(() => scroller.current?.focus({ preventScroll: true }), [])
  const { virtual, isLeadDrawn } = useRowsInSight({ scroller, rows, widthPx, lead })
  return (
    <div
      ref={scroller}
      className={styles['scroller']}
      role="grid"
      aria-multiselectable="true"
      aria-label="Photos"
      aria-rowcount={rows.length}
      tabIndex={0}
      aria-activedescendant={isLeadDrawn && lead !== null ? tileId(lead) : undefined}
      onKeyDown={(event) => moveByKey(event, { ...props, rows })}
      onClick={(event) => {
        const id = photoAt(event, groups)
        if (id !== null) onPick(id, event.shiftKey ? 'range' : event.ctrlKey || event.metaKey ? 'toggle' : 'alone')
      }}
      onDoubleClick={(event) => {
        const id = photoAt(event, groups)
        if (id !== null) onOpen(id)
      }}
    >
      <div role="presentation" className={styles['rows']} style={{ height: virtual.getTotalSize() }}>
        {virtual.getVirtualItems().map((item) => (
          <div
            key={item.key}
            role="row"
            aria-rowindex={item.index + 1}
            className={styles['row']}
            style={{ transform: `translateY(${item.start}px)`, height: item.size }}
          >
            <RowContent row={rows[item.index]} widthPx={widthPx} picked={props.picked} lead={lead} />
          </div>
        ))}
      </div>
    </div>
  )
}

interface RowsInput {
  readonly scroller: RefObject<HTMLDivElement | null>
  readonly rows: readonly SheetRow[]
  readonly widthPx: number
  readonly lead: PhotoId | null
}

/** The lines in sight; the line of the leading photo is brought into sight when the lead changes. */
function useRowsInSight({ scroller, rows, widthPx, lead }: RowsInput) {
  const rowPx = Math.round(widthPx * 0.75) + WORDS_PX + GAP_PX
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
  return { virtual, isLeadDrawn: virtual.getVirtualItems().some(({ index }) => index === leadRow) }
}

interface RowContentProps {
  readonly row: SheetRow | undefined
  readonly widthPx: number
  readonly picked: ReadonlySet<PhotoId>
  readonly lead: PhotoId | null
}

function RowContent({ row, widthPx, picked, lead }: RowContentProps) {
  const { photoIds: related } = useRelated()
  const { facets } = useJob()
  const { byPhoto } = usePlacement(false)
  if (row === undefined) return null
  if (row.kind === 'heading') return <GroupHeading group={row.group} />
  return row.photos.map((photo) => (
    <PhotoTile
      key={photo.id}
      id={tileId(photo.id)}
      photo={photo}
      facetLetter={facets.find(({ id }) => id === photo.tags.facetId)?.letter ?? null}
      suggested={suggestedWords(photo, byPhoto.get(photo.id), facets)}
      widthPx={widthPx}
      isPicked={picked.has(photo.id)}
      isLead={photo.id === lead}
      isRelated={related.has(photo.id)}
    />
  ))
}

/** The photo whose tile was pressed; null beside the tiles. */
function photoAt(event: MouseEvent, groups: readonly PhotoGroup[]): PhotoId | null {
  if (!(event.target instanceof Element)) return null
  const tile = event.target.closest('[data-photo-id]')
  const id = tile?.getAttribute('data-photo-id') ?? null
  for (const group of groups) {
    const photo = group.photos.find((one) => one.id === id)
    if (photo !== undefined) return photo.id
  }
  return null
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
