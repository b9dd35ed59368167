import { describe, expect, it } from 'vitest'
import { fittingScale, fullSizeView, pannedPicture, turnedSize, WHOLE_PICTURE, zoomedPicture } from './picture-view.ts'

const picture = { width: 4000, height: 3000 }
const frame = { width: 800, height: 800 }

describe('looking at a picture', () => {
  it('fits its longer side', () => {
    expect(fittingScale(picture, frame)).toBe(0.2)
  })

  it('shows pixels one to one', () => {
    expect(fullSizeView(WHOLE_PICTURE, picture, frame).zoom).toBe(5)
    expect(fullSizeView(WHOLE_PICTURE, { width: 100, height: 50 }, frame)).toEqual(WHOLE_PICTURE)
  })

  it('keeps the place under the pointer while zooming', () => {
    const about = { x: 200, y: 0, picture, frame }
    const zoomed = zoomedPicture(WHOLE_PICTURE, 2, about)
    // 200 px right of the middle is 0.25 of the fitted width (800 px): there before and after.
    const before = WHOLE_PICTURE.centreX + 200 / 800
    const after = zoomed.centreX + 200 / (800 * zoomed.zoom)
    expect(zoomed.zoom).toBe(2)
    expect(after).toBeCloseTo(before, 9)
  })

  it('comes back to the whole picture and goes no smaller', () => {
    const zoomed = zoomedPicture(WHOLE_PICTURE, 3, { x: 300, y: -100, picture, frame })
    expect(zoomedPicture(zoomed, 0.01, { x: 0, y: 0, picture, frame })).toEqual(WHOLE_PICTURE)
  })

  it('follows the hand and stays on the picture', () => {
    const view = { zoom: 5, centreX: 0.5, centreY: 0.5 }
    expect(pannedPicture(view, { x: 400, y: 0 }, { picture, frame }).centreX).toBeCloseTo(0.4, 9)
    expect(pannedPicture(view, { x: 1e6, y: 0 }, { picture, frame }).centreX).toBe(0)
  })

  it('swaps its sides with a quarter turn', () => {
    expect(turnedSize(picture, 1)).toEqual({ width: 3000, height: 4000 })
    expect(turnedSize(picture, 2)).toEqual(picture)
  })
})
