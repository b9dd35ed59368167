import type { Sharp } from 'sharp'

/** What Exif orientations 1 to 8 ask of the stored pixels: mirrored left to right first, then turned clockwise. */
const TURNS = new Map<number, { mirrored: boolean; clockwiseDeg: 0 | 90 | 180 | 270 }>([
  [1, { mirrored: false, clockwiseDeg: 0 }],
  [2, { mirrored: true, clockwiseDeg: 0 }],
  [3, { mirrored: false, clockwiseDeg: 180 }],
  [4, { mirrored: true, clockwiseDeg: 180 }],
  [5, { mirrored: true, clockwiseDeg: 270 }],
  [6, { mirrored: false, clockwiseDeg: 90 }],
  [7, { mirrored: true, clockwiseDeg: 90 }],
  [8, { mirrored: false, clockwiseDeg: 270 }],
])

/**
 * Turns a picture upright after it was resized. The orientation comes from the photo's record, not from the file again,
 * so that record and preview can't disagree. Turning last keeps decoding at a fraction possible.
 */
export function turnUpright(picture: Sharp, orientation: number): Sharp {
  const turn = TURNS.get(orientation)
  if (turn === undefined || orientation === 1) return picture
  return picture.flop(turn.mirrored).rotate(turn.clockwiseDeg)
}
