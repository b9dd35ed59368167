import type { MarkShape, MarkupDrawing } from '../../../app/evidence/markup-drawing.ts'
import { typesetter } from '../pdf/text/typeset.ts'
import type { TextStyle } from '../pdf/text/text-style.ts'

/**
 * A photo's marks as an SVG of the picture's size, to be laid over it. Letters are outlines from the program's own fonts,
 * so that the copy looks alike on every machine.
 */
export function markupSvg(drawing: MarkupDrawing): string {
  const { widthPx, heightPx, shapes } = drawing
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${widthPx}" height="${heightPx}" viewBox="0 0 ${widthPx} ${heightPx}">`,
    '<g stroke-linejoin="round">',
    ...shapes.map((shape) => (shape.kind === 'path' ? pathSvg(shape) : textSvg(shape))),
    '</g></svg>',
  ].join('\n')
}

function pathSvg({ points, closed, fill, stroke }: Extract<MarkShape, { kind: 'path' }>): string {
  const steps = points.map(({ xPx, yPx }, i) => `${i === 0 ? 'M' : 'L'}${fixed(xPx)} ${fixed(yPx)}`).join('')
  const dashes =
    stroke !== null && stroke.dashPx.length > 0 ? ` stroke-dasharray="${stroke.dashPx.map(fixed).join(' ')}"` : ''
  const line =
    stroke === null
      ? ''
      : ` stroke="${stroke.colour}" stroke-width="${fixed(stroke.widthPx)}" stroke-linecap="${dashes === '' ? 'round' : 'butt'}"${dashes}`
  return `<path d="${steps}${closed ? 'Z' : ''}" fill="${fill ?? 'none'}"${line}/>`
}

function textSvg(shape: Extract<MarkShape, { kind: 'text' }>): string {
  const { at, align, sizePx, colour, edge } = shape
  const style: TextStyle = { sizePt: sizePx, leadingPt: sizePx, face: 'strong', colour }
  const [line] = typesetter().lines([{ text: shape.text }], style, Infinity)
  if (line === undefined) return ''
  const left = at.xPx - (align === 'middle' ? line.widthPt / 2 : 0)
  const letters = line.pieces.flatMap((piece) => {
    if (piece.glyphs === null) return []
    const { font, run } = piece.glyphs
    const scale = piece.sizePt / font.font.unitsPerEm
    let x = left + piece.xPt
    return run.glyphs.map((glyph) => {
      const dx = x + (glyph.xOffset / 1000) * piece.sizePt
      const dy = at.yPx - (glyph.yOffset / 1000) * piece.sizePt
      x += (glyph.advance / 1000) * piece.sizePt
      const outline = font.font.getGlyph(glyph.id).path.toSVG()
      // Widths inside the scaled letter count in font units.
      return `<path transform="translate(${fixed(dx)} ${fixed(dy)}) scale(${scale} ${-scale})" d="${outline}" stroke-width="${fixed(edge.widthPx / scale)}"/>`
    })
  })
  return [
    `<g fill="none" stroke="${edge.colour}">${letters.join('')}</g>`,
    `<g fill="${colour}" stroke="none">${letters.join('')}</g>`,
  ].join('')
}

function fixed(n: number): string {
  return String(Math.round(n * 100) / 100)
}
