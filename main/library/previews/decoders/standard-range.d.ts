/** What `standard-range.js` offers; it is plain JavaScript since threads run it from the source. */
export const toStandardRange: {
  (pixels: Uint16Array, colour: { primaries: number; transfer: number; bits: number }): Uint8Array
  needed(colour: { primaries: number; transfer: number }): boolean
}
