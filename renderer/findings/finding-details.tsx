/** The selected finding. */
export function FindingDetails() {
  return null
}
