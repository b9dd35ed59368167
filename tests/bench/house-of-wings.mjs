/**
 * A long house with wings of different width and depth on both sides: four edges a wing.
 *
 * @param {number} edges about how many edges
 * @param {() => number} random numbers from 0 to 1
 * @returns {{ xFt: number, yFt: number }[]} corners, counter-clockwise
 */
export function houseOfWings(edges, random) {
  const perSide = Math.floor((edges - 4) / 8)
  const side = () => {
    let x = 0
    const line = []
    for (let wing = 0; wing < perSide; wing++) {
      x += 6 + random() * 10
      const [wide, out] = [12 + random() * 16, 4 + random() * 24]
      line.push([x, 0], [x, out], [x + wide, out], [x + wide, 0])
      x += wide
    }
    return { line, length: x + 8 }
  }
  const [front, back] = [side(), side()]
  const length = Math.max(front.length, back.length)
  const corner = (xFt, yFt) => ({ xFt, yFt })
  return [
    corner(0, 0),
    ...front.line.map(([x, out]) => corner(x, -out)),
    corner(length, 0),
    corner(length, 40),
    ...back.line.map(([x, out]) => corner(x, 40 + out)).toReversed(),
    corner(0, 40),
  ]
}

/** Numbers from 0 to 1 that come again with the same seed (mulberry32, public domain). */
export function numbersFrom(start) {
  let state = start | 0
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
}
