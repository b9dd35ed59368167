/**
 * Makes a function that never runs twice at once. Calls made while it runs are answered by one run after it, which
 * starts after the last of them, so nobody gets an answer older than their question.
 */
export function coalesced(run: () => Promise<void>): () => Promise<void> {
  let running: Promise<void> | null = null
  let next: Promise<void> | null = null
  function start(): Promise<void> {
    const current = run().finally(() => {
      if (running === current) running = null
    })
    running = current
    return current
  }
  return () => {
    if (next !== null) return next
    if (running === null) return start()
    next = running.then(
      () => again(),
      () => again(),
    )
    return next
  }
  function again(): Promise<void> {
    next = null
    return start()
  }
}
