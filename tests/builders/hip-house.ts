import type { z } from 'zod'
import type { Facet } from '../../app/roof/facet.ts'
import { facetSchema } from '../../app/roof/facet.ts'
import { corners } from './outlines.ts'

/**
 * The hip roof of the handbook example that quantities are held against: 60 ft by 40 ft at 5:12, four facets A (south),
 * B (east), C (north), D (west). Area 2,600 sq ft, ridge 20 ft, hips 117.945 ft, eave 200 ft (slope factor tables).
 */
export function hipHouse(given: Partial<z.input<typeof facetSchema>> = {}): readonly Facet[] {
  const slopes = [
    ['A', 180, '0,0 60,0 40,20 20,20'],
    ['B', 90, '60,0 60,40 40,20'],
    ['C', 0, '60,40 0,40 20,20 40,20'],
    ['D', 270, '0,40 0,0 20,20'],
  ] as const
  return slopes.map(([letter, downslopeAzimuthDeg, outline]) =>
    facetSchema.parse({
      id: `hip-${letter}`,
      letter,
      outline: corners(outline),
      pitchRise: 5,
      downslopeAzimuthDeg,
      inspected: { percent: 100 },
      ...given,
    }),
  )
}
