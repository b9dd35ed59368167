/** JPEG quality of a still: little is lost, and a frame of 4K stays under a few megabytes. */
const QUALITY = 0.95

/**
 * The frame that a player shows now, as a JPEG in base64, upright.
 *
 * @param size the frame's own size, pixels
 * @returns null where the browser can't make a picture of it
 */
export async function framePicture(
  video: HTMLVideoElement,
  size: { widthPx: number; heightPx: number },
): Promise<string | null> {
  const canvas = document.createElement('canvas')
  canvas.width = size.widthPx
  canvas.height = size.heightPx
  const pen = canvas.getContext('2d')
  if (pen === null) return null
  pen.drawImage(video, 0, 0, size.widthPx, size.heightPx)
  const jpeg = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/jpeg', QUALITY))
  return jpeg === null ? null : base64Of(jpeg)
}

function base64Of(blob: Blob): Promise<string | null> {
  return new Promise((resolve) => {
    const reader = new FileReader()
    reader.addEventListener('load', () => {
      const { result } = reader
      resolve(typeof result === 'string' ? result.slice(result.indexOf(',') + 1) : null)
    })
    reader.addEventListener('error', () => resolve(null))
    reader.readAsDataURL(blob)
  })
}
