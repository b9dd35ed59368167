import type { PDFDocumentProxy, RenderTask } from 'pdfjs-dist'
import { type RefObject, useEffect, useRef } from 'react'
import styles from './packet.module.css'

interface PageViewProps {
  readonly pdf: PDFDocumentProxy
  /** 1 for the first. */
  readonly page: number
  /** CSS pixels per point of the page. */
  readonly scale: number
}

/** One page of the PDF, drawn sharp for the screen. */
export function PageView({ pdf, page, scale }: PageViewProps) {
  const canvas = useRef<HTMLCanvasElement>(null)
  useEffect(() => {
    const drawing = drawPage({ pdf, page, scale, canvas })
    return () => drawing.cancel()
  }, [pdf, page, scale])
  return <canvas ref={canvas} className={styles['page']} role="img" aria-label={`Page ${page} of ${pdf.numPages}`} />
}

interface Drawing extends PageViewProps {
  readonly canvas: RefObject<HTMLCanvasElement | null>
}

/** Draws beside the screen first: the page on show stays until the next one is whole. */
function drawPage({ pdf, page, scale, canvas }: Drawing): { cancel(): void } {
  let wanted = true
  let task: RenderTask | null = null
  async function draw() {
    const loaded = await pdf.getPage(page)
    const viewport = loaded.getViewport({ scale: scale * devicePixelRatio })
    const beside = document.createElement('canvas')
    beside.width = Math.floor(viewport.width)
    beside.height = Math.floor(viewport.height)
    if (!wanted) return
    task = loaded.render({ canvas: beside, viewport })
    await task.promise
    const place = canvas.current
    if (!wanted || place === null) return
    place.width = beside.width
    place.height = beside.height
    place.style.width = `${beside.width / devicePixelRatio}px`
    place.style.height = `${beside.height / devicePixelRatio}px`
    place.getContext('2d')?.drawImage(beside, 0, 0)
  }
  draw().catch((cause: unknown) => {
    // A page that is turned before it is drawn ends this way, and so does one of a draft that was replaced.
    if (wanted) console.error('A page could not be drawn.', cause)
  })
  return {
    cancel() {
      wanted = false
      task?.cancel()
    },
  }
}
