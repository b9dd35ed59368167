import {
  type CSSProperties,
  type PointerEvent,
  type ReactNode,
  type RefObject,
  useEffect,
  useLayoutEffect,
  useRef,
  useState,
} from 'react'
import { photoLabel, type Photo } from '../../app/evidence/photo.ts'
import { PanePicture } from './pane-picture.tsx'
import { whyNoPicture } from './photo-thumb.tsx'
import styles from './photo-viewer.module.css'
import {
  fittingScale,
  pannedPicture,
  type PictureView,
  type PixelSize,
  turnedSize,
  zoomedPicture,
} from './picture-view.ts'

/** Pictures are shown from their preview until they are magnified beyond its pixels by this much. */
const PREVIEW_ENOUGH = 1.1
const PREVIEW_LONG_EDGE_PX = 1600

export interface PicturePaneProps {
  readonly photo: Photo
  readonly view: PictureView
  readonly onView: (change: (before: PictureView) => PictureView) => void
  readonly quarterTurns: number
  /** Told how large picture and frame are, for showing pixels one to one. */
  readonly onSizes: (sizes: { picture: PixelSize; frame: PixelSize }) => void
  /** Lies over the picture in place of its marks; told how many pixels of the screen one of the picture is. */
  readonly over?: (scale: number) => ReactNode
}

/** One photo, as large as the pane allows or magnified; dragged by the pointer, zoomed by the wheel. */
export function PicturePane({ photo, view, onView, quarterTurns, onSizes, over }: PicturePaneProps) {
  const pane = useRef<HTMLDivElement>(null)
  const frame = useSize(pane)
  const [natural, setNatural] = useState<PixelSize | null>(null)
  const upright = sizeOf(photo) ?? natural
  const picture = upright === null ? null : turnedSize(upright, quarterTurns)
  const sizes = picture === null || frame.width === 0 ? null : { picture, frame }
  useEffect(() => {
    if (sizes !== null) onSizes(sizes)
  })
  useWheel(pane, { sizes, onView })
  const drag = useDrag(sizes, onView)
  if (photo.preview === 'none') {
    return (
      <div className={styles['pane']}>
        <p className={styles['none']}>
          <strong>{photoLabel(photo.number)} has no picture to show.</strong> {whyNoPicture(photo)}
        </p>
      </div>
    )
  }
  const scale = sizes === null ? 0 : fittingScale(sizes.picture, sizes.frame) * view.zoom
  const wantsOriginal = upright !== null && isBeyondPreview(upright, scale)
  return (
    <div ref={pane} className={styles['pane']} data-zoomed={view.zoom > 1} {...drag}>
      <div style={placed({ sizes, upright, view, quarterTurns })} className={styles['placed']}>
        <PanePicture
          photo={photo}
          wantsOriginal={wantsOriginal}
          over={over === undefined || scale === 0 ? null : over(scale)}
          onNatural={setNatural}
        />
      </div>
    </div>
  )
}

function sizeOf({ file }: Photo): PixelSize | null {
  return file.widthPx === null || file.heightPx === null ? null : { width: file.widthPx, height: file.heightPx }
}

function isBeyondPreview(picture: PixelSize, scale: number): boolean {
  const longEdge = Math.max(picture.width, picture.height)
  return longEdge * scale * window.devicePixelRatio > Math.min(longEdge, PREVIEW_LONG_EDGE_PX) * PREVIEW_ENOUGH
}

interface Placing {
  readonly sizes: { picture: PixelSize; frame: PixelSize } | null
  readonly upright: PixelSize | null
  readonly view: PictureView
  readonly quarterTurns: number
}

function placed({ sizes, upright, view, quarterTurns }: Placing): CSSProperties {
  if (sizes === null || upright === null) return { visibility: 'hidden' }
  const scale = fittingScale(sizes.picture, sizes.frame) * view.zoom
  const x = (0.5 - view.centreX) * sizes.picture.width * scale
  const y = (0.5 - view.centreY) * sizes.picture.height * scale
  return {
    width: upright.width * scale,
    height: upright.height * scale,
    transform: `translate(-50%, -50%) translate(${x}px, ${y}px) rotate(${quarterTurns * 90}deg)`,
  }
}

function useSize(element: RefObject<HTMLElement | null>): PixelSize {
  const [size, setSize] = useState<PixelSize>({ width: 0, height: 0 })
  useLayoutEffect(() => {
    const watched = element.current
    if (watched === null) return undefined
    const watcher = new ResizeObserver(() => setSize({ width: watched.clientWidth, height: watched.clientHeight }))
    watcher.observe(watched)
    return () => watcher.disconnect()
  }, [element])
  return size
}

interface Zooming {
  readonly sizes: { picture: PixelSize; frame: PixelSize } | null
  readonly onView: PicturePaneProps['onView']
}

function useWheel(pane: RefObject<HTMLDivElement | null>, zooming: Zooming): void {
  const latest = useRef(zooming)
  useLayoutEffect(() => {
    latest.current = zooming
  })
  useEffect(() => {
    const element = pane.current
    if (element === null) return undefined
    const onWheel = (event: WheelEvent) => {
      event.preventDefault()
      const { sizes, onView } = latest.current
      if (sizes === null) return
      const box = element.getBoundingClientRect()
      const about = {
        x: event.clientX - box.left - box.width / 2,
        y: event.clientY - box.top - box.height / 2,
        ...sizes,
      }
      const factor = Math.exp(-event.deltaY * (event.ctrlKey ? 0.01 : 0.002))
      onView((before) => zoomedPicture(before, factor, about))
    }
    element.addEventListener('wheel', onWheel, { passive: false })
    return () => element.removeEventListener('wheel', onWheel)
  }, [pane])
}

function useDrag(sizes: Zooming['sizes'], onView: Zooming['onView']) {
  const last = useRef<{ x: number; y: number } | null>(null)
  return {
    onPointerDown(event: PointerEvent<HTMLElement>) {
      event.currentTarget.setPointerCapture(event.pointerId)
      last.current = { x: event.clientX, y: event.clientY }
    },
    onPointerMove(event: PointerEvent<HTMLElement>) {
      if (last.current === null || sizes === null) return
      const by = { x: event.clientX - last.current.x, y: event.clientY - last.current.y }
      last.current = { x: event.clientX, y: event.clientY }
      onView((before) => pannedPicture(before, by, sizes))
    },
    onPointerUp() {
      last.current = null
    },
  }
}
