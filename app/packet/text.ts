import type { FactsBlock, Inline, Text } from './document.ts'

/** Text of one plain run. */
export function plain(text: string): Text {
  return [{ text }]
}

/** What a person typed, or "not stated" set quietly where they typed nothing. */
export function stated(text: string): Text {
  const trimmed = text.trim()
  return trimmed === '' ? [{ text: 'not stated', style: 'quiet' }] : plain(trimmed)
}

/** Label and value rows as far as they are stated; the labels of the others stand together in a last row. */
export function statedRows(rows: readonly { readonly label: string; readonly value: string }[]): FactsBlock['rows'] {
  const told = rows.filter(({ value }) => value.trim() !== '')
  const untold = rows.filter(({ value }) => value.trim() === '').map(({ label }) => label.toLowerCase())
  return [
    ...told.map(({ label, value }) => ({ label, value: plain(value.trim()) })),
    ...(untold.length === 0 ? [] : [{ label: 'Not stated', value: plain(untold.join(', ')) }]),
  ]
}

/** A bold beginning followed by plain words. */
export function ledBy(lead: string, text: Text): Text {
  return [{ text: `${lead} `, style: 'strong' }, ...text]
}

/** Texts one after the other, with a separator between them. */
export function joined(parts: readonly Text[], separator = ', '): Text {
  return parts.flatMap((part, i): readonly Inline[] => (i === 0 ? part : [{ text: separator }, ...part]))
}

/** "1 photo", "2 photos". */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`
}
