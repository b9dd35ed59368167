import { describe, expect, it } from 'vitest'
import { readPriceBook } from './read-price-book.ts'

const book = (text: string, mark: 'point' | 'comma' | null = null) =>
  readPriceBook(
    text.split('\n').map((line, i) => ({ line: i + 1, cells: line.split('|') })),
    mark,
  )
const head = 'Code|Description|Unit|Unit price'

describe('a price book', () => {
  it('is read row by row, each with the line of the file', () => {
    const { rows, good, lacks } = book(`${head}\nridge|Ridge caps|LF|$18.25\nC-2|Underlayment|sq.|1,240.00`)
    expect([good, lacks]).toEqual([2, []])
    expect(rows.map(({ price }) => price)).toEqual([
      { line: 2, code: 'ridge', description: 'Ridge caps', unit: 'ft', price: '18.25' },
      { line: 3, code: 'C-2', description: 'Underlayment', unit: 'square', price: '1240.00' },
    ])
  })

  it('finds its columns by their titles, in any order', () => {
    const { rows } = book('UNIT_PRICE|per|item\n2.00|each|A1')
    expect(rows[0]?.price).toMatchObject({ code: 'A1', unit: 'each', price: '2.00', description: '' })
  })

  it('says which columns are missing, and takes no row', () => {
    const { lacks, rows, good } = book('Code|Text\nA|x')
    expect(lacks).toEqual([
      'No column is titled "unit". The first line must have: code, description, unit, unit price.',
      'No column is titled "unit price". The first line must have: code, description, unit, unit price.',
    ])
    expect([good, rows.length]).toEqual([0, 1])
  })

  it.each([
    ['=1+1|x|ft|2.00', 'is a formula'],
    ['A|+CMD()|ft|2.00', 'is a formula'],
    ['A|@SUM(A1)|ft|2.00', 'is a formula'],
    ['A|x|ft|=2*3', 'is a formula'],
    ['A|x|ft|-2.00', 'cannot be negative'],
    ['A|x|ft|', 'has no price'],
    ['A|x|ft|0', 'no price'],
    ['A|x|furlong|2.00', 'The unit "furlong" is not known'],
    ['A|x||2.00', 'has no unit'],
    ['|x|ft|2.00', 'has no code'],
    ['A|x|ft|5000000.00', 'look for a slip'],
  ])('refuses the row %s, named, and goes on', (row, words) => {
    const { rows, good } = book(`${head}\n${row}\nB|fine|ft|3.00`)
    expect(rows[0]).toMatchObject({ line: 2, price: null })
    expect(rows[0]?.messages.join(' ')).toContain(words)
    expect(good).toBe(1)
  })

  it('refuses a code that stands twice and names the line before', () => {
    const { rows } = book(`${head}\nA|x|ft|2.00\na|x|ft|2.00\nA|x|ft|3.00`)
    expect(rows.map(({ messages }) => messages)).toEqual([
      [],
      ['The code "a" stands on line 2 already, with the same price.'],
      ['The code "A" stands on line 2 already, with another price or unit. Give each its own code.'],
    ])
  })

  it('takes the decimal mark from prices that prove it', () => {
    expect(book(`${head}\nA|x|ft|1.234\nB|x|ft|2,50`)).toMatchObject({
      decimalMark: 'comma',
      rows: [{ price: { price: '1234' } }, { price: { price: '2.50' } }],
    })
  })

  it('does not guess where none proves it, and reads on when a person has chosen', () => {
    const unsure = book(`${head}\nA|x|ft|1,234\nB|x|ft|12`)
    expect([unsure.decimalMark, unsure.good]).toEqual([null, 1])
    expect(unsure.rows[0]?.messages[0]).toContain('Choose the mark')
    expect(book(`${head}\nA|x|ft|1,234`, 'point').rows[0]?.price?.price).toBe('1234')
    expect(book(`${head}\nA|x|ft|1,234`, 'comma').rows[0]?.price?.price).toBe('1.234')
  })

  it('does not read one file with both marks by either until a person has chosen', () => {
    expect(book(`${head}\nA|x|ft|12.50\nB|x|ft|12,50`).good).toBe(0)
    const chosen = book(`${head}\nA|x|ft|12.50\nB|x|ft|12,50`, 'point')
    expect(chosen.rows.map(({ price }) => price?.price ?? null)).toEqual(['12.50', null])
  })
})
