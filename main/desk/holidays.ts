import Holidays from 'date-holidays'
import type { HolidayOn } from '../../app/diary/clock-end.ts'

const none: HolidayOn = () => null

/**
 * The public holidays of a jurisdiction, as the npm package date-holidays lists them; none where it knows none.
 *
 * @param jurisdiction ISO 3166-2 code such as US-TX; empty for rules that no law stands behind
 */
export function holidaysOf(jurisdiction: string): HolidayOn {
  const [country = '', state] = jurisdiction.split('-')
  if (country === '') return none
  const calendar = state === undefined ? new Holidays(country) : new Holidays(country, state)
  const years = new Map<string, ReadonlyMap<string, string>>()
  return (date) => {
    const year = date.slice(0, 4)
    let named = years.get(year)
    if (named === undefined) {
      const listed = calendar.getHolidays(Number(year)) ?? []
      named = new Map(
        listed.filter(({ type }) => type === 'public').map(({ date: day, name }) => [day.slice(0, 10), name]),
      )
      years.set(year, named)
    }
    return named.get(date) ?? null
  }
}
