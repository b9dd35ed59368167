import type { Section } from './use-section.ts'

type NamesOf<Value, Wanted> = { [Name in keyof Value]: Value[Name] extends Wanted ? Name : never }[keyof Value] & string
type DateNames<Value> = { [Name in keyof Value]: string | null extends Value[Name] ? Name : never }[keyof Value] &
  string
type NumberNames<Value> = { [Name in keyof Value]: number | null extends Value[Name] ? Name : never }[keyof Value] &
  string

/** Ties a field of a section to a control: its path, its value, its error. */
export function sectionFields<Value extends object>(section: Section<Value>) {
  const { key, value, errors, set } = section
  const at = (name: string) => ({ name: `${key}.${name}`, error: errors.get(`${key}.${name}`) ?? null })
  return {
    text(name: NamesOf<Value, string>) {
      const text: unknown = value[name]
      return {
        ...at(name),
        value: typeof text === 'string' ? text : '',
        onChange: (next: string) => set({ ...value, [name]: next }),
      }
    },
    /** A date as text; empty is null. The text may be wrong until it is saved. */
    date(name: DateNames<Value>) {
      const text: unknown = value[name]
      return {
        ...at(name),
        value: typeof text === 'string' ? text : '',
        onChange: (next: string) => set({ ...value, [name]: next.trim() === '' ? null : next.trim() }),
      }
    },
    number(name: NumberNames<Value>) {
      const number: unknown = value[name]
      return {
        ...at(name),
        value: typeof number === 'number' ? number : null,
        onChange: (next: number | null) => set({ ...value, [name]: next }),
      }
    },
  }
}
