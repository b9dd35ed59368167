import { describe, expect, it } from 'vitest'
import { photoIdSchema } from '../job/ids.ts'
import { readingInstantMs } from './reading-instant.ts'

const ZONE = 'America/New_York'
const photoIds = ['p1', 'p2'].map((id) => photoIdSchema.parse(id))
const shown = (instants: readonly (number | null)[]) =>
  photoIds.map((id, at) => ({ id, time: { instantMs: instants[at] ?? null } }))

describe('when a tile was lifted', () => {
  it('is the time written down, on the clock of the house', () => {
    // 10:40 in New York is 14:40 UTC in summer and 15:40 in winter (IANA time zone database).
    const at = (takenAt: string) => readingInstantMs({ takenAt, photoIds: [] }, [], ZONE)
    expect(at('2026-07-01T10:40')).toBe(Date.UTC(2026, 6, 1, 14, 40))
    expect(at('2026-01-15T10:40')).toBe(Date.UTC(2026, 0, 15, 15, 40))
  })

  it('is that of the first photo where none was written down, or where no calendar has it', () => {
    for (const takenAt of [null, '2026-02-30T10:40']) {
      expect(readingInstantMs({ takenAt, photoIds }, shown([9000, 4000]), ZONE)).toBe(4000)
    }
  })

  it('is not known without either', () => {
    expect(readingInstantMs({ takenAt: null, photoIds }, shown([null, null]), ZONE)).toBeNull()
  })
})
