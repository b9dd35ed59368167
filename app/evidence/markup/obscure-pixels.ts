import type { MarkupDrawing, ObscuredArea } from '../markup-drawing.ts'

/** Pixels of a copy of a picture, `channels` bytes each, row by row. They are changed in place. */
export interface CopyPixels {
  readonly data: Uint8Array | Uint8ClampedArray
  readonly width: number
  readonly height: number
  readonly channels: number
}

/**
 * Most cells along the longer side of an obscured area, by what it hides. Fine mosaics and blurs can be read again:
 * Hill, Zhou, Saul and Shacham, "On the (In)effectiveness of Mosaicing and Blurring as Tools for Document Redaction",
 * PoPETs 2016 (4), for letters; McPherson, Shokri and Shmatikov, "Defeating Image Obfuscation with Deep Learning",
 * arXiv:1609.00408 (2016), for faces. So plates become one even colour and faces at most sixteen coarse cells.
 */
const MOST_CELLS = { face: 4, plate: 1, other: 4 } as const satisfies Record<ObscuredArea['what'], number>
/** Means are rounded to steps of this many grey levels, which leaves less to tell likely contents apart by. */
const LEVEL_STEP = 16
const HIGHEST = 255

/**
 * Destroys the pixels of obscured areas: each cell of a coarse grid becomes one rounded mean. What was there can't be
 * worked out again from the copy, since only the means are left of it.
 */
export function obscurePixels(
  copy: CopyPixels,
  { widthPx, heightPx, obscured }: Pick<MarkupDrawing, 'widthPx' | 'heightPx' | 'obscured'>,
): void {
  const scale = { x: copy.width / widthPx, y: copy.height / heightPx }
  for (const area of obscured) {
    // A pixel more on each side: resizing has mixed the border with what lies inside.
    const left = Math.max(0, Math.floor(area.leftPx * scale.x) - 1)
    const top = Math.max(0, Math.floor(area.topPx * scale.y) - 1)
    const right = Math.min(copy.width, Math.ceil((area.leftPx + area.widthPx) * scale.x) + 1)
    const bottom = Math.min(copy.height, Math.ceil((area.topPx + area.heightPx) * scale.y) + 1)
    const cellPx = Math.ceil(Math.max(right - left, bottom - top) / MOST_CELLS[area.what])
    for (let y = top; y < bottom; y += cellPx)
      for (let x = left; x < right; x += cellPx)
        levelCell(copy, { left: x, top: y, right: Math.min(right, x + cellPx), bottom: Math.min(bottom, y + cellPx) })
  }
}

interface Cell {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

function levelCell(copy: CopyPixels, cell: Cell): void {
  const { data, channels, width } = copy
  const count = (cell.right - cell.left) * (cell.bottom - cell.top)
  for (let channel = 0; channel < Math.min(channels, 3); channel += 1) {
    let sum = 0
    for (let y = cell.top; y < cell.bottom; y += 1)
      for (let x = cell.left; x < cell.right; x += 1) sum += data[(y * width + x) * channels + channel] ?? 0
    const level = Math.min(HIGHEST, Math.round(sum / count / LEVEL_STEP) * LEVEL_STEP)
    for (let y = cell.top; y < cell.bottom; y += 1)
      for (let x = cell.left; x < cell.right; x += 1) data[(y * width + x) * channels + channel] = level
  }
}
