import { facetSchema } from '../../app/roof/facet.ts'
import type { NamedHouse } from '../../app/narration/places/resolve-place.ts'

type Corner = readonly [number, number]

function facet(letter: string, name: string, lies: { faces: number; from: Corner; size: Corner }) {
  const [xFt, yFt] = lies.from
  const [widthFt, depthFt] = lies.size
  const outline = [
    { xFt, yFt },
    { xFt: xFt + widthFt, yFt },
    { xFt: xFt + widthFt, yFt: yFt + depthFt },
    { xFt, yFt: yFt + depthFt },
  ]
  return facetSchema.parse({
    id: `facet-${letter}`,
    letter,
    name,
    outline,
    pitchRise: 5,
    downslopeAzimuthDeg: lies.faces,
  })
}

/** The invented house of the labelled cues: its front faces south, the garage and the porch stand out to the front. */
export const marrowQuay: NamedHouse = {
  upAzimuthDeg: 0,
  frontAzimuthDeg: 180,
  doorAt: { xFt: 34, yFt: 0 },
  outlines: [],
  facets: [
    facet('A', 'front, main slope', { faces: 180, from: [0, 0], size: [40, 16] }),
    facet('B', 'left side', { faces: 270, from: [-12, 0], size: [12, 32] }),
    facet('C', 'back, main slope', { faces: 0, from: [0, 16], size: [40, 16] }),
    facet('D', 'right side', { faces: 90, from: [40, 0], size: [12, 32] }),
    facet('E', 'garage', { faces: 180, from: [2, -14], size: [20, 14] }),
    facet('F', 'porch', { faces: 180, from: [30, -8], size: [9, 8] }),
  ],
}
