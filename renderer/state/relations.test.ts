import { describe, expect, it } from 'vitest'
import { findingSchema } from '../../app/evidence/finding.ts'
import { logEntrySchema } from '../../app/evidence/log-entry.ts'
import { readingSchema } from '../../app/fieldtest/reading.ts'
import { facetSchema } from '../../app/roof/facet.ts'
import { relatedFacetIds, relatedFindingIds, relatedPhotoIds, type Selection } from './relations.ts'
import { testPhoto } from './test-photo.ts'

const corner = (xFt: number, yFt: number) => ({ xFt, yFt })
const facet = facetSchema.parse({
  id: 'A',
  letter: 'A',
  outline: [corner(0, 0), corner(9, 0), corner(0, 9)],
  pitchRise: 5,
  downslopeAzimuthDeg: 180,
})
const finding = findingSchema.parse({
  id: 'f1',
  number: 1,
  kind: 'damage',
  component: 'field-tile',
  condition: 'slipped',
  facetId: 'A',
  photos: [{ photoId: 'close', role: 'close' }],
})
const reading = readingSchema.parse({ id: 'r1', number: 1, facetId: 'A', findingId: 'f1', photoIds: ['gauge'] })
const photos = [
  testPhoto('close', {}),
  testPhoto('wide', { facetId: 'A' }),
  testPhoto('gauge', {}),
  testPhoto('away', {}),
]
const job = { facets: [facet], findings: [finding], readings: [reading], photos }
const [close, wide] = photos as [(typeof photos)[0], (typeof photos)[0]]

const related = (selection: Selection, entry: Parameters<typeof relatedPhotoIds>[2] = null) => ({
  photos: [...relatedPhotoIds(selection, job, entry)],
  findings: [...relatedFindingIds(selection, job, entry)],
  facets: [...relatedFacetIds(selection, job, entry)],
})

describe('what belongs to a selection', () => {
  it('is nothing when nothing is selected', () => {
    expect(related({ kind: 'none' })).toEqual({ photos: [], findings: [], facets: [] })
  })

  it('leads from a photo to the findings it shows and the facet it is tagged on', () => {
    expect(related({ kind: 'photos', ids: [close.id], lead: close.id })).toEqual({
      photos: ['close'],
      findings: ['f1'],
      facets: [],
    })
    expect(related({ kind: 'photos', ids: [wide.id], lead: wide.id })).toEqual({
      photos: ['wide'],
      findings: [],
      facets: ['A'],
    })
  })

  it('leads from a finding to its photos, those of its readings, and its facet', () => {
    expect(related({ kind: 'finding', id: finding.id })).toEqual({
      photos: ['close', 'gauge'],
      findings: ['f1'],
      facets: ['A'],
    })
  })

  it('leads from a facet to the photos on it and to those of its findings', () => {
    expect(related({ kind: 'facet', id: facet.id })).toEqual({
      photos: ['wide', 'close'],
      findings: ['f1'],
      facets: ['A'],
    })
  })

  it('leads from a reading to its photos, its finding and its facet', () => {
    expect(related({ kind: 'reading', id: reading.id })).toEqual({ photos: ['gauge'], findings: ['f1'], facets: ['A'] })
  })

  it('leads from a log entry to the records that it changed and that are still there', () => {
    const digest = 'a'.repeat(64)
    const change = (record: string, id: string) => ({ record, id, before: digest, after: digest })
    const entry = logEntrySchema.parse({
      seq: 5,
      atMs: 0,
      actor: '',
      event: {
        type: 'edited',
        summary: 'Tag photos',
        changes: [change('photo', 'wide'), change('photo', 'gone'), change('finding', 'f1')],
      },
      previous: null,
      hash: digest,
    })
    expect(related({ kind: 'entry', seq: 5 }, entry)).toEqual({ photos: ['wide'], findings: ['f1'], facets: [] })
    expect(related({ kind: 'entry', seq: 5 })).toEqual({ photos: [], findings: [], facets: [] })
  })
})
