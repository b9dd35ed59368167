import { useCallback, useLayoutEffect, useRef } from 'react'

/**
 * Saves changes of single fields of one record. Fields can be left faster than the desk answers, so each change is laid
 * over those before it, whether they have come back or not.
 *
 * @param record as the desk last sent it
 * @param save saves the whole record; false when it was refused, and then the refused change is forgotten
 */
export function useRecordSave<Record>(
  record: Record,
  save: (record: Record) => Promise<boolean>,
): (change: Partial<Record>) => void {
  const sent = useRef(record)
  const latest = useRef(record)
  const underWay = useRef(0)
  useLayoutEffect(() => {
    sent.current = record
    if (underWay.current === 0) latest.current = record
  }, [record])
  return useCallback(
    (change) => {
      latest.current = { ...latest.current, ...change }
      underWay.current += 1
      void save(latest.current).then((isSaved) => {
        underWay.current -= 1
        if (!isSaved) latest.current = sent.current
      })
    },
    [save],
  )
}
