import { type ReactNode, useEffect, useRef, useState } from 'react'
import type { PDFDocumentProxy } from 'pdfjs-dist'
import { useCommands } from '../state/commands.ts'
import { IconButton } from '../ui/icon-button.tsx'
import { bytesWords } from '../ui/quantity-words.ts'
import { SegmentedChoice } from '../ui/segmented-choice.tsx'
import { useElementSize } from '../ui/use-element-size.ts'
import { OutlineList } from './outline-list.tsx'
import { packetKeys } from './packet-keys.ts'
import styles from './packet.module.css'
import { nextZoom, pageScale, type Zoom, zoomWords } from './page-scale.ts'
import { PageView } from './page-view.tsx'
import type { Draft } from './use-draft.ts'

/** The draft's pages with their outline, as they would be issued. */
export function Preview({ draft }: { draft: Draft }) {
  const { pdf, facts, isMaking, trouble } = draft
  if (pdf === null || facts === null) {
    return (
      <section className={styles['preview']} aria-label="Preview">
        <p className={styles['waiting']} role="status">
          {trouble === null ? 'Setting the pages…' : `${trouble.text} ${trouble.help}`}
        </p>
      </section>
    )
  }
  return (
    <PreviewPages pdf={pdf} outline={facts.outline}>
      <span className={styles['quiet']} role="status">
        {isMaking ? 'Setting the pages again…' : trouble === null ? bytesWords(facts.bytes) : trouble.text}
      </span>
    </PreviewPages>
  )
}

interface PreviewPagesProps {
  readonly pdf: PDFDocumentProxy
  readonly outline: readonly { readonly title: string; readonly page: number }[]
  /** What stands at the end of the line over the pages. */
  readonly children: ReactNode
}

function PreviewPages({ pdf, outline, children }: PreviewPagesProps) {
  const room = useRef<HTMLDivElement>(null)
  const size = useElementSize(room)
  const [asked, setPage] = useState(1)
  const [zoom, setZoom] = useState<Zoom>('width')
  const page = Math.min(asked, pdf.numPages)
  const pageSize = usePageSize(pdf, page)
  const scale = pageSize === null || size.widthPx === 0 ? null : pageScale(zoom, size, pageSize)
  const turnTo = (to: number) => setPage(Math.min(Math.max(to, 1), pdf.numPages))
  useEffect(() => {
    room.current?.scrollTo({ top: 0 })
  }, [page])
  usePageKeys({ page, pages: pdf.numPages, scale: scale ?? 1, turnTo, setZoom })
  return (
    <section className={styles['preview']} aria-label="Preview">
      <header className={styles['previewHead']}>
        <IconButton
          icon="back"
          label="Page before"
          keys="PageUp"
          isDisabled={page === 1}
          onPress={() => turnTo(page - 1)}
        />
        <span className={styles['pageCount']}>
          Page {page} of {pdf.numPages}
        </span>
        <IconButton
          icon="forward"
          label="Next page"
          keys="PageDown"
          isDisabled={page === pdf.numPages}
          onPress={() => turnTo(page + 1)}
        />
        <ZoomChoice zoom={zoom} scale={scale ?? 1} onZoom={setZoom} />
        {children}
      </header>
      <OutlineList outline={outline} page={page} onPage={turnTo} />
      <div ref={room} className={styles['room']} role="region" aria-label="Page" {...reachable}>
        {scale === null ? null : <PageView pdf={pdf} page={page} scale={scale} />}
      </div>
    </section>
  )
}

/** A part that scrolls has to be reachable by keyboard. */
const reachable = { tabIndex: 0 } as const

function ZoomChoice({ zoom, scale, onZoom }: { zoom: Zoom; scale: number; onZoom: (zoom: Zoom) => void }) {
  return (
    <span className={styles['zoom']}>
      <SegmentedChoice
        label="Size of the page"
        hideLabel
        options={[
          { key: 'width', label: 'Width' },
          { key: 'page', label: 'Page' },
        ]}
        value={typeof zoom === 'number' ? '' : zoom}
        onChange={(chosen) => {
          if (chosen !== '') onZoom(chosen)
        }}
      />
      <IconButton icon="minus" label="Smaller" keys="-" onPress={() => onZoom(nextZoom(scale, 'out'))} />
      <span className={styles['zoomWords']}>{zoomWords(scale)}</span>
      <IconButton icon="plus" label="Larger" keys="+" onPress={() => onZoom(nextZoom(scale, 'in'))} />
    </span>
  )
}

interface PageKeys {
  readonly page: number
  readonly pages: number
  readonly scale: number
  readonly turnTo: (page: number) => void
  readonly setZoom: (zoom: Zoom) => void
}

function usePageKeys({ page, pages, scale, turnTo, setZoom }: PageKeys): void {
  useCommands([
    { ...packetKeys.next, enabled: page < pages, perform: () => turnTo(page + 1) },
    { ...packetKeys.previous, enabled: page > 1, perform: () => turnTo(page - 1) },
    { ...packetKeys.first, enabled: true, perform: () => turnTo(1) },
    { ...packetKeys.last, enabled: true, perform: () => turnTo(pages) },
    { ...packetKeys.larger, enabled: true, perform: () => setZoom(nextZoom(scale, 'in')) },
    { ...packetKeys.smaller, enabled: true, perform: () => setZoom(nextZoom(scale, 'out')) },
    { ...packetKeys.width, enabled: true, perform: () => setZoom('width') },
  ])
}

/** A page's size in points; null until it is known. The size before stays while the next page's is read. */
function usePageSize(pdf: PDFDocumentProxy, page: number) {
  const [size, setSize] = useState<{ widthPt: number; heightPt: number } | null>(null)
  useEffect(() => {
    let wanted = true
    void pdf.getPage(page).then(
      (loaded) => {
        const { width, height } = loaded.getViewport({ scale: 1 })
        if (wanted) setSize({ widthPt: width, heightPt: height })
      },
      () => undefined,
    )
    return () => {
      wanted = false
    }
  }, [pdf, page])
  return size
}
