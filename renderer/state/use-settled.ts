import { useEffect, useRef, useState } from 'react'

/** A value that changes at most once in `everyMs`, for what costs more than it helps while a hand moves. The last value always arrives. */
export function useSettled<T>(value: T, everyMs: number): T {
  const [settled, setSettled] = useState(value)
  const latest = useRef(value)
  const timer = useRef<ReturnType<typeof setTimeout> | null>(null)
  useEffect(() => {
    latest.current = value
    if (Object.is(value, settled)) return
    timer.current ??= setTimeout(() => {
      timer.current = null
      setSettled(latest.current)
    }, everyMs)
  }, [value, settled, everyMs])
  useEffect(
    () => () => {
      if (timer.current !== null) clearTimeout(timer.current)
      timer.current = null
    },
    [],
  )
  return settled
}
