import { bidLabels } from '../../../scope/scope-record.ts'
import type { ScopeLine } from '../../../scope/scope-line.ts'
import type { Text } from '../../document.ts'
import { plain } from '../../text.ts'
import { anchorOfLine, type NumberedRow } from './numbered-rows.ts'

/** For each line: formula with inputs, what was taken for granted, and who set what by hand; bids that agree are told once. */
export function workingItems(rows: readonly NumberedRow[]): readonly Text[] {
  return rows.map(({ number, words, lines }) => [
    { text: `${number}. ${words}: `, style: 'strong', link: anchorOfLine(number) },
    ...plain(toldOnce(lines)),
  ])
}

function toldOnce(lines: readonly ScopeLine[]): string {
  const told = lines.map((line) => ({ label: bidLabels[line.bid], text: lineText(line) }))
  const [first, ...rest] = told
  if (first === undefined) return ''
  if (rest.every(({ text }) => text === first.text)) return first.text
  return told.map(({ label, text }) => `${label}: ${text}`).join(' ')
}

function lineText({ working, missing, assumptions, byHand }: ScopeLine): string {
  return [
    working,
    missing ?? '',
    ...assumptions.map((sentence) => `Assumed: ${sentence}`),
    byHand === null ? '' : `Set by hand: ${byHand.why.trim() === '' ? 'the reason is not stated' : byHand.why.trim()}.`,
  ]
    .filter((part) => part !== '')
    .join(' ')
}
