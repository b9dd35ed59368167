import { createContext, type ReactNode, useContext, useMemo, useState } from 'react'
import { KeysHelp } from './keys-help.tsx'
import { OperatorQuestion } from './operator-question.tsx'

interface DeskServices {
  showKeys(): void
  askOperator(): void
}

const ServicesContext = createContext<DeskServices | null>(null)

/** The dialogs that any screen can open: the list of keys, and who works here. */
export function DeskServicesProvider({ children }: { children: ReactNode }) {
  const [keysOpen, setKeysOpen] = useState(false)
  const [asked, setAsked] = useState(false)
  const services = useMemo(() => ({ showKeys: () => setKeysOpen(true), askOperator: () => setAsked(true) }), [])
  return (
    <ServicesContext value={services}>
      {children}
      <OperatorQuestion isOpen={asked} onClose={() => setAsked(false)} />
      <KeysHelp isOpen={keysOpen} onOpenChange={setKeysOpen} />
    </ServicesContext>
  )
}

/** Ways to open the dialogs that belong to the whole desk. */
export function useDeskServices(): DeskServices {
  const services = useContext(ServicesContext)
  if (services === null) throw new Error('useDeskServices is used outside a DeskServicesProvider.')
  return services
}
