import { readClock, type ClockReading } from '../../app/diary/clock-reading.ts'
import type { HolidayOn } from '../../app/diary/clock-end.ts'
import type { JobClocks } from '../../app/diary/job-clocks.ts'
import type { ReadDb } from '../store/database.ts'
import { listRules } from '../store/rules.ts'
import { holidaysOf } from './holidays.ts'

/** The clocks that were asked for in a job, counted by the library's rules as they stand now. */
export function countedClocks(db: ReadDb, { asked }: JobClocks): ClockReading[] {
  if (asked.length === 0) return []
  const rules = new Map(listRules(db).map(({ rule }) => [rule.key, rule]))
  const calendars = new Map<string, HolidayOn>()
  return asked.flatMap((clock): readonly ClockReading[] => {
    const rule = rules.get(clock.ruleKey)
    if (rule?.kind !== 'clock') return []
    const holidayOn = calendars.get(rule.jurisdiction) ?? holidaysOf(rule.jurisdiction)
    calendars.set(rule.jurisdiction, holidayOn)
    return [readClock(rule, clock, holidayOn)]
  })
}
