import { openPicture } from './quiet-sharp.ts'

/**
 * Mean brightness of a picture, 0 black to 1 white, of its grey values as they are stored; null where the file can't be
 * read.
 */
export async function brightnessOf(path: string): Promise<number | null> {
  try {
    const { channels } = await openPicture(path, { failOn: 'none', ignoreIcc: true }).greyscale().stats()
    const [grey] = channels
    return grey === undefined ? null : Math.min(Math.max(grey.mean / 255, 0), 1)
  } catch {
    return null
  }
}
