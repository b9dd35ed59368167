import { expect, it, vi } from 'vitest'
import { facetsOf, gable } from '../../../tests/builders/whole-roofs.ts'

type Library = typeof import('polygon-clipping')

const union = vi.hoisted(() => vi.fn<Library['union']>())
vi.mock('polygon-clipping', async (original) => {
  const real = await original<{ default: Library }>()
  return { default: { ...real.default, union: union.mockImplementation(real.default.union) } }
})
const { edgeZones } = await import('./edge-zones.ts')

const input = { facets: facetsOf(gable(60, 40, 6)), upAzimuthDeg: 0, meanRoofHeightFt: 15, edition: '7-16' } as const

it('figures that the library fails on are tried again on a coarser grid', () => {
  const before = edgeZones(input)
  union.mockImplementationOnce(() => {
    throw new Error('Unable to complete output ring')
  })
  expect(edgeZones(input)).toEqual(before)
})

it('where no grid helps, the zones are refused with a sentence that says what to do', () => {
  union.mockImplementation(() => {
    throw new Error('Unable to complete output ring')
  })
  expect(edgeZones(input)).toEqual({
    kind: 'refused',
    sentence:
      'The zones could not be worked out: corners or sides of the plan nearly coincide. Move them together or apart.',
  })
})
