import { useEffect } from 'react'

/** Does something once when the page has nothing else to do; null while it is too early. `perform` must stay the same. */
export function useWhenIdle(perform: (() => void) | null): void {
  useEffect(() => {
    if (perform === null) return undefined
    const asked = requestIdleCallback(perform, { timeout: 2000 })
    return () => cancelIdleCallback(asked)
  }, [perform])
}
