import type { PlanDrawing } from './plan-drawing.ts'
import type { PlanMark, SheetPoint } from './plan-sheet/marks.ts'
import { planSheet } from './plan-sheet/plan-sheet.ts'

/** Sheet of a standalone plan: what US Letter leaves inside margins of half an inch. */
const SHEET = { widthPt: 540, heightPt: 720, scales: 'us' } as const

/**
 * The plan as a standalone SVG: the same marks as in the packet, to a named scale that is true when printed at 100 %, with
 * a scale bar in feet. Text is escaped; each pin's marker carries its finding's label as a title.
 */
export function planToSvg(drawing: PlanDrawing): string {
  const sheet = planSheet(drawing, SHEET)
  const { widthPt, heightPt } = sheet
  const pins = sheet.targets.map(
    (target) =>
      `<rect x="${fixed(target.at.xPt - target.halfWidthPt)}" y="${fixed(target.at.yPt - target.halfHeightPt)}" ` +
      `width="${fixed(target.halfWidthPt * 2)}" height="${fixed(target.halfHeightPt * 2)}" fill-opacity="0">` +
      `<title>Finding ${escapeXml(target.pinLabel)}</title></rect>`,
  )
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" role="img" width="${widthPt / 72}in" height="${heightPt / 72}in" ` +
      `viewBox="0 0 ${widthPt} ${heightPt}" font-family="'Source Sans 3', 'Noto Sans', sans-serif">`,
    `<title>Roof plan, scale ${escapeXml(sheet.scale.name)}</title>`,
    `<rect width="${widthPt}" height="${heightPt}" fill="#FFFFFF"/>`,
    ...sheet.marks.map(markToSvg),
    ...pins,
    '</svg>',
    '',
  ].join('\n')
}

function markToSvg(mark: PlanMark): string {
  switch (mark.kind) {
    case 'path':
      return `<path d="${pathData(mark.points, mark.closed)}" ${paint(mark)}/>`
    case 'pill': {
      const { at, halfWidthPt, halfHeightPt } = mark
      return (
        `<rect x="${fixed(at.xPt - halfWidthPt)}" y="${fixed(at.yPt - halfHeightPt)}" width="${fixed(halfWidthPt * 2)}" ` +
        `height="${fixed(halfHeightPt * 2)}" rx="${fixed(halfHeightPt)}" ${paint(mark)}/>`
      )
    }
    case 'text': {
      const ground = mark.onWhite
        ? ' stroke="#FFFFFF" stroke-width="3" stroke-linejoin="round" paint-order="stroke"'
        : ''
      const weight = mark.weight === 'strong' ? ' font-weight="600"' : ''
      return (
        `<text x="${fixed(mark.at.xPt)}" y="${fixed(mark.at.yPt)}" font-size="${mark.sizePt}" text-anchor="${mark.align}" ` +
        `fill="${mark.colour}"${weight}${ground}>${escapeXml(mark.text)}</text>`
      )
    }
  }
}

function pathData(points: readonly SheetPoint[], closed: boolean): string {
  const steps = points.map((point, i) => `${i === 0 ? 'M' : 'L'}${fixed(point.xPt)} ${fixed(point.yPt)}`)
  return `${steps.join('')}${closed ? 'Z' : ''}`
}

function paint(mark: Extract<PlanMark, { kind: 'path' | 'pill' }>): string {
  const fill = `fill="${mark.fill ?? 'none'}"`
  if (mark.pen === null) return fill
  const dash = mark.pen.dashPt.length === 0 ? '' : ` stroke-dasharray="${mark.pen.dashPt.join(' ')}"`
  return `${fill} stroke="${mark.pen.colour}" stroke-width="${mark.pen.widthPt}" stroke-linejoin="round"${dash}`
}

function fixed(n: number): string {
  return String(Math.round(n * 100) / 100)
}

/** Characters that XML can't hold are dropped, those that mean something in it are written as references. */
function escapeXml(text: string): string {
  return text
    .replace(/[^\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]/gu, '')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
}
