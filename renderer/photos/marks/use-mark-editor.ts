import { useEffect, useRef, useState } from 'react'
import { type Mark, marksSchema, withoutMark } from '../../../app/evidence/markup.ts'
import type { Photo } from '../../../app/evidence/photo.ts'
import { useEdit } from '../../state/job-state.tsx'
import { useMessages } from '../../ui/message.tsx'
import { type MarkStyle, type PictureSize, withMark } from './mark-edits.ts'
import type { MarkTool } from './mark-tools.ts'
import { useMarks } from './use-markup.ts'

/** Small moves by key are saved together once the keys rest, as one step of undo. */
const REST_MS = 600

/** The marks of one photo while they are worked on. */
export interface MarkEditor {
  readonly photo: Photo
  readonly picture: PictureSize
  /** The marks as they look now, moves that are not saved yet among them. */
  readonly marks: readonly Mark[]
  /** A new mark that waits for its words or its length; it is not saved yet. */
  readonly draft: Mark | null
  readonly tool: MarkTool
  readonly selected: Mark | null
  readonly style: MarkStyle
  setTool(tool: MarkTool): void
  setStyle(style: MarkStyle): void
  select(id: string | null): void
  setDraft(mark: Mark | null): void
  /** Shows a mark as it would be, while it is dragged. */
  show(mark: Mark): void
  /** Saves a mark, new or changed. */
  keep(mark: Mark): void
  /** Changes a mark now and saves it once the keys rest. */
  nudge(mark: Mark): void
  remove(id: string): void
  /** Saves all marks as given, such as in another order. */
  save(marks: readonly Mark[]): void
}

/** Works on the marks of a photo; every change that is kept is one edit of the job. */
export function useMarkEditor(photo: Photo, picture: PictureSize): MarkEditor {
  const saved = useMarks(photo)
  const [local, setLocal] = useState<readonly Mark[] | null>(null)
  const [tool, setTool] = useState<MarkTool>('arrow')
  const [selectedId, select] = useState<string | null>(null)
  const [draft, setDraft] = useState<Mark | null>(null)
  const [style, setStyle] = useState<MarkStyle>({ colour: 'vermilion', weight: 'normal' })
  const marks = local ?? saved
  const save = useSaving(photo, setLocal)
  const later = useLater(save)
  const saveNow = (next: readonly Mark[]) => {
    // Small moves that still rest are a step of undo of their own.
    later.now()
    void save(next)
  }
  return {
    photo,
    picture,
    marks,
    draft,
    tool,
    selected: draft ?? marks.find(({ id }) => id === selectedId) ?? null,
    style,
    setTool(next) {
      setTool(next)
      setDraft(null)
      if (next !== 'pick') select(null)
    },
    setStyle,
    select(id) {
      later.now()
      setDraft(null)
      select(id)
    },
    setDraft,
    show: (mark) => setLocal(withMark(marks, mark)),
    keep(mark) {
      const isNew = !marks.some(({ id }) => id === mark.id)
      setDraft(null)
      select(mark.id)
      if (isNew) setTool('pick')
      saveNow(isNew ? [...marks, mark] : withMark(marks, mark))
    },
    nudge(mark) {
      const next = withMark(marks, mark)
      setLocal(next)
      later.soon(next)
    },
    remove(id) {
      setDraft(null)
      select(null)
      if (marks.some((mark) => mark.id === id)) saveNow(withoutMark(marks, id))
    },
    save: saveNow,
  }
}

function useSaving(photo: Photo, setLocal: (marks: readonly Mark[] | null) => void) {
  const edit = useEdit()
  const { say } = useMessages()
  const newest = useRef(0)
  const turn = useRef<Promise<unknown>>(Promise.resolve())
  return async (next: readonly Mark[]): Promise<void> => {
    const checked = marksSchema.safeParse(next)
    if (!checked.success) {
      setLocal(null)
      say({ tone: 'error', text: checked.error.issues[0]?.message ?? 'These marks can’t be kept.' })
      return
    }
    const mine = (newest.current += 1)
    setLocal(next)
    // One after the other: two saves on their way at once could arrive in either order.
    turn.current = turn.current.then(() => edit('marks.save', { photoId: photo.id, marks: checked.data }))
    await turn.current
    // What was changed meanwhile is shown until it is saved itself.
    if (mine === newest.current) setLocal(null)
  }
}

interface Later {
  soon(marks: readonly Mark[]): void
  now(): void
}

function useLater(save: (marks: readonly Mark[]) => Promise<void>): Later {
  const waiting = useRef<{ marks: readonly Mark[]; timer: ReturnType<typeof setTimeout> } | null>(null)
  const latest = useRef(save)
  useEffect(() => {
    latest.current = save
  })
  const forget = () => {
    if (waiting.current !== null) clearTimeout(waiting.current.timer)
    waiting.current = null
  }
  const now = () => {
    const due = waiting.current
    forget()
    if (due !== null) void latest.current(due.marks)
  }
  const flush = useRef(now)
  useEffect(() => () => flush.current(), [])
  return {
    now,
    soon(marks) {
      forget()
      waiting.current = { marks, timer: setTimeout(now, REST_MS) }
    },
  }
}
