import type { FactsBlock } from '../../../../app/packet/document.ts'
import { TYPE } from '../text/text-style.ts'
import { linesHeight, type Measuring, plainStrip, textBox, words } from './measuring.ts'
import type { Strip } from './strip.ts'
import type { FactsRowContent } from './strip-content.ts'

const COLUMN_GAP_PT = 24
const LABEL_GAP_PT = 10
/** Labels of all blocks stand in one column as far as they fit it, so that values are level from block to block. */
const NARROWEST_LABEL_PT = 96
const WIDEST_LABEL = 0.42
/** A value with more lines than this in half the width gets the whole width. */
const MOST_LINES_IN_COLUMN = 2
const GAP_BEFORE_PT = 6

type Fact = FactsBlock['rows'][number]

/** Facts: labels beside their values, in one column or two, read down; in two, wide rows and long values follow at full width. */
export function measureFacts(block: FactsBlock, measuring: Measuring): readonly Strip[] {
  const rows = rowsOf(block, measuring)
  const table = { id: measuring.nextId(), tag: 'Table' } as const
  const repeat = block.continued === undefined ? null : continuedStrip(block.continued, measuring)
  return rows.map((cells, i): Strip => {
    const textPt = Math.max(
      0,
      ...cells.flatMap(({ label, value }) => [label, value]).map(({ lines }) => linesHeight(lines)),
    )
    const content = { kind: 'facts-row', cells, ruledBelow: i < rows.length - 1 } as const
    const heightPt = textPt + 2 * measuring.setting.factsPadPt
    const strip = plainStrip(measuring, content, { heightPt, gapBeforePt: i === 0 ? GAP_BEFORE_PT : 0 })
    const structure = [...measuring.within, table, { id: measuring.nextId(), tag: 'TR' } as const]
    // Two rows at least stay together at either end.
    const stays = i === 1 || (i > 0 && i === rows.length - 1)
    return { ...strip, structure, repeat, breakBefore: stays ? 'never' : 'free' }
  })
}

function rowsOf(block: FactsBlock, measuring: Measuring): readonly FactsRowContent['cells'][] {
  const count = block.columns
  const fullPt = measuring.paper.contentWidthPt
  const columnPt = (fullPt - COLUMN_GAP_PT * (count - 1)) / count
  const labelPt = labelWidth(block, columnPt, measuring)
  const cell = (fact: Fact, place: { xPt: number; widthPt: number }) => cellOf(fact, { ...place, labelPt }, measuring)
  const isLong = ({ value, wide }: Fact) =>
    count > 1 &&
    (wide === true ||
      measuring.typesetter.lines(value, measuring.setting.body, columnPt - labelPt).length > MOST_LINES_IN_COLUMN)
  const short = block.rows.filter((fact) => !isLong(fact))
  const perColumn = Math.ceil(short.length / count)
  const inColumns = Array.from({ length: perColumn }, (_, i) =>
    Array.from({ length: count }, (_column, column) => {
      const fact = short[column * perColumn + i]
      return fact === undefined ? [] : [cell(fact, { xPt: column * (columnPt + COLUMN_GAP_PT), widthPt: columnPt })]
    }).flat(),
  )
  return [...inColumns, ...block.rows.filter(isLong).map((fact) => [cell(fact, { xPt: 0, widthPt: fullPt })])]
}

function labelWidth(block: FactsBlock, columnPt: number, measuring: Measuring): number {
  const { typesetter, setting } = measuring
  const widest = Math.max(
    0,
    ...block.rows.map(({ label }) => typesetter.lines(words(label), setting.label, Infinity)[0]?.widthPt ?? 0),
  )
  return Math.min(Math.max(widest + LABEL_GAP_PT, NARROWEST_LABEL_PT), columnPt * WIDEST_LABEL)
}

function cellOf(
  fact: Fact,
  place: { xPt: number; widthPt: number; labelPt: number },
  measuring: Measuring,
): FactsRowContent['cells'][number] {
  const { xPt, widthPt, labelPt } = place
  const yPt = measuring.setting.factsPadPt - 0.5
  return {
    label: textBox(measuring, words(fact.label), {
      style: measuring.setting.label,
      xPt,
      yPt,
      widthPt: labelPt - LABEL_GAP_PT / 2,
    }),
    value: textBox(measuring, fact.value, {
      style: measuring.setting.body,
      xPt: xPt + labelPt,
      yPt,
      widthPt: widthPt - labelPt,
    }),
  }
}

function continuedStrip(text: string, measuring: Measuring): Strip {
  const box = textBox(measuring, words(text), {
    style: TYPE.label,
    xPt: 0,
    yPt: 0,
    widthPt: measuring.paper.contentWidthPt,
  })
  return plainStrip(
    measuring,
    { kind: 'lines', box, sign: null },
    { heightPt: linesHeight(box.lines) + 4, gapBeforePt: 0 },
  )
}
