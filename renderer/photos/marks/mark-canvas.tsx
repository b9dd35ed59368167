import { type PointerEvent, useMemo, useRef } from 'react'
import { drawMarkup, LETTER_PART, type MarkShape } from '../../../app/evidence/markup-drawing.ts'
import type { Mark, PicturePoint } from '../../../app/evidence/markup.ts'
import { markWord } from '../../../app/evidence/markup/words.ts'
import { photoLabel } from '../../../app/evidence/photo.ts'
import { handlesOf, type MarkHandle } from './mark-edits.ts'
import { MarkShapes } from './mark-shapes.tsx'
import styles from './marks.module.css'
import { useMarkPointer } from './use-mark-pointer.ts'
import type { MarkEditor } from './use-mark-editor.ts'

interface MarkCanvasProps {
  readonly editor: MarkEditor
  /** Pixels of the screen for one of the picture. */
  readonly scale: number
}

const HANDLE_PX = 7

/** The marks over a large picture, to be drawn, picked, moved and reshaped. */
export function MarkCanvas({ editor, scale }: MarkCanvasProps) {
  const svg = useRef<SVGSVGElement>(null)
  const { picture, marks, draft, selected, tool } = editor
  const pointer = useMarkPointer(editor, svg)
  const all = useMemo(() => {
    const inSight = pointer.coming ?? draft
    return inSight === null ? marks : [...marks.filter(({ id }) => id !== inSight.id), inSight]
  }, [marks, draft, pointer.coming])
  const shapes = useMemo(() => drawMarkup(all, picture).shapes, [all, picture])
  return (
    <svg
      ref={svg}
      className={styles['canvas']}
      viewBox={`0 0 ${picture.widthPx} ${picture.heightPx}`}
      preserveAspectRatio="none"
      role="group"
      aria-label={`Marks on ${photoLabel(editor.photo.number)}`}
      data-drawing={tool !== 'pick'}
      {...pointer.handlers}
    >
      {all.map((mark) => (
        <OneMark
          key={mark.id}
          mark={mark}
          shapes={shapes}
          isSelected={mark.id === selected?.id}
          onFocus={() => {
            if (mark.id !== selected?.id) editor.select(mark.id)
          }}
        />
      ))}
      {selected === null ? null : (
        <Frame shapes={shapes} handles={handlesOf(selected)} markId={selected.id} handlePx={HANDLE_PX / scale} />
      )}
    </svg>
  )
}

interface OneMarkProps {
  readonly mark: Mark
  readonly shapes: readonly MarkShape[]
  readonly isSelected: boolean
  readonly onFocus: () => void
}

function OneMark({ mark, shapes, isSelected, onFocus }: OneMarkProps) {
  const own = useMemo(() => shapes.filter(({ markId }) => markId === mark.id), [shapes, mark.id])
  const said = mark.kind === 'text' ? `text “${mark.text}”` : markWord(mark.kind)
  return (
    <g
      className={styles['mark']}
      data-mark-id={mark.id}
      role="button"
      tabIndex={0}
      aria-label={said.charAt(0).toUpperCase() + said.slice(1)}
      aria-pressed={isSelected}
      onFocus={onFocus}
      pointerEvents={mark.kind === 'text' ? 'bounding-box' : undefined}
    >
      {mark.kind === 'obscured' ? (
        <rect
          className={styles['hidden']}
          x={mark.corner.xPx}
          y={mark.corner.yPx}
          width={mark.widthPx}
          height={mark.heightPx}
        />
      ) : null}
      <MarkShapes shapes={own} />
      {own.map((shape, index) => (shape.kind === 'path' ? <HitLine key={index} points={shape.points} /> : null))}
    </g>
  )
}

/** A wide line that can't be seen makes a thin one easy to hit. */
function HitLine({ points }: { points: readonly PicturePoint[] }) {
  return (
    <polyline
      className={styles['hit']}
      points={points.map(({ xPx, yPx }) => `${xPx},${yPx}`).join(' ')}
      fill="none"
      strokeWidth={16}
      vectorEffect="non-scaling-stroke"
      pointerEvents="stroke"
    />
  )
}

interface FrameProps {
  readonly shapes: readonly MarkShape[]
  readonly handles: readonly MarkHandle[]
  readonly markId: string
  readonly handlePx: number
}

function Frame({ shapes, handles, markId, handlePx }: FrameProps) {
  const box = boundsOf(shapes.filter((shape) => shape.markId === markId))
  if (box === null) return null
  const rect = {
    x: box.left - handlePx,
    y: box.top - handlePx,
    width: box.right - box.left + 2 * handlePx,
    height: box.bottom - box.top + 2 * handlePx,
    pointerEvents: 'none',
  } as const
  return (
    <>
      <rect className={styles['frame']} {...rect} />
      <rect className={styles['frameInk']} {...rect} />
      {handles.map(({ key, at }) => (
        <circle key={key} className={styles['handle']} data-handle={key} cx={at.xPx} cy={at.yPx} r={handlePx} />
      ))}
    </>
  )
}

function boundsOf(shapes: readonly MarkShape[]) {
  const points = shapes.flatMap((shape): readonly PicturePoint[] => {
    if (shape.kind === 'path') return shape.points
    const { at, align, text, sizePx } = shape
    const width = text.length * sizePx * LETTER_PART
    const left = align === 'start' ? at.xPx : at.xPx - width / 2
    return [
      { xPx: left, yPx: at.yPx - sizePx * 0.75 },
      { xPx: left + width, yPx: at.yPx + sizePx * 0.2 },
    ]
  })
  if (points.length === 0) return null
  const xs = points.map(({ xPx }) => xPx)
  const ys = points.map(({ yPx }) => yPx)
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) }
}

export type CanvasPointerEvent = PointerEvent<SVGSVGElement>
