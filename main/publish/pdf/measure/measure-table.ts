import type { TableBlock, Text } from '../../../../app/packet/document.ts'
import { TYPE, type TextStyle } from '../text/text-style.ts'
import type { TextLine } from '../text/typeset.ts'
import { linesHeight, type Measuring, textBox, words } from './measuring.ts'
import type { Strip, StructureStep } from './strip.ts'
import type { TableRowContent, TextBox } from './strip-content.ts'

/** Space between columns. */
const COLUMN_GAP_PT = 14
const HEAD_PAD_PT = 3
/** A column gives up width for the widest word of another only down to this part of its own. */
const MOST_GIVEN = 0.4
/** Words wider than this part of the table are broken rather than given the room. */
const WIDEST_WORD_SHARE = 0.68

interface Column {
  readonly xPt: number
  readonly widthPt: number
  readonly align: 'start' | 'end'
}

interface TableSetting {
  readonly measuring: Measuring
  readonly columns: readonly Column[]
  readonly table: StructureStep
}

/** A table: a head that comes again on each page, rows that are never split unless one is higher than a page. */
export function measureTable(block: TableBlock, measuring: Measuring): readonly Strip[] {
  const columns = columnsOf(block, measuring)
  const table: StructureStep = { id: measuring.nextId(), tag: 'Table', alt: block.summary }
  const setting = { measuring, columns, table }
  const titles = block.columns.map((column) => words(column.title))
  const head = rowStrip(boxes(titles, TYPE.columnTitle, setting), {
    ...setting,
    role: 'head',
    repeat: null,
    first: true,
  })
  const hasHead = block.columns.some((column) => column.title !== '')
  const roomPt = measuring.paper.contentHeightPt - (hasHead ? head.heightPt : 0)
  const rows = block.rows.flatMap((row, i) => {
    const style: TextStyle = row.total === true ? { ...measuring.setting.cell, face: 'strong' } : measuring.setting.cell
    const parts = splitTall(boxes(row.cells, style, setting), roomPt - 2 * measuring.setting.rowPadPt)
    return parts.map((cells, part): Strip => {
      const role = row.total === true ? 'total' : 'body'
      const strip = rowStrip(cells, { ...setting, role, repeat: hasHead ? head : null, first: false })
      const stays = part === 0 && staysWithRowBefore(i, block)
      const anchors = part === 0 && row.anchor !== undefined && measuring.claim(row.anchor) ? [row.anchor] : []
      return { ...strip, breakBefore: stays ? 'never' : 'free', anchors }
    })
  })
  const [first, ...others] = rows
  if (hasHead) return [head, ...rows]
  return first === undefined ? [] : [{ ...first, gapBeforePt: head.gapBeforePt }, ...others]
}

/** A head is not left alone at the foot of a page, nor a total at the top of one; at either end two rows stay together. */
function staysWithRowBefore(index: number, block: TableBlock): boolean {
  if (index === 0) return block.columns.some((column) => column.title !== '')
  if (block.rows[index - 1]?.leads === true) return true
  return index === 1 || index === block.rows.length - 1 || block.rows[index]?.total === true
}

/** Widths by weight; a column narrower than its widest word takes what it lacks from those with room to spare. */
function columnsOf(block: TableBlock, measuring: Measuring): readonly Column[] {
  const gapsPt = COLUMN_GAP_PT * Math.max(0, block.columns.length - 1)
  const roomPt = measuring.paper.contentWidthPt - gapsPt
  const weights = block.columns.reduce((sum, column) => sum + column.weight, 0) || 1
  const shares = block.columns.map((column) => (column.weight / weights) * roomPt)
  const needed = block.columns.map((column, i) => {
    const cells = block.rows.map((row) => measuring.typesetter.widestWordPt(row.cells[i] ?? [], measuring.setting.cell))
    const title = measuring.typesetter.widestWordPt(words(column.title), TYPE.columnTitle)
    const strong = block.rows.some((row) => row.total === true) ? 1.05 : 1
    return Math.min(Math.max(title, ...cells) * strong + 0.5, roomPt * WIDEST_WORD_SHARE)
  })
  const lacking = shares.reduce((sum, share, i) => sum + Math.max(0, (needed[i] ?? 0) - share), 0)
  const spare = shares.map((share, i) => Math.max(0, Math.min(share - (needed[i] ?? 0), share * (1 - MOST_GIVEN))))
  const spareSum = spare.reduce((sum, part) => sum + part, 0)
  const met = lacking === 0 ? 0 : Math.min(1, spareSum / lacking)
  let x = 0
  return block.columns.map((column, i) => {
    const share = shares[i] ?? 0
    const wants = Math.max(0, (needed[i] ?? 0) - share)
    const gives = spareSum === 0 ? 0 : ((spare[i] ?? 0) / spareSum) * lacking * met
    const widthPt = share + wants * met - gives
    const placed = { xPt: x, widthPt, align: column.align }
    x += widthPt + COLUMN_GAP_PT
    return placed
  })
}

function boxes(cells: readonly Text[], style: TextStyle, setting: TableSetting): readonly TextBox[] {
  return setting.columns.map((column, i) => textBox(setting.measuring, cells[i] ?? [], { style, yPt: 0, ...column }))
}

/** Rows higher than a page can only be split: line by line, all cells at once. */
function splitTall(cells: readonly TextBox[], mostPt: number): readonly (readonly TextBox[])[] {
  const parts: TextBox[][] = []
  let rest = cells
  do {
    const taken = rest.map((cell) => ({ ...cell, lines: upTo(cell.lines, mostPt) }))
    parts.push(taken)
    rest = rest.map((cell, i) => ({ ...cell, lines: cell.lines.slice(taken[i]?.lines.length ?? 0) }))
  } while (rest.some((cell) => cell.lines.length > 0))
  return parts
}

function upTo(lines: readonly TextLine[], mostPt: number): readonly TextLine[] {
  let heightPt = 0
  const end = lines.findIndex((line) => (heightPt += line.heightPt) > mostPt)
  return end === -1 ? lines : lines.slice(0, Math.max(1, end))
}

interface RowSetting extends TableSetting {
  readonly role: TableRowContent['role']
  readonly repeat: Strip | null
  readonly first: boolean
}

function rowStrip(cells: readonly TextBox[], row: RowSetting): Strip {
  const padPt = row.role === 'head' ? HEAD_PAD_PT : row.measuring.setting.rowPadPt
  const textPt = Math.max(0, ...cells.map((cell) => linesHeight(cell.lines)))
  const within = row.measuring.within
  return {
    heightPt: textPt + 2 * padPt,
    stretchPt: 0,
    gapBeforePt: row.first ? row.measuring.setting.tableGapPt : 0,
    breakBefore: 'free',
    repeat: row.repeat,
    content: {
      kind: 'table-row',
      role: row.role,
      // Titles of a head stand on its foot, whatever their number of lines.
      cells: cells.map((cell) => ({
        ...cell,
        yPt: padPt + (row.role === 'head' ? textPt - linesHeight(cell.lines) : 0),
      })),
    },
    structure: [...within, row.table, { id: row.measuring.nextId(), tag: 'TR' }],
    anchors: [],
    outline: null,
  }
}
