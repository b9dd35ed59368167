/** A size in pixels. */
export interface PixelSize {
  readonly width: number
  readonly height: number
}

/** How a picture is looked at: `zoom` 1 fits it in; the centre is a share of the picture, 0 to 1 from its top left. */
export interface PictureView {
  readonly zoom: number
  readonly centreX: number
  readonly centreY: number
}

/** The whole picture. */
export const WHOLE_PICTURE: PictureView = { zoom: 1, centreX: 0.5, centreY: 0.5 }

const MOST_ZOOM = 60

/** Screen pixels per picture pixel when the picture just fits. */
export function fittingScale(picture: PixelSize, frame: PixelSize): number {
  return Math.min(frame.width / picture.width, frame.height / picture.height)
}

/** The view that shows picture pixels one to one; the whole picture where it is smaller than the frame. */
export function fullSizeView(view: PictureView, picture: PixelSize, frame: PixelSize): PictureView {
  return held({ ...view, zoom: Math.max(1, 1 / fittingScale(picture, frame)) })
}

/** The view made larger or smaller by a factor about a place of the frame, given as pixels from the frame's middle. */
export function zoomedPicture(
  view: PictureView,
  factor: number,
  about: { readonly x: number; readonly y: number; readonly picture: PixelSize; readonly frame: PixelSize },
): PictureView {
  const zoom = Math.min(MOST_ZOOM, Math.max(1, view.zoom * factor))
  const scale = fittingScale(about.picture, about.frame)
  const shift = (px: number, length: number) => px / (length * scale) / view.zoom - px / (length * scale) / zoom
  return held({
    zoom,
    centreX: view.centreX + shift(about.x, about.picture.width),
    centreY: view.centreY + shift(about.y, about.picture.height),
  })
}

/** The view moved by a distance on the screen, pixels. */
export function pannedPicture(
  view: PictureView,
  by: { readonly x: number; readonly y: number },
  sizes: { readonly picture: PixelSize; readonly frame: PixelSize },
): PictureView {
  const scale = fittingScale(sizes.picture, sizes.frame) * view.zoom
  return held({
    ...view,
    centreX: view.centreX - by.x / (sizes.picture.width * scale),
    centreY: view.centreY - by.y / (sizes.picture.height * scale),
  })
}

/** The centre stays on the picture; the whole picture is always in the middle. */
function held(view: PictureView): PictureView {
  if (view.zoom <= 1) return WHOLE_PICTURE
  const share = (value: number) => Math.min(1, Math.max(0, value))
  return { zoom: view.zoom, centreX: share(view.centreX), centreY: share(view.centreY) }
}

/** A size after turning by quarter turns. */
export function turnedSize(size: PixelSize, quarterTurns: number): PixelSize {
  return quarterTurns % 2 === 0 ? size : { width: size.height, height: size.width }
}
