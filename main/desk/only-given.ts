/** A field that is there but undefined, as the window's channel can carry it, is not a change. */
export function onlyGiven<T extends object>(patch: T): Partial<T> {
  const given: Partial<T> = { ...patch }
  for (const key in given) if (given[key] === undefined) delete given[key]
  return given
}
