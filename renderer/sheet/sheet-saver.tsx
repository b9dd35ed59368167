import { createContext, type ReactNode, useCallback, useContext, useEffect, useRef } from 'react'
import type { JobSheet } from '../../app/job/sheet.ts'
import { useEdit, useJob } from '../state/job-state.tsx'
import type { SectionKey } from './section-draft.ts'

type SaveSection = <Key extends SectionKey>(key: Key, value: JobSheet[Key]) => Promise<boolean>

const SaverContext = createContext<SaveSection | null>(null)

/** Saves sections one after another, each on top of the last, so that two saves at once never undo each other. */
export function SheetSaver({ children }: { children: ReactNode }) {
  const edit = useEdit()
  const { job } = useJob()
  const latest = useRef(job.sheet)
  const queue = useRef<Promise<unknown>>(Promise.resolve())
  useEffect(() => {
    latest.current = job.sheet
  }, [job.sheet])
  const save = useCallback<SaveSection>(
    (key, value) => {
      const saved = queue.current.then(async () => {
        const sheet = { ...latest.current, [key]: value }
        const done = await edit('sheet.save', { sheet })
        if (done !== null) latest.current = sheet
        return done !== null
      })
      queue.current = saved
      return saved
    },
    [edit],
  )
  return <SaverContext value={save}>{children}</SaverContext>
}

/** The way to save one section of the sheet as one step of undo; true when it was saved. */
export function useSaveSection(): SaveSection {
  const save = useContext(SaverContext)
  if (save === null) throw new Error('useSaveSection is used outside a SheetSaver.')
  return save
}
