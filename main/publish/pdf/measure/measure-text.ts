import type { HeadingBlock, ListBlock, ParagraphBlock } from '../../../../app/packet/document.ts'
import type { BreakBefore } from '../paginate/paginate.ts'
import { TYPE } from '../text/text-style.ts'
import type { TextLine } from '../text/typeset.ts'
import { type Measuring, textBox, words } from './measuring.ts'
import type { Strip, StructureStep } from './strip.ts'
import type { LinesContent } from './strip-content.ts'

const BULLET_INDENT_PT = 13
const CAUTION_INDENT_PT = 12

const HEADINGS = {
  1: { style: TYPE.h1, tag: 'H1', gapPt: 24 },
  2: { style: TYPE.h2, tag: 'H2', gapPt: 20 },
  3: { style: TYPE.h3, tag: 'H3', gapPt: 14 },
} as const

/** A heading: lines that stay together. What follows stays with it, which the order of blocks takes care of. */
export function measureHeading(block: HeadingBlock, measuring: Measuring): readonly Strip[] {
  const look = HEADINGS[block.level]
  const step: StructureStep = { id: measuring.nextId(), tag: look.tag }
  const box = { style: look.style, xPt: 0, yPt: 0, widthPt: measuring.paper.contentWidthPt }
  const { lines } = textBox(measuring, words(block.text), box)
  const setting = {
    measuring,
    step,
    widthPt: box.widthPt,
    indentPt: 0,
    gapPt: look.gapPt * measuring.setting.headingGap,
    sign: null,
    together: true,
  }
  const entry = measuring.headings.get(block) ?? null
  const anchors = [block.anchor, entry?.anchor].filter(
    (anchor): anchor is string => anchor !== undefined && measuring.claim(anchor),
  )
  return lineStrips(lines, setting).map((strip, i) => (i === 0 ? { ...strip, outline: entry, anchors } : strip))
}

/** A paragraph, at least two lines of it on either page. */
export function measureParagraph(block: ParagraphBlock, measuring: Measuring): readonly Strip[] {
  const caution = block.style === 'caution'
  const indentPt = caution ? CAUTION_INDENT_PT : 0
  const widthPt = Math.min(measuring.setting.readableWidthPt, measuring.paper.contentWidthPt) - indentPt
  const style = block.style === 'body' ? measuring.setting.body : TYPE[block.style]
  const { lines } = textBox(measuring, block.text, { style, xPt: indentPt, yPt: 0, widthPt })
  const step: StructureStep = { id: measuring.nextId(), tag: 'P' }
  return lineStrips(lines, {
    measuring,
    step,
    widthPt,
    indentPt,
    gapPt: caution ? 10 : 7,
    sign: caution ? 'caution-bar' : null,
    together: false,
  })
}

/** A list, its items marked with bullets. */
export function measureList(block: ListBlock, measuring: Measuring): readonly Strip[] {
  const list: StructureStep = { id: measuring.nextId(), tag: 'L' }
  const widthPt = Math.min(measuring.setting.readableWidthPt, measuring.paper.contentWidthPt) - BULLET_INDENT_PT
  return block.items.flatMap((item, i) => {
    const { lines } = textBox(measuring, item, { style: measuring.setting.body, xPt: 0, yPt: 0, widthPt })
    const within = [...measuring.within, list, { id: measuring.nextId(), tag: 'LI' } as const]
    const step: StructureStep = { id: measuring.nextId(), tag: 'LBody' }
    const inItem = { ...measuring, within }
    return lineStrips(lines, {
      measuring: inItem,
      step,
      widthPt,
      indentPt: BULLET_INDENT_PT,
      gapPt: measuring.setting.itemGapPt + (i === 0 ? 3 : 0),
      sign: 'bullet',
      together: false,
    })
  })
}

interface LineSetting {
  readonly measuring: Measuring
  readonly step: StructureStep
  readonly widthPt: number
  readonly indentPt: number
  readonly gapPt: number
  readonly sign: LinesContent['sign']
  /** No page break between the lines. */
  readonly together: boolean
}

function lineStrips(lines: readonly TextLine[], setting: LineSetting): readonly Strip[] {
  return lines.map((line, i) => ({
    heightPt: line.heightPt,
    stretchPt: 0,
    gapBeforePt: i === 0 ? setting.gapPt : 0,
    breakBefore: setting.together && i > 0 ? 'never' : breakBeforeLine(i, lines.length),
    repeat: null,
    content: {
      kind: 'lines',
      box: { xPt: setting.indentPt, yPt: 0, widthPt: setting.widthPt, align: 'start', lines: [line] },
      sign: setting.sign === 'bullet' && i > 0 ? null : setting.sign,
    },
    structure: [...setting.measuring.within, setting.step],
    anchors: [],
    outline: null,
  }))
}

/** Two lines at least stay together at either end of a paragraph. */
function breakBeforeLine(index: number, count: number): BreakBefore {
  if (index === 0) return 'free'
  return index === 1 || index === count - 1 ? 'never' : 'free'
}
