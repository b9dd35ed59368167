/** An identity for a line of the survey made just now. */
export function newLineId(): string {
  return crypto.randomUUID()
}
