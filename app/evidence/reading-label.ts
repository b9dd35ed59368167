/** "R-4": how people name a reading. */
export function readingLabel(number: number): string {
  return `R-${number}`
}
