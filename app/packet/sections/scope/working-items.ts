import { bidLabels } from '../../../scope/scope-record.ts'
import { REPAIR_ASSUMPTION } from '../../../scope/repair-lines.ts'
import type { ScopeLine } from '../../../scope/scope-line.ts'
import type { Text } from '../../document.ts'
import { plain } from '../../text.ts'
import { anchorOfLine, type NumberedRow } from './numbered-rows.ts'

/** For each line: formula with inputs, what was taken for granted, and who set what by hand; bids that agree are told once. What holds for every line of the repair is told above them. */
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

function lineText({ working, missing, assumptions, notes, byHand }: ScopeLine): string {
  return [
    working,
    missing ?? '',
    ...assumptions.filter((sentence) => sentence !== REPAIR_ASSUMPTION).map((sentence) => `Assumed: ${sentence}`),
    ...notes,
    byHand === null ? '' : `Set by hand: ${byHand.why.trim() === '' ? 'the reason is not stated' : byHand.why.trim()}.`,
  ]
    .filter((part) => part !== '')
    .join(' ')
}
