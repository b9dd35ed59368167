import { type RefObject, useEffect } from 'react'
import { useSearch } from 'wouter'
import { useHistoryState } from 'wouter/use-browser-location'
import { readTarget } from '../frame/addresses.ts'

/** Brings the field that the address names into view and puts the cursor there. */
export function useFieldJump(place: RefObject<HTMLElement | null>): void {
  const target = readTarget(useSearch())
  const field = target?.kind === 'field' ? target.id : null
  // Each jump has its own state, so that going to the same field again shows it again.
  const jump = useHistoryState<unknown>()
  useEffect(() => {
    if (field === null || place.current === null) return
    const found = nearestField(place.current, field)
    if (found === null) return
    found.scrollIntoView({ block: 'center' })
    const control = found.matches('input, textarea') ? found : found.querySelector('input, textarea, button')
    if (control instanceof HTMLElement) control.focus({ preventScroll: true })
  }, [field, jump, place])
}

/** The field itself, or the nearest one above it: `permits.2.date`, then `permits.2`, then `permits`. */
function nearestField(place: HTMLElement, field: string): HTMLElement | null {
  const parts = field.split('.')
  for (let length = parts.length; length > 0; length -= 1) {
    const path = CSS.escape(parts.slice(0, length).join('.'))
    const found = place.querySelector(`[data-field="${path}"], input[name="${path}"], textarea[name="${path}"]`)
    if (found instanceof HTMLElement) return found
  }
  return null
}
