import type { PhotoCard, PhotoCardsBlock, Text } from '../../../../app/packet/document.ts'
import { TYPE } from '../text/text-style.ts'
import { graphemesOf, plainText } from '../text/text-atoms.ts'
import { linesHeight, type Measuring, textBox } from './measuring.ts'
import type { Strip } from './strip.ts'
import type { MeasuredCard, PhotoRowContent } from './strip-content.ts'

const COLUMN_GAP_PT = 18
const ROW_GAP_PT = 16
const TITLE_GAP_PT = 5
const LINES_GAP_PT = 2
/** A first row shares its page with a heading: rows may be so much lower than an even share of the page. */
const LOWEST_SHARE = 0.86

interface CardPlan {
  readonly columns: 1 | 2
  readonly rows: number
  readonly pictureShare: number
  readonly insetPt: number
  readonly lowestPicturePt: number
  readonly textStands: PhotoRowContent['textStands']
  readonly insetStands: 'beside-lines' | 'under-lines' | 'beside-picture'
}

/** How cards are laid out, by their number on a page. */
const CARD_PLANS = {
  2: {
    columns: 1,
    rows: 2,
    pictureShare: 0.7,
    insetPt: 118,
    lowestPicturePt: 190,
    textStands: 'beside',
    insetStands: 'under-lines',
  },
  4: {
    columns: 2,
    rows: 2,
    pictureShare: 1,
    insetPt: 74,
    lowestPicturePt: 120,
    textStands: 'below',
    insetStands: 'beside-lines',
  },
  6: {
    columns: 2,
    rows: 3,
    pictureShare: 1,
    insetPt: 70,
    lowestPicturePt: 84,
    textStands: 'below',
    insetStands: 'beside-picture',
  },
} as const satisfies Record<PhotoCardsBlock['perPage'], CardPlan>

/** Photo cards in rows: pictures of a row are equally high and get what its longest text leaves. */
export function measurePhotoCards(block: PhotoCardsBlock, measuring: Measuring): readonly Strip[] {
  const plan: CardPlan = CARD_PLANS[block.perPage]
  const rows: PhotoCard[][] = []
  block.cards.forEach((card, i) => {
    if (i % plan.columns === 0) rows.push([])
    rows.at(-1)?.push(card)
  })
  return rows.map((row, i) => ({ ...rowStrip(row, plan, measuring), gapBeforePt: i === 0 ? 10 : ROW_GAP_PT }))
}

function rowStrip(row: readonly PhotoCard[], plan: CardPlan, measuring: Measuring): Strip {
  const pagePt = measuring.paper.contentHeightPt
  const columnPt = (measuring.paper.contentWidthPt - COLUMN_GAP_PT * (plan.columns - 1)) / plan.columns
  const cards = row.map((card, i) =>
    measureClamped(card, i * (columnPt + COLUMN_GAP_PT), { plan, measuring, columnPt }),
  )
  const evenPt = (pagePt - ROW_GAP_PT * (plan.rows - 1)) / plan.rows
  const textPt = Math.max(...cards.map((card) => card.textPt))
  const titlePt = Math.max(...cards.map((card) => linesHeight(card.measured.title.lines))) + TITLE_GAP_PT
  const neededPt =
    plan.textStands === 'below' ? textPt + plan.lowestPicturePt : titlePt + Math.max(textPt, plan.lowestPicturePt)
  const heightPt = Math.min(pagePt, Math.max(neededPt, evenPt * LOWEST_SHARE))
  return {
    heightPt,
    stretchPt: Math.max(0, evenPt - heightPt),
    gapBeforePt: ROW_GAP_PT,
    breakBefore: 'free',
    repeat: null,
    content: {
      kind: 'photo-row',
      cards: cards.map((card) => card.measured),
      pictureWidthPt: columnPt * plan.pictureShare,
      textHeightPt: textPt,
      textStands: plan.textStands,
      titleHeightPt: titlePt,
    },
    structure: measuring.within,
    anchors: [],
    outline: null,
  }
}

interface CardSetting {
  readonly plan: CardPlan
  readonly measuring: Measuring
  readonly columnPt: number
}

interface CardMeasure {
  readonly measured: MeasuredCard
  readonly textPt: number
}

function measureCard(card: PhotoCard, xPt: number, setting: CardSetting): CardMeasure {
  const { plan, measuring, columnPt } = setting
  const beside = plan.textStands === 'beside'
  const titleTop = beside ? 0 : TITLE_GAP_PT
  const title = textBox(measuring, card.title, { style: TYPE.caption, xPt: 0, yPt: titleTop, widthPt: columnPt })
  const linesX = beside ? columnPt * plan.pictureShare + 14 : 0
  const insetBesideLines = card.inset !== null && plan.insetStands === 'beside-lines' ? plan.insetPt + 8 : 0
  const linesWidth = columnPt - linesX - insetBesideLines
  const linesTop = beside ? 0 : titleTop + linesHeight(title.lines) + LINES_GAP_PT
  let y = linesTop
  const lines = card.lines.map((line) => {
    const box = textBox(measuring, line, { style: TYPE.captionLine, xPt: linesX, yPt: y, widthPt: linesWidth })
    y += linesHeight(box.lines)
    return box
  })
  const inset = card.inset === null ? null : insetPlace(plan, { columnPt, linesX, linesTop, linesEnd: y })
  const insetEnd = inset === null || inset.besidePicture ? 0 : inset.yPt + inset.sizePt
  return { measured: { card, xPt, title, lines, inset }, textPt: Math.max(y, insetEnd) }
}

function insetPlace(
  plan: CardPlan,
  at: { columnPt: number; linesX: number; linesTop: number; linesEnd: number },
): NonNullable<MeasuredCard['inset']> {
  const sizePt = plan.insetPt
  switch (plan.insetStands) {
    case 'beside-lines':
      return { xPt: at.columnPt - sizePt, yPt: at.linesTop + 2, sizePt, besidePicture: false }
    case 'under-lines':
      return { xPt: at.linesX, yPt: at.linesEnd + 10, sizePt, besidePicture: false }
    case 'beside-picture':
      return { xPt: at.columnPt - sizePt, yPt: 0, sizePt, besidePicture: true }
  }
}

/** A card whose text would not fit on a page of its own has its caption cut, with an ellipsis; any other is left alone. */
function measureClamped(card: PhotoCard, xPt: number, setting: CardSetting): CardMeasure {
  const whole = measureCard(card, xPt, setting)
  if (fitsPage(whole, setting)) return whole
  const cutTo = (graphemes: number) => measureCard({ ...card, title: cut(card.title, graphemes) }, xPt, setting)
  let [low, high] = [0, graphemesOf(plainText(card.title)).length]
  while (low < high) {
    const middle = Math.ceil((low + high) / 2)
    if (fitsPage(cutTo(middle), setting)) low = middle
    else high = middle - 1
  }
  return cutTo(low)
}

function fitsPage(card: CardMeasure, { plan, measuring }: CardSetting): boolean {
  const mostPt = measuring.paper.contentHeightPt - plan.lowestPicturePt - 2 * TITLE_GAP_PT
  if (plan.textStands === 'below') return card.textPt <= mostPt
  return linesHeight(card.measured.title.lines) + Math.max(0, card.textPt - plan.lowestPicturePt) <= mostPt
}

function cut(text: Text, graphemes: number): Text {
  let left = graphemes
  const kept = text.map((inline) => {
    const parts = graphemesOf(inline.text).slice(0, left)
    left -= parts.length
    return { ...inline, text: parts.join('') }
  })
  return [...kept.filter((inline) => inline.text !== ''), { text: '…' }]
}
