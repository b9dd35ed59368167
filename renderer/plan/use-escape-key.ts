import { type RefObject, useEffect, useRef } from 'react'

/** Hears Escape inside an element also while somebody types there, when the keys of the desk rest. */
export function useEscapeKey(inside: RefObject<HTMLElement | null>, onEscape: () => void): void {
  const latest = useRef(onEscape)
  useEffect(() => {
    latest.current = onEscape
  })
  useEffect(() => {
    const element = inside.current
    if (element === null) return undefined
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.key !== 'Escape') return
      event.preventDefault()
      event.stopPropagation()
      latest.current()
    }
    element.addEventListener('keydown', onKeyDown)
    return () => element.removeEventListener('keydown', onKeyDown)
  }, [inside])
}
