import { type RefObject, useRef, useState } from 'react'
import type { Mark, PicturePoint } from '../../../app/evidence/markup.ts'
import { useMessages } from '../../ui/message.tsx'
import { drawnMark, type MarkHandle, movedMark, onPicture, withHandle } from './mark-edits.ts'
import type { CanvasPointerEvent } from './mark-canvas.tsx'
import type { MarkEditor } from './use-mark-editor.ts'

/** What the pointer is in the middle of. */
type Drag =
  | { readonly kind: 'draw'; readonly id: string; readonly path: PicturePoint[] }
  | { readonly kind: 'move'; readonly mark: Mark; readonly from: PicturePoint; readonly now: Mark }
  | { readonly kind: 'handle'; readonly mark: Mark; readonly key: MarkHandle['key']; readonly now: Mark }

/** Draws with the tool at hand, or moves and reshapes what is picked. Presses on the bare picture are left to it. */
export function useMarkPointer(editor: MarkEditor, svg: RefObject<SVGSVGElement | null>) {
  const drag = useRef<Drag | null>(null)
  const [coming, setComing] = useState<Mark | null>(null)
  const { say } = useMessages()
  const end = () => {
    const done = drag.current
    drag.current = null
    setComing(null)
    if (done === null) return
    if (done.kind !== 'draw') {
      if (done.now !== done.mark) editor.keep(done.now)
      return
    }
    finish(editor, done, (text) => say({ tone: 'note', text }))
  }
  return {
    coming,
    handlers: {
      onPointerDown(event: CanvasPointerEvent) {
        const at = placeOf(event, svg.current)
        if (at === null || event.button !== 0) return
        const begun = beginning(editor, event, at)
        if (begun === null) return editor.select(null)
        // The pane would move the picture with the same pointer.
        event.stopPropagation()
        svg.current?.setPointerCapture(event.pointerId)
        drag.current = begun
      },
      onPointerMove(event: CanvasPointerEvent) {
        const now = drag.current
        const at = placeOf(event, svg.current)
        if (now === null || at === null) return
        event.stopPropagation()
        if (now.kind === 'draw') {
          now.path.push(at)
          return setComing(drawn(editor, now))
        }
        const changed =
          now.kind === 'handle'
            ? withHandle(now.mark, now.key, at)
            : movedMark(now.mark, { x: at.xPx - now.from.xPx, y: at.yPx - now.from.yPx }, editor.picture)
        drag.current = { ...now, now: changed }
        if (editor.draft === null) editor.show(changed)
        else editor.setDraft(changed)
      },
      onPointerUp: end,
      onPointerCancel: end,
    },
  }
}

function beginning(editor: MarkEditor, event: CanvasPointerEvent, at: PicturePoint): Drag | null {
  const target = event.target instanceof Element ? event.target : null
  const key = target?.closest('[data-handle]')?.getAttribute('data-handle') ?? null
  const { selected } = editor
  if (selected !== null && (key === 'from' || key === 'to' || key === 'size'))
    return { kind: 'handle', mark: selected, key, now: selected }
  if (editor.tool !== 'pick') return { kind: 'draw', id: crypto.randomUUID(), path: [at] }
  const id = target?.closest('[data-mark-id]')?.getAttribute('data-mark-id') ?? null
  const mark = editor.draft?.id === id ? editor.draft : editor.marks.find((one) => one.id === id)
  if (mark === null || mark === undefined) return null
  if (mark.id !== selected?.id) editor.select(mark.id)
  return { kind: 'move', mark, from: at, now: mark }
}

function drawn(editor: MarkEditor, { id, path }: Extract<Drag, { kind: 'draw' }>): Mark | null {
  if (editor.tool === 'pick') return null
  return drawnMark({
    ...editor.style,
    id,
    kind: editor.tool,
    path,
    scaleId: lastScale(editor.marks),
    picture: editor.picture,
  })
}

function finish(editor: MarkEditor, done: Extract<Drag, { kind: 'draw' }>, say: (text: string) => void): void {
  const mark = drawn(editor, done)
  if (mark !== null) return placeMark(editor, mark)
  if (editor.tool === 'measure' && lastScale(editor.marks) === null)
    say('Draw a known length first, such as along a rule that lies in the picture.')
}

/** Keeps a new mark; one that still wants words or a length waits for them. */
export function placeMark(editor: MarkEditor, mark: Mark): void {
  if (mark.kind === 'text' || mark.kind === 'scale') editor.setDraft(mark)
  else editor.keep(mark)
}

/** The scale line drawn last, from which measured lines take their length. */
export function lastScale(marks: readonly Mark[]): string | null {
  return marks.findLast(({ kind }) => kind === 'scale')?.id ?? null
}

/** Where on the picture the pointer is, whatever zoom and turn. */
function placeOf(event: CanvasPointerEvent, svg: SVGSVGElement | null): PicturePoint | null {
  const toScreen = svg?.getScreenCTM() ?? null
  if (toScreen === null || svg === null) return null
  const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(toScreen.inverse())
  const { width, height } = svg.viewBox.baseVal
  return onPicture({ xPx: x, yPx: y }, { widthPx: width, heightPx: height })
}
