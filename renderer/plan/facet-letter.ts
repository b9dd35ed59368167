/** The next free facet letter: A to Z, then AA, AB and so on. Gaps are filled, so that a removed letter comes back first. */
export function nextFacetLetter(taken: readonly string[]): string {
  const used = new Set(taken.map((letter) => letter.toUpperCase()))
  for (let place = 0; ; place += 1) {
    const letter = letterAt(place)
    if (!used.has(letter)) return letter
  }
}

function letterAt(place: number): string {
  const last = String.fromCharCode(65 + (place % 26))
  const before = Math.floor(place / 26)
  return before === 0 ? last : letterAt(before - 1) + last
}
