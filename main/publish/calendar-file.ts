import ical, { ICalAlarmType } from 'ical-generator'
import type { CalendarEvent } from '../../app/diary/calendar-events.ts'

/** Events as the text of an iCalendar file (RFC 5545), times in UTC. */
export function calendarFile(name: string, events: readonly CalendarEvent[]): string {
  const calendar = ical({ name, prodId: { company: 'Battenbook', product: 'diary', language: 'EN' } })
  for (const { uid, sequence, stampMs, when, summary, description, isReminder } of events) {
    const event = calendar.createEvent({
      id: uid,
      sequence,
      stamp: new Date(stampMs),
      start: when.kind === 'day' ? new Date(`${when.date}T00:00:00Z`) : new Date(when.atMs),
      allDay: when.kind === 'day',
      summary,
      description,
    })
    if (isReminder) event.createAlarm({ type: ICalAlarmType.display, trigger: 0, description: summary })
  }
  // The last line ends like the others: RFC 5545 section 3.1 has every line end in CRLF.
  return `${calendar.toString()}\r\n`
}
