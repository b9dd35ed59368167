import {
  pinAnchor,
  type PictureBlock,
  type PlanBlock,
  type PlotBlock,
  type RuleBlock,
  type SignatureBlock,
} from '../../../../app/packet/document.ts'
import { TYPE } from '../text/text-style.ts'
import { linesHeight, type Measuring, plainStrip, textBox, words } from './measuring.ts'
import type { Strip } from './strip.ts'

const PT_PER_IN = 72
/** A plan that fills a page shares it with a heading at most. */
export const PAGE_PLAN_SHARE = 0.8
/** Between a picture and its caption. */
const PICTURE_GAP_PT = 5
const SIGNATURE_ROW_PT = 54
const SIGNATURE_GAP_PT = 28

/** A plan, at a height of its own or filling the page. Its pins are link targets where no plan before it had them. */
export function measurePlan(block: PlanBlock, measuring: Measuring): readonly Strip[] {
  const pagePt = measuring.paper.contentHeightPt
  const pins = block.drawing.pins.filter((pin) => measuring.claim(pinAnchor(pin.label))).map((pin) => pin.label)
  const content = { kind: 'plan', drawing: block.drawing, alt: block.alt, anchoredPins: new Set(pins) } as const
  if (block.size === 'page') {
    const heightPt = pagePt * PAGE_PLAN_SHARE
    return [plainStrip(measuring, content, { heightPt, stretchPt: pagePt - heightPt, gapBeforePt: 8 })]
  }
  return [
    plainStrip(measuring, content, { heightPt: Math.min(block.size.heightIn * PT_PER_IN, pagePt), gapBeforePt: 10 }),
  ]
}

/** A plot at its own size, or as much smaller as the page is narrower. */
export function measurePlot({ plot }: PlotBlock, measuring: Measuring): readonly Strip[] {
  const scale = Math.min(1, measuring.paper.contentWidthPt / plot.widthPt)
  return [plainStrip(measuring, { kind: 'plot', plot, scale }, { heightPt: plot.heightPt * scale, gapBeforePt: 8 })]
}

/** A picture at its own proportions, as large as its height and the page allow, with its caption. */
export function measurePicture(block: PictureBlock, measuring: Measuring): readonly Strip[] {
  const widestPt = measuring.paper.contentWidthPt
  const { widthPx, heightPx } = measuring.pictureSizes.get(block.photoId) ?? { widthPx: 4, heightPx: 3 }
  const caption = textBox(measuring, block.caption, { style: TYPE.small, xPt: 0, yPt: 0, widthPt: widestPt })
  const captionPt = block.caption.length === 0 ? 0 : linesHeight(caption.lines) + PICTURE_GAP_PT
  const mostPt = Math.min(
    block.heightIn.most * PT_PER_IN,
    measuring.paper.contentHeightPt - captionPt,
    (widestPt * heightPx) / widthPx,
  )
  const leastPt = Math.min(block.heightIn.least * PT_PER_IN, mostPt)
  const { photoId, alt } = block
  const marks = block.marks === undefined ? {} : { marks: block.marks }
  return [
    plainStrip(
      measuring,
      { kind: 'picture', photoId, ...marks, alt, widthToHeight: widthPx / heightPx, captionPt, caption },
      { heightPt: leastPt + captionPt, stretchPt: mostPt - leastPt, gapBeforePt: 12 },
    ),
  ]
}

/** Lines to sign on, two side by side, with what is known written above them. */
export function measureSignature(block: SignatureBlock, measuring: Measuring): readonly Strip[] {
  const widthPt = (measuring.paper.contentWidthPt - SIGNATURE_GAP_PT) / 2
  const cells = block.lines.map((line, i) => {
    const xPt = (i % 2) * (widthPt + SIGNATURE_GAP_PT)
    const ruleY = (Math.floor(i / 2) + 1) * SIGNATURE_ROW_PT - 16
    const value = textBox(measuring, words(line.value), { style: TYPE.body, xPt, yPt: 0, widthPt })
    const label = textBox(measuring, words(line.label), { style: TYPE.small, xPt, yPt: ruleY + 2, widthPt })
    return { xPt, yPt: ruleY, widthPt, label, value: { ...value, yPt: ruleY - 2 - linesHeight(value.lines) } }
  })
  const heightPt = Math.ceil(block.lines.length / 2) * SIGNATURE_ROW_PT
  return [plainStrip(measuring, { kind: 'signature', cells }, { heightPt, gapBeforePt: 12 })]
}

/** A hairline across the page. */
export function measureRule(_block: RuleBlock, measuring: Measuring): readonly Strip[] {
  return [plainStrip(measuring, { kind: 'rule' }, { heightPt: 1, gapBeforePt: 12 })]
}
