import { describe, expect, it } from 'vitest'
import {
  comesTwice,
  diaryInstantMs,
  diaryTimeAt,
  diaryTimeSchema,
  diaryTimeShort,
  diaryTimeWords,
} from './diary-time.ts'
import { contentFault, diaryContentSchema, diaryEntrySchema, type DiaryEntry } from './entry.ts'
import { filteredEntries } from './entry-filter.ts'
import { headWords } from './entry-words.ts'
import { handovers } from './handovers.ts'

const at = (date: string, time = '09:30') => ({ date, time, timeZone: 'America/New_York' })
const anEntry = (number: number, content: unknown): DiaryEntry =>
  diaryEntrySchema.parse({ id: `e${number}`, number, content, madeAtMs: 0, madeBy: 'Ida' })

describe('a time in the diary', () => {
  it('is a wall clock with its zone', () => {
    const time = diaryTimeSchema.parse(at('2026-03-14'))
    expect(diaryTimeWords(time)).toBe('March 14, 2026, 09:30 -04:00 (America/New_York)')
    expect(diaryTimeShort(time)).toBe('2026-03-14 09:30 -04:00')
    expect(diaryInstantMs(time)).toBe(Date.UTC(2026, 2, 14, 13, 30))
  })

  // IANA zone data: New York skips 02:00 to 03:00 on 8 March 2026 and has 01:00 to 02:00 twice on 1 November 2026.
  it('is refused where the clocks skip it', () => {
    expect(diaryTimeSchema.safeParse(at('2026-03-08', '02:30')).error?.issues[0]?.path).toEqual(['time'])
    expect(diaryTimeSchema.safeParse(at('2026-03-08', '03:00')).success).toBe(true)
  })

  it('can say which of two hours it means', () => {
    const first = diaryTimeSchema.parse(at('2026-11-01', '01:30'))
    expect(comesTwice(first)).toBe(true)
    expect(diaryInstantMs(first)).toBe(Date.UTC(2026, 10, 1, 5, 30))
    expect(diaryInstantMs({ ...first, repeatedHour: 'second' })).toBe(Date.UTC(2026, 10, 1, 6, 30))
  })

  it('comes back the same from its instant, also in the hour that comes twice', () => {
    for (let atMs = Date.UTC(2026, 9, 31, 12); atMs < Date.UTC(2026, 10, 2, 12); atMs += 600_000) {
      expect(diaryInstantMs(diaryTimeAt(atMs, 'America/New_York'))).toBe(atMs)
    }
  })
})

describe('an entry', () => {
  it.each([
    [{ kind: 'call', person: '' }, 'person'],
    [{ kind: 'received', what: ' ' }, 'what'],
    [{ kind: 'handed-over', to: 'Ada Owner', items: [{ what: '' }] }, 'items'],
    [{ kind: 'handed-over', items: [{ what: 'keys' }] }, 'to'],
    [{ kind: 'note', text: '' }, 'text'],
    [{ kind: 'visit' }, 'people'],
  ])('says what it still needs: %j', (given, field) => {
    expect(contentFault(diaryContentSchema.parse({ ...given, at: at('2026-03-14') }))?.field).toBe(field)
  })

  it('is told in a line without what was said', () => {
    const call = diaryContentSchema.parse({
      kind: 'call',
      at: at('2026-03-14'),
      person: 'Ada Owner',
      direction: 'they-called',
      text: 'Worried about the rain.',
    })
    expect(headWords(call)).toBe('Call from Ada Owner')
    expect(contentFault(call)).toBeNull()
  })
})

describe('a diary', () => {
  const call = anEntry(1, { kind: 'call', at: at('2026-03-14'), person: 'Ada Owner', text: 'Asked for the packet.' })
  const given = anEntry(2, {
    kind: 'handed-over',
    at: at('2026-03-16'),
    to: 'Ada Owner',
    items: [{ what: 'bound copy' }],
    text: 'Seemed content.',
  })
  const reminder = anEntry(3, { kind: 'reminder', at: at('2026-03-15'), text: 'Look at the tarp' })
  const struck: DiaryEntry = {
    ...anEntry(4, { kind: 'received', at: at('2026-03-13'), what: 'a letter' }),
    struck: { because: 'Another job.', atMs: 0, by: 'Ida' },
  }
  const diary = [call, given, reminder, struck]
  const numbers = (entries: readonly DiaryEntry[]) => entries.map(({ number }) => number)

  it('is shown newest first and found by words in any order', () => {
    expect(numbers(filteredEntries(diary, { kind: 'all', text: '' }))).toEqual([2, 3, 1, 4])
    expect(numbers(filteredEntries(diary, { kind: 'all', text: 'PACKET ada' }))).toEqual([1])
    expect(numbers(filteredEntries(diary, { kind: 'open', text: '' }))).toEqual([3])
    expect(numbers(filteredEntries(diary, { kind: 'received', text: '' }))).toEqual([4])
  })

  it('hands on only documents that came and went, without those struck out', () => {
    expect(handovers(diary).map(({ number }) => number)).toEqual([2])
  })
})
