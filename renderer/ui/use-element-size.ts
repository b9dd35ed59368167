import { type RefObject, useEffect, useState } from 'react'

/** Inner size of an element in pixels, kept up to date; zero until it is known. */
export function useElementSize(element: RefObject<HTMLElement | null>): {
  readonly widthPx: number
  readonly heightPx: number
} {
  const [size, setSize] = useState({ widthPx: 0, heightPx: 0 })
  useEffect(() => {
    const { current } = element
    if (current === null) return undefined
    const watcher = new ResizeObserver(([entry]) => {
      if (entry === undefined) return
      setSize({ widthPx: Math.floor(entry.contentRect.width), heightPx: Math.floor(entry.contentRect.height) })
    })
    watcher.observe(current)
    return () => watcher.disconnect()
  }, [element])
  return size
}
