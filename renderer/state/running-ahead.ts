/** One change that is shown before the desk has answered for it. */
export interface AheadChange {
  /** The desk made the change: what is fetched from now on holds it. */
  answered(): void
  /** The desk refused it. */
  refused(): void
}

/** Changes that are shown before they are made, laid over whatever the desk told last. */
export interface RunningAhead<T> {
  readonly add: (change: (value: T) => T) => AheadChange
  /**
   * To be asked when a fetch begins. What it returns is called when the fetch is back, and forgets the changes that were
   * answered before it began. A change answered later may be missing in what was fetched, and stays laid over it.
   */
  readonly beginFetch: () => () => void
  /** A value with all changes laid over it. */
  readonly over: (value: T) => T
  readonly isEmpty: () => boolean
}

/**
 * Keeps what runs ahead. Without it, an answer about an earlier change would take back on the screen a later one that is
 * still under way, and a key pressed in that moment would act on tags of a moment ago.
 */
export function runningAhead<T>(): RunningAhead<T> {
  const changes = new Set<{ readonly change: (value: T) => T; isAnswered: boolean }>()
  return {
    add(change) {
      const entry = { change, isAnswered: false }
      changes.add(entry)
      return { answered: () => void (entry.isAnswered = true), refused: () => void changes.delete(entry) }
    },
    beginFetch() {
      const held = [...changes].filter(({ isAnswered }) => isAnswered)
      return () => {
        for (const entry of held) changes.delete(entry)
      }
    },
    over: (value) => [...changes].reduce((after, { change }) => change(after), value),
    isEmpty: () => changes.size === 0,
  }
}
