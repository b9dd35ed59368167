/** How items are worked on, and where the results go. */
export interface Crew<Item, Result> {
  /** How many items are worked on at a time. */
  readonly width: number
  /** How far work may run ahead of the first item that isn't finished; bounds what is held in memory. */
  readonly ahead: number
  readonly signal: AbortSignal
  readonly work: (item: Item) => Promise<Result>
  /** Gets the results in the order of the items, one call at a time. */
  readonly deliver: (results: readonly Result[]) => Promise<void>
  /** Gets every result that can't be delivered any more, after a failure. */
  readonly discard: (result: Result) => Promise<void>
}

/**
 * Works on items several at a time and delivers the results in the order of the items. Once the signal says stop, nothing
 * new is begun and what was begun is delivered. Once anything fails, nothing more is begun or delivered.
 *
 * @throws whatever `work` or `deliver` threw first
 */
export async function inOrder<Item, Result>(items: readonly Item[], crew: Crew<Item, Result>): Promise<void> {
  const queue = items.entries()
  const finished = new Map<number, { readonly result: Result }>()
  const failures: unknown[] = []
  const waiting: (() => void)[] = []
  let begun = 0
  let delivered = 0
  let delivery = Promise.resolve()
  const deliverReady = async () => {
    if (failures.length > 0) return
    const ready: Result[] = []
    for (let box = finished.get(delivered); box !== undefined; box = finished.get(delivered + ready.length)) {
      finished.delete(delivered + ready.length)
      ready.push(box.result)
    }
    if (ready.length === 0) return
    await crew.deliver(ready)
    delivered += ready.length
  }
  const member = async () => {
    while (failures.length === 0 && !crew.signal.aborted) {
      if (begun - delivered >= crew.ahead) {
        await new Promise<void>((resolve) => waiting.push(resolve))
        continue
      }
      const next = queue.next()
      if (next.done === true) return
      begun += 1
      const [at, item] = next.value
      try {
        finished.set(at, { result: await crew.work(item) })
        await (delivery = delivery.then(deliverReady))
      } catch (cause) {
        failures.push(cause)
      } finally {
        for (const goOn of waiting.splice(0)) goOn()
      }
    }
  }
  await Promise.all(Array.from({ length: crew.width }, member))
  if (failures.length === 0) return
  for (const { result } of finished.values()) await crew.discard(result)
  throw failures[0]
}
