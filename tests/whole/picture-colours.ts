import type { Locator } from 'playwright-core'

/** How a picture stands as it is shown: whether it is taller than wide, and what colour its upper and lower parts are. */
export interface Stand {
  readonly isTall: boolean
  readonly top: 'red' | 'blue' | 'other'
  readonly foot: 'red' | 'blue' | 'other'
}

/** Looks at the pixels of a picture on the page. */
export function standOf(picture: Locator): Promise<Stand> {
  return picture.evaluate(async (image): Promise<Stand> => {
    if (!(image instanceof HTMLImageElement)) throw new Error('This is no picture.')
    await image.decode()
    const { naturalWidth: width, naturalHeight: height } = image
    const canvas = document.createElement('canvas')
    canvas.width = width
    canvas.height = height
    const context = canvas.getContext('2d', { willReadFrequently: true })
    context?.drawImage(image, 0, 0)
    const colourAt = (share: number) => {
      const [red = 0, , blue = 0] = context?.getImageData(width / 2, Math.floor(height * share), 1, 1).data ?? []
      return red > 150 && blue < 100 ? 'red' : blue > 150 && red < 100 ? 'blue' : 'other'
    }
    return { isTall: height > width, top: colourAt(0.1), foot: colourAt(0.9) }
  })
}
