import { useCallback, useState } from 'react'

/** A yes or no that this machine remembers from start to start; no until it is set. */
export function useStoredFlag(key: string): readonly [boolean, (value: boolean) => void] {
  const [flag, setFlag] = useState(() => localStorage.getItem(key) === 'yes')
  const set = useCallback(
    (value: boolean) => {
      if (value) localStorage.setItem(key, 'yes')
      else localStorage.removeItem(key)
      setFlag(value)
    },
    [key],
  )
  return [flag, set]
}
