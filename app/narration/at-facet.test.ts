import { describe, expect, it } from 'vitest'
import { marrowQuay } from '../../tests/narration/marrow-quay.ts'
import { facetIdSchema, narrationIdSchema } from '../job/ids.ts'
import { atFacet, openFacets } from './at-facet.ts'
import type { Draft } from './draft.ts'
import { draftedFinding } from './drafted-finding.ts'
import { readNarration } from './read-narration.ts'

const first = facetIdSchema.parse('facet-A')
const twin = facetIdSchema.parse('facet-G')
const house = {
  ...marrowQuay,
  facets: marrowQuay.facets.flatMap((facet) =>
    facet.id === first ? [facet, { ...facet, id: twin, letter: 'G' }] : facet,
  ),
}

function draftOf(text: string): Draft {
  const { drafts } = readNarration([{ startMs: 0, endMs: 4000, text, speaker: '' }], {
    house,
    covering: 'concrete-tile',
  })
  const [draft] = drafts
  if (draft === undefined) throw new Error(`Nothing was read from: ${text}`)
  return draft
}

describe('places that the words leave open', () => {
  it('are a choice where several facets fit, and none where one does', () => {
    expect(openFacets(draftOf('On the front slope two tiles have slipped.'))).toEqual([first, twin])
    expect(openFacets(draftOf('On the back slope two tiles have slipped.'))).toEqual([])
    expect(openFacets(draftOf('Two tiles have slipped.'))).toEqual([])
  })

  it('become the finding’s facet once chosen, and only if the words leave it', () => {
    const draft = draftOf('On the front slope two tiles have slipped.')
    const id = narrationIdSchema.parse('n')
    expect(draftedFinding(draft, id).facetId).toBeNull()
    expect(draftedFinding(atFacet(draft, twin), id).facetId).toBe(twin)
    expect(atFacet(draft, facetIdSchema.parse('facet-C'))).toBe(draft)
    expect(atFacet(draft, null)).toBe(draft)
  })
})

describe('a crack whose direction was not said', () => {
  const id = narrationIdSchema.parse('n')

  it('is written down as such, and one whose path was said is not', () => {
    expect(draftedFinding(draftOf('There is a cracked tile.'), id).observation).toContain(
      'do not say how the crack runs',
    )
    const told = ['A tile is cracked corner to corner.', 'A tile is cracked up to the nail.', 'A tile has slipped.']
    for (const text of told) expect(draftedFinding(draftOf(text), id).observation).not.toContain('how the crack runs')
  })
})
