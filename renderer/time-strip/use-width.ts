import { type RefObject, useEffect, useState } from 'react'

/** Width of an element in pixels, kept up to date; 0 until it is known. */
export function useWidth(element: RefObject<HTMLElement | null>): number {
  const [widthPx, setWidthPx] = useState(0)
  useEffect(() => {
    const { current } = element
    if (current === null) return undefined
    const watcher = new ResizeObserver(([entry]) => {
      if (entry !== undefined) setWidthPx(Math.floor(entry.contentRect.width))
    })
    watcher.observe(current)
    return () => watcher.disconnect()
  }, [element])
  return widthPx
}
