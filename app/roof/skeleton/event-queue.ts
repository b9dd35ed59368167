/** Something that will happen at a height. */
export interface Timed {
  readonly heightFt: number
}

/** A queue that gives the lowest event first, and events of one height in the order in which they came: a binary heap. */
export class EventQueue<E extends Timed> {
  readonly #heap: { readonly event: E; readonly order: number }[] = []
  #count = 0

  push(event: E): void {
    const heap = this.#heap
    const added = { event, order: this.#count++ }
    let at = heap.length
    while (at > 0) {
      const parentAt = (at - 1) >> 1
      const parent = heap[parentAt]
      if (parent === undefined || !isBefore(added, parent)) break
      heap[at] = parent
      at = parentAt
    }
    heap[at] = added
  }

  pop(): E | undefined {
    const heap = this.#heap
    const first = heap[0]
    const last = heap.pop()
    if (first === undefined || last === undefined || heap.length === 0) return first?.event
    let at = 0
    for (;;) {
      const childAt = lowerChild(heap, at)
      const child = heap[childAt]
      if (child === undefined || !isBefore(child, last)) break
      heap[at] = child
      at = childAt
    }
    heap[at] = last
    return first.event
  }
}

interface Entry {
  readonly event: Timed
  readonly order: number
}

function lowerChild(heap: readonly Entry[], at: number): number {
  const left = 2 * at + 1
  const [a, b] = [heap[left], heap[left + 1]]
  return a !== undefined && b !== undefined && isBefore(b, a) ? left + 1 : left
}

function isBefore(a: Entry, b: Entry): boolean {
  return a.event.heightFt < b.event.heightFt || (a.event.heightFt === b.event.heightFt && a.order < b.order)
}
