/** The photos of the job. */
export function PhotosWorkspace() {
  return null
}
