/** More different words than anyone says in a day; beyond it the memory starts anew. */
const MOST = 20_000

/** The same function of a text, worked out once for each text. */
export function remembered<T>(work: (text: string) => T): (text: string) => T {
  const known = new Map<string, T>()
  return (text) => {
    const before = known.get(text)
    if (before !== undefined) return before
    const value = work(text)
    if (known.size >= MOST) known.clear()
    known.set(text, value)
    return value
  }
}
