import { createContext, type ReactNode, useCallback, useContext, useEffect, useMemo, useState } from 'react'
import type { CallOutput } from '../../app/contract/contract.ts'
import { useDesk } from '../client/client-context.tsx'
import { useMessages } from '../ui/message.tsx'

type LibraryInfo = CallOutput<'library.info'>

interface Library {
  /** Null until the desk has answered. */
  readonly info: LibraryInfo | null
  /** Says who works here; true when the desk took the name. */
  setOperator(name: string): Promise<boolean>
}

const LibraryContext = createContext<Library | null>(null)

/** Holds what is known of the open library. */
export function LibraryProvider({ children }: { children: ReactNode }) {
  const desk = useDesk()
  const { say } = useMessages()
  const [info, setInfo] = useState<LibraryInfo | null>(null)
  const refresh = useCallback(async () => {
    const reply = await desk.call('library.info', {})
    if (reply.ok) setInfo(reply.value)
    else say({ tone: 'error', text: reply.error.message, help: reply.error.help })
  }, [desk, say])
  useEffect(() => {
    void refresh()
  }, [refresh])
  const setOperator = useCallback(
    async (operator: string) => {
      const reply = await desk.call('library.set-operator', { operator })
      if (!reply.ok) {
        say({ tone: 'error', text: reply.error.message, help: reply.error.help })
        return false
      }
      await refresh()
      return true
    },
    [desk, refresh, say],
  )
  const library = useMemo(() => ({ info, setOperator }), [info, setOperator])
  return <LibraryContext value={library}>{children}</LibraryContext>
}

/** The open library. */
export function useLibrary(): Library {
  const library = useContext(LibraryContext)
  if (library === null) throw new Error('useLibrary is used outside a LibraryProvider.')
  return library
}
