import { describe, expect, it } from 'vitest'
import { facetIdSchema } from '../../../app/job/ids.ts'
import { planFrameSchema } from '../../../app/job/places.ts'
import { facetsOfOutline } from '../../../app/roof/facets-of-outline.ts'
import { houseOutlineSchema, type HouseOutline } from '../../../app/roof/house-outline.ts'
import { previewRoof } from './roof-preview.ts'

const frame = planFrameSchema.parse({})

/** A ring from corners as text; the pitch of each edge, 0 for a gable, or one pitch for all. */
function ring(line: string, pitches: number | readonly number[], mark: string) {
  const corners = line.split(' ').map((corner) => {
    const [xFt = NaN, yFt = NaN] = corner.split(',').map(Number)
    return { xFt, yFt }
  })
  const edges = corners.map((_, i) => {
    const pitchRise = typeof pitches === 'number' ? pitches : (pitches[i] ?? 0)
    const id = `${mark}${i + 1}`
    return typeof pitches !== 'number' && pitchRise === 0 ? { id, kind: 'gable' } : { id, kind: 'eave', pitchRise }
  })
  return { corners, edges }
}

interface Given {
  readonly name?: string
  readonly pitches?: number | readonly number[]
  readonly courtyard?: string
}

function house(line: string, { name = 'Main roof', pitches = 6, courtyard }: Given = {}): HouseOutline {
  return houseOutlineSchema.parse({
    id: name === 'Main roof' ? 'main' : 'draft',
    name,
    outer: ring(line, pitches, 'e'),
    courtyards: courtyard === undefined ? [] : [ring(courtyard, 6, 'c')],
  })
}

const rectangle = '0,0 40,0 40,30 0,30'
const nothing = { facets: [], outlines: [], frame }

/** A rectangle as it is saved, with its four facets. */
function savedHouse() {
  const outline = house(rectangle)
  let next = 0
  const built = facetsOfOutline(outline, {
    existing: [],
    former: [],
    neighbours: [],
    frame,
    frontAzimuthDeg: 180,
    newId: () => facetIdSchema.parse(`facet-${++next}`),
  })
  return { outline, facets: built.ok ? built.facets : expect.fail(built.sentence) }
}

describe('the roof over an outline under the hand', () => {
  it.each([
    ['crosses itself', '0,0 40,30 40,0 0,30', {}, /^Edge 1 meets edge 3 at 20\.0 ft across, 15\.0 ft up\. Move/],
    ['has no area', '0,0 20,0 40,0', {}, /Edge \d meets edge \d at/],
    [
      'has a corner twice',
      '0,0 40,0 40,0 40,30 0,30',
      {},
      /^Edge 2 is shorter than .*: it starts at corner 2, 40\.0 ft/,
    ],
    ['has a pitch of nothing', rectangle, { pitches: 0 }, /^Edge 1 has a pitch of 0:12\. Enter/],
    ['has gables alone', rectangle, { pitches: [0, 0, 0, 0] }, /^Every edge is a gable/],
    [
      'is touched by its courtyard',
      rectangle,
      { courtyard: '10,10 20,0 30,10' },
      /^Edge 1 meets edge \d of courtyard 1 at/,
    ],
    ['is crossed by it', rectangle, { courtyard: '10,10 20,-5 30,10' }, /^Edge 1 meets edge \d of courtyard 1 at/],
    [
      'has it beside',
      rectangle,
      { courtyard: '50,10 60,10 60,20' },
      /^Courtyard 1 does not lie in the roof, at 50\.0 ft/,
    ],
  ])('is none when the outline %s, and says where', (...[, line, given, says]) => {
    const preview = previewRoof(house(line, given), nothing)
    expect(preview.ok ? '' : preview.sentence).toMatch(says)
  })

  it.each([
    ['runs clockwise', '0,0 0,30 40,30 40,0', {}, 4],
    ['is as steep as 30:12', rectangle, { pitches: 30 }, 4],
    ['has walls that are parallel but for a hair', '0,0 40,0 40,30.0000001 0,30', {}, 4],
    ['has an edge of a quarter of an inch', '0,0 40,0 40.02,0.005 40,30 0,30', {}, 5],
  ])('is there when the outline %s', (...[, line, given, count]) => {
    expect(previewRoof(house(line, given), nothing)).toMatchObject({ ok: true, facets: { length: count }, goes: [] })
  })

  it('shows new facets without a letter, those that are there with theirs, and names those that would go', () => {
    const { outline, facets } = savedHouse()
    const pulled = house('0,0 50,0 50,30 0,30', { pitches: [6, 0, 6, 6] })
    const preview = previewRoof(pulled, { facets, outlines: [outline], frame })
    const right = facets.find(({ from }) => from?.edgeId === 'e2')
    expect(preview).toMatchObject({ ok: true, goes: [right] })
    expect(preview.ok ? preview.facets.map(({ letter }) => letter).toSorted() : []).toEqual(
      facets
        .filter((facet) => facet !== right)
        .map(({ letter }) => letter)
        .toSorted(),
    )
    const first = previewRoof(outline, nothing)
    expect(first.ok ? first.facets.map(({ letter }) => letter) : []).toEqual(['', '', '', ''])
  })

  it('keeps what was set by hand', () => {
    const { outline, facets } = savedHouse()
    const byHand = facets.map((facet) =>
      facet.from?.edgeId === 'e1' ? { ...facet, pitchRise: 9, setByHand: ['pitchRise' as const] } : facet,
    )
    const pulled = house('0,0 50,0 50,30 0,30')
    const preview = previewRoof(pulled, { facets: byHand, outlines: [outline], frame })
    const front = preview.ok ? preview.facets.find(({ from }) => from?.edgeId === 'e1') : undefined
    expect(front).toMatchObject({ pitchRise: 9, setByHand: ['pitchRise'] })
    expect(front?.outline.some(({ xFt }) => xFt === 50)).toBe(true)
  })

  it('is none where it would cover another outline, by both names and the place', () => {
    const { outline, facets } = savedHouse()
    const garage = house('35,5 60,5 60,25 35,25', { name: 'Garage' })
    const preview = previewRoof(garage, { facets, outlines: [outline], frame })
    expect(preview.ok ? '' : preview.sentence).toBe(
      '"Garage" and "Main roof" cover the same place, at 40.0 ft across, 5.0 ft up. Draw the lower roof only up to the wall of the higher one.',
    )
  })
})
