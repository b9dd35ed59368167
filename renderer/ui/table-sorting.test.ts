import { describe, expect, it } from 'vitest'
import { sortedRows } from './table-sorting.ts'

const rows = [
  { name: 'F-10', size: 3 },
  { name: 'F-2', size: null },
  { name: 'f-1', size: 7 },
]
const columns = [
  { key: 'name', sortBy: (row: (typeof rows)[number]) => row.name },
  { key: 'size', sortBy: (row: (typeof rows)[number]) => row.size },
]
const names = (column: string, direction: 'up' | 'down') =>
  sortedRows(rows, columns, { column, direction }).map((row) => row.name)

describe('sortedRows', () => {
  it('sorts names with numbers as people do', () => {
    expect(names('name', 'up')).toEqual(['f-1', 'F-2', 'F-10'])
    expect(names('name', 'down')).toEqual(['F-10', 'F-2', 'f-1'])
  })

  it('puts rows without a value last either way', () => {
    expect(names('size', 'up')).toEqual(['F-10', 'f-1', 'F-2'])
    expect(names('size', 'down')).toEqual(['f-1', 'F-10', 'F-2'])
  })

  it('leaves rows alone when nothing is asked', () => {
    expect(sortedRows(rows, columns, null)).toBe(rows)
  })
})
