/** The selected photos. */
export function PhotoDetails() {
  return null
}
