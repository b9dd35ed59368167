import { Writable } from 'node:stream'
import { beforeAll, describe, expect, it, vi } from 'vitest'
import type { PacketDocument } from '../../../app/packet/document.ts'
import { hasTool, objectsOf, pageAsSvg, renderToBytes, runOn } from './fixtures/pdf-tools.ts'
import { madePictures } from './fixtures/made-pictures.ts'
import { squareRoof } from './fixtures/square-roof.ts'
import { stormWalkDocument } from './fixtures/storm-walk-document.ts'
import { renderPacket } from './render-packet.ts'

// Whole packets and other programs take their time on a busy machine.
vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 })

const noQpdf = !hasTool('qpdf')
const noPoppler = !hasTool('pdftotext') || !hasTool('pdftocairo') || !hasTool('pdfinfo')

function planOnly(paper: PacketDocument['paper'] = 'letter'): PacketDocument {
  const plan = { kind: 'plan', drawing: squareRoof(), alt: 'A roof 40 by 30 ft.', size: 'page' } as const
  return {
    ...stormWalkDocument({ paper }),
    watermark: null,
    sections: [{ key: 'plan', title: 'Roof plan', start: 'new-page', blocks: [plan] }],
  }
}

describe('a rendered packet', () => {
  let packet: Awaited<ReturnType<typeof renderToBytes>>
  beforeAll(async () => {
    packet = await renderToBytes(stormWalkDocument())
  })

  it('tells its outline in reading order, with pages', () => {
    const titles = packet.outline.map((entry) => entry.title)
    expect(titles.slice(0, 5)).toEqual(['Cover', 'Summary', 'Contents', 'Roof plan', 'Findings'])
    expect(packet.outline.map((entry) => entry.page)).toEqual(
      packet.outline.map((entry) => entry.page).toSorted((a, b) => a - b),
    )
    expect(packet.outline[0]?.page).toBe(1)
  })

  it('tells what could not be set: characters without a font, links without a target', () => {
    expect(packet.missingCharacters).toEqual(['\u{12000}'])
    expect(packet.brokenLinks).toEqual(['no-such-place'])
  })

  it('is the same bytes for the same inputs', async () => {
    const again = await renderToBytes(stormWalkDocument())
    expect(again.bytes.equals(packet.bytes)).toBe(true)
  })

  it.skipIf(noQpdf)('passes the check of qpdf (needs qpdf)', () => {
    expect(runOn(packet.bytes, 'qpdf', ['--check', 'PDF'])).toContain('No syntax or stream encoding errors found')
  })

  it.skipIf(noPoppler)('holds its text, page by page (needs poppler)', () => {
    const pages = runOn(packet.bytes, 'pdftotext', ['-layout', 'PDF', '-']).split('\f')
    expect(pages[3]).toContain('Roof plan')
    expect(pages[3]).toContain('Job 26-014, Invented Lane')
    expect(pages[3]).toContain(`page 4 of ${packet.pages}`)
    expect(pages[2]).toMatch(/Findings\s+5/)
    expect(pages.join('\n')).toContain('Жёлтый кот, ≥ 40 lbf → lifted.')
    expect(pages.join('\n')).toContain('شقوق في بلاط القرميد على السفح')
  })

  it.skipIf(noPoppler)('shows its title, in XML as in the info dictionary (needs poppler)', () => {
    expect(runOn(packet.bytes, 'pdfinfo', ['PDF'])).toMatch(/Title:\s+Roof inspection record & plan, <sample>/)
    expect(runOn(packet.bytes, 'pdfinfo', ['-meta', 'PDF'])).toContain(
      'Roof inspection record &amp; plan, &lt;sample&gt;',
    )
  })

  it.skipIf(noQpdf)('has a target for every link, and names in the order that viewers search in (needs qpdf)', () => {
    const objects = objectsOf(packet.bytes)
    const names = objects.flatMap((object) => namesIn(object['/Dests']))
    const wanted = objects.filter((object) => object['/S'] === '/GoTo').map((object) => String(object['/D']))
    expect(wanted.length).toBeGreaterThan(100)
    expect(wanted.filter((name) => !names.includes(name))).toEqual([])
    expect(names).toEqual(names.toSorted())
    expect(names).toEqual(expect.arrayContaining(['u:photo-P-001', 'u:pin-F-12', 'u:finding-F-12', 'u:plan']))
  })

  it.skipIf(noQpdf)('keeps the rules of PDF/A-2a that can be read off its objects (needs qpdf; ISO 19005-2)', () => {
    const objects = objectsOf(packet.bytes)
    const catalogue = objects.find((object) => object['/Type'] === '/Catalog')
    expect(catalogue).toMatchObject({ '/Lang': 'u:en-US' })
    expect(Object.keys(catalogue ?? {})).toEqual(
      expect.arrayContaining(['/Metadata', '/OutputIntents', '/StructTreeRoot', '/MarkInfo', '/PageLabels']),
    )
    const descriptors = objects.filter((object) => object['/Type'] === '/FontDescriptor')
    expect(descriptors.length).toBeGreaterThan(3)
    expect(descriptors.every((font) => font['/FontFile2'] !== undefined)).toBe(true)
    const links = objects.filter((object) => object['/Subtype'] === '/Link')
    expect(links.every((link) => link['/F'] === 4 && link['/StructParent'] !== undefined)).toBe(true)
    const figures = objects.filter((object) => object['/S'] === '/Figure')
    expect(figures.length).toBeGreaterThan(24)
    expect(figures.every((figure) => String(figure['/Alt']).length > 5)).toBe(true)
    // Transparency, encryption and script are not used at all.
    expect(
      objects.filter(
        (object) =>
          object['/Type'] === '/ExtGState' || object['/S'] === '/JavaScript' || object['/Filter'] === '/Standard',
      ),
    ).toEqual([])
  })

  it.skipIf(noPoppler)('has its headings, lists, tables and figures in the structure (needs poppler)', () => {
    const structure = runOn(packet.bytes, 'pdfinfo', ['-struct', 'PDF'])
    const tags = [
      'Document',
      'Sect',
      'H1',
      'H2',
      'P',
      'L',
      'LI',
      'Table',
      'TR',
      'TH',
      'TD',
      'Figure',
      'TOC',
      'TOCI',
      'Link',
    ]
    expect(tags.filter((tag) => !new RegExp(`^\\s*${tag}\\b`, 'm').test(structure))).toEqual([])
  })

  it.skipIf(noQpdf)('reads the head of a table out once, however often it is drawn (needs qpdf)', () => {
    const heads = objectsOf(packet.bytes).filter((object) => object['/S'] === '/TH')
    // Six columns of findings, four of files, eight labelled facts on the cover.
    expect(heads).toHaveLength(6 + 4 + 8)
  })
})

function namesIn(tree: unknown): readonly string[] {
  if (typeof tree !== 'object' || tree === null || !('/Names' in tree) || !Array.isArray(tree['/Names'])) return []
  return tree['/Names'].filter((_, i) => i % 2 === 0).map(String)
}

describe('the plan on paper', () => {
  /** Lengths in points of all straight strokes of a page, after every transformation, as Cairo sees them. */
  function strokeLengths(svg: string): readonly number[] {
    const paths = [...svg.matchAll(/<path[^>]*stroke-width[^>]*>/g)].map(([path]) => path)
    return paths.flatMap((path) => {
      const [, x1, y1, x2, y2] = / d="M ([-\d.]+) ([-\d.]+) L ([-\d.]+) ([-\d.]+)\s*"/.exec(path) ?? []
      const [a = 1, b = 0, c = 0, d = 1] = (/matrix\(([^)]*)\)/.exec(path)?.[1] ?? '1,0,0,1').split(/[ ,]+/).map(Number)
      const [dx, dy] = [Number(x2) - Number(x1), Number(y2) - Number(y1)]
      return Number.isNaN(dx) ? [] : [Math.hypot(a * dx + c * dy, b * dx + d * dy)]
    })
  }

  it.skipIf(noPoppler)(
    'is true to its scale: 40 ft at 1/8 in to the foot are 5 in, 360 pt (needs poppler)',
    async () => {
      const { bytes } = await renderToBytes(planOnly())
      expect(runOn(bytes, 'pdftotext', ['PDF', '-'])).toContain('Scale 1/8 in = 1 ft')
      const lengths = strokeLengths(pageAsSvg(bytes, 1))
      expect(lengths.filter((length) => Math.abs(length - 360) < 0.02)).toHaveLength(2)
      // The other two eaves, 30 ft.
      expect(lengths.filter((length) => Math.abs(length - 270) < 0.02)).toHaveLength(2)
    },
  )

  it.skipIf(noPoppler)('prints to a ratio on A4: 40 ft at 1 : 100 are 121.92 mm (needs poppler)', async () => {
    const { bytes } = await renderToBytes(planOnly('a4'))
    expect(runOn(bytes, 'pdftotext', ['PDF', '-'])).toContain('Scale 1 : 100')
    // 40 ft are 12.192 m; a hundredth of it in points of 1/72 in.
    const pt = (0.12192 / 0.0254) * 72
    expect(strokeLengths(pageAsSvg(bytes, 1)).filter((length) => Math.abs(length - pt) < 0.02)).toHaveLength(2)
  })
})

describe('paper', () => {
  it.skipIf(noPoppler)('is US Letter, or A4 by choice (needs poppler)', async () => {
    const letter = await renderToBytes(planOnly())
    const a4 = await renderToBytes(planOnly('a4'))
    expect(runOn(letter.bytes, 'pdfinfo', ['PDF'])).toContain('612 x 792 pts (letter)')
    expect(runOn(a4.bytes, 'pdfinfo', ['PDF'])).toContain('595.28 x 841.89 pts (A4)')
  })
})

describe('rendering', () => {
  const sink = () => new Writable({ write: (_chunk, _encoding, done) => done() })

  it('tells each page as it is drawn', async () => {
    const pages: number[] = []
    const rendered = await renderPacket(
      stormWalkDocument(),
      { pictures: madePictures(), out: sink() },
      { onPage: (page) => pages.push(page) },
    )
    expect(pages).toEqual(Array.from({ length: rendered.pages }, (_, i) => i + 1))
  })

  it('stops between two pages when it is called off, and gives the stream up', async () => {
    const call = new AbortController()
    const out = sink()
    const onPage = (page: number) => {
      if (page === 2) call.abort(new Error('called off'))
    }
    await expect(
      renderPacket(stormWalkDocument(), { pictures: madePictures(), out }, { onPage, signal: call.signal }),
    ).rejects.toThrow('called off')
    expect(out.destroyed).toBe(true)
  })

  it('fails with the stream', async () => {
    const out = new Writable({ write: (_chunk, _encoding, done) => done(new Error('disk full')) })
    await expect(renderPacket(stormWalkDocument(), { pictures: madePictures(), out })).rejects.toThrow('disk full')
  })

  it('makes one page of an empty document', async () => {
    const { pages } = await renderToBytes({ ...stormWalkDocument(), sections: [] })
    expect(pages).toBe(1)
  })

  it.skipIf(noPoppler)('says in place of a picture that it cannot be shown (needs poppler)', async () => {
    const out = await renderToBytes(stormWalkDocument())
    expect(runOn(out.bytes, 'pdftotext', ['PDF', '-']).replaceAll(/\s+/g, ' ')).toContain('This picture can’t be shown')
  })
})
