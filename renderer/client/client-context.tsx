import { createContext, type ReactNode, useContext } from 'react'
import type { DeskClient } from './desk-client.ts'

const ClientContext = createContext<DeskClient | null>(null)

/** Gives every screen below the desk it talks to. */
export function DeskProvider({ client, children }: { client: DeskClient; children: ReactNode }) {
  return <ClientContext value={client}>{children}</ClientContext>
}

/** The desk that this screen talks to. */
export function useDesk(): DeskClient {
  const client = useContext(ClientContext)
  if (client === null) throw new Error('useDesk is used outside a DeskProvider.')
  return client
}
