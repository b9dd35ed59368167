import { describe, expect, it } from 'vitest'
import { drawMarkup } from '../../../../app/evidence/markup-drawing.ts'
import { marksSchema } from '../../../../app/evidence/markup.ts'
import { photoIdSchema } from '../../../../app/job/ids.ts'
import type { PacketDocument } from '../../../../app/packet/document.ts'
import { hasTool, pageAsSvg, renderToBytes, runOn } from '../fixtures/pdf-tools.ts'
import { stormWalkDocument } from '../fixtures/storm-walk-document.ts'

const at = (xPx: number, yPx: number) => ({ xPx, yPx })
const marks = marksSchema.parse([
  { kind: 'arrow', id: 'a', from: at(100, 100), to: at(900, 500), colour: 'yellow' },
  { kind: 'scale', id: 's', from: at(200, 800), to: at(1400, 800), lengthIn: 12 },
  { kind: 'measure', id: 'm', from: at(200, 1000), to: at(800, 1000), scaleId: 's', colour: 'sky-blue' },
  { kind: 'text', id: 't', at: at(300, 300), text: 'Nail hole bare' },
])

/** One picture on a page, with or without its marks. */
function onePicture(isMarked: boolean): PacketDocument {
  const drawing = drawMarkup(marks, { widthPx: 1600, heightPx: 1200 })
  return {
    ...stormWalkDocument({ paper: 'letter' }),
    watermark: null,
    sections: [
      {
        key: 'cover',
        title: 'Cover',
        start: 'new-page',
        blocks: [
          {
            kind: 'picture',
            photoId: photoIdSchema.parse('photo-1'),
            ...(isMarked ? { marks: drawing } : {}),
            alt: 'A picture.',
            caption: [],
            heightIn: { least: 3, most: 5 },
          },
        ],
      },
    ],
  }
}

const missing = ['qpdf', 'pdftotext', 'pdftocairo'].filter((tool) => !hasTool(tool))
const note = missing.length === 0 ? '' : ` (skipped: no ${missing.join(', ')})`

describe.skipIf(missing.length > 0)(`marks in a packet${note}`, { timeout: 60_000 }, () => {
  it('are vectors and text over the picture, in a sound PDF', async () => {
    const { bytes, missingCharacters } = await renderToBytes(onePicture(true))
    expect(runOn(bytes, 'qpdf', ['--check', 'PDF'])).toContain('No syntax or stream encoding errors found')
    expect(missingCharacters).toEqual([])
    const svg = pageAsSvg(bytes, 1)
    const plain = pageAsSvg((await renderToBytes(onePicture(false))).bytes, 1)
    const paths = (drawn: string) => drawn.match(/<path/g)?.length ?? 0
    expect(paths(svg)).toBeGreaterThan(paths(plain) + 10)
    // Yellow of the arrow and sky blue of the measured line, in parts of a hundred, as Cairo writes them.
    expect(svg).toMatch(/rgb\(94\.\d+%,\s*89\.\d+%,\s*25\.\d+%\)/)
    expect(svg).toMatch(/rgb\(33\.\d+%,\s*70\.\d+%,\s*91\.\d+%\)/)
  })

  it('say each word once, though letters are drawn twice for their edge', async () => {
    const words = runOn((await renderToBytes(onePicture(true))).bytes, 'pdftotext', ['-layout', 'PDF', '-'])
    for (const said of ['Nail hole bare', '12 in, S1', '6.0']) expect(words.split(said)).toHaveLength(2)
  })
})
