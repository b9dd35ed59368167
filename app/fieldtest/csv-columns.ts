/** What a column of a file of readings can hold. */
export const csvFields = [
  'facet',
  'area',
  'lift',
  'force',
  'method',
  'pull-point',
  'pull-direction',
  'outcome',
  'instrument',
  'tester',
  'time',
  'x',
  'y',
  'finding',
  'note',
] as const
export type CsvField = (typeof csvFields)[number]

/** A column of the file that is understood: its place, and the unit that its title gives. */
export interface KnownColumn {
  readonly field: CsvField
  readonly at: number
  readonly unit: string
}

const TITLES: Readonly<Record<string, CsvField>> = {
  facet: 'facet',
  slope: 'facet',
  area: 'area',
  zone: 'area',
  'roof area': 'area',
  lift: 'lift',
  rise: 'lift',
  force: 'force',
  load: 'force',
  pull: 'force',
  method: 'method',
  'pull point': 'pull-point',
  'point of pull': 'pull-point',
  'pull direction': 'pull-direction',
  'direction of pull': 'pull-direction',
  direction: 'pull-direction',
  outcome: 'outcome',
  result: 'outcome',
  instrument: 'instrument',
  gauge: 'instrument',
  tester: 'tester',
  'taken by': 'tester',
  by: 'tester',
  time: 'time',
  'taken at': 'time',
  x: 'x',
  'plan x': 'x',
  y: 'y',
  'plan y': 'y',
  finding: 'finding',
  note: 'note',
  notes: 'note',
  remark: 'note',
}

const UNITS: readonly string[] = ['in', 'mm', 'cm', 'lbf', 'lb', 'lbs', 'n', 'kgf', 'kg', 'ft']

/** Sorts the titles of a file into columns that are understood and titles that are not. A field's first column counts. */
export function readTitles(titles: readonly string[]): {
  readonly known: readonly KnownColumn[]
  readonly unused: readonly string[]
} {
  const known: KnownColumn[] = []
  const unused: string[] = []
  titles.forEach((title, at) => {
    const words = title
      .toLowerCase()
      .replaceAll(/[_(),[\]]+/g, ' ')
      .trim()
      .split(/\s+/)
    const last = words.at(-1) ?? ''
    const hasUnit = words.length > 1 && UNITS.includes(last)
    const field = TITLES[(hasUnit ? words.slice(0, -1) : words).join(' ')]
    if (field === undefined || known.some((column) => column.field === field)) {
      if (title.trim() !== '') unused.push(title.trim())
    } else known.push({ field, at, unit: hasUnit ? (last === 'n' ? 'N' : last) : '' })
  })
  return { known, unused }
}
