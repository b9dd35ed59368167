import type { Locator } from 'playwright-core'

/** A place on the roof plan, feet. */
interface PlanPlace {
  readonly xFt: number
  readonly yFt: number
}

/** A hand over the sheet of the roof plan, which knows where on the screen a place of the plan is drawn. */
export class PlanHand {
  private readonly sheet: Locator

  constructor(sheet: Locator) {
    this.sheet = sheet
  }

  /** Moves the pointer to a place; `offPx` is how far the hand misses it, to the right and down. */
  async moveTo({ xFt, yFt }: PlanPlace, offPx = 0): Promise<void> {
    const { left, top, originX, originY, scale } = await this.view()
    await this.sheet.page().mouse.move(left + originX + xFt * scale + offPx, top + originY - yFt * scale + offPx)
  }

  /** Clicks a place. */
  async click(place: PlanPlace, offPx = 0): Promise<void> {
    await this.moveTo(place, offPx)
    await this.sheet.page().mouse.down()
    await this.sheet.page().mouse.up()
  }

  /** The place, to a whole foot, that is drawn at a share of the sheet's width and height. */
  async placeAt(shareX: number, shareY: number): Promise<PlanPlace> {
    const { width, height, originX, originY, scale } = await this.view()
    return {
      xFt: Math.round((shareX * width - originX) / scale),
      yFt: Math.round((originY - shareY * height) / scale),
    }
  }

  /** What part of the plan is drawn where, in pixels of the window. */
  private async view() {
    const box = await this.sheet.boundingBox()
    const transform = await this.sheet.locator('svg > g').first().getAttribute('transform')
    const [originX = NaN, originY = NaN, scale = NaN] =
      (transform ?? '').match(/-?\d+(\.\d+)?(e-?\d+)?/g)?.map(Number) ?? []
    if (box === null || Number.isNaN(originX + originY + scale)) throw new Error('The roof plan is not drawn.')
    return { left: box.x, top: box.y, width: box.width, height: box.height, originX, originY, scale }
  }
}
