import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { execFileSync } from 'node:child_process'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it, vi } from 'vitest'
import { buildPacket } from '../../../app/packet/build-packet.ts'
import type { PacketDocument } from '../../../app/packet/document.ts'
import { planRoom } from '../../../app/packet/plan-room.ts'
import { aCaseFile } from '../../../tests/builders/case-file.ts'
import { aPacketInput } from '../../../tests/builders/packet-input.ts'
import { facetsOf, hip } from '../../../tests/builders/whole-roofs.ts'
import { hasTool, renderToBytes, runOn } from './fixtures/pdf-tools.ts'
import { PAGE_PLAN_SHARE } from './measure/measure-rest.ts'
import { paperOf } from './paper.ts'

vi.setConfig({ testTimeout: 60_000 })

const DPI = 400
const PRINTER = 'pdftoppm'
const noPoppler = !hasTool(PRINTER) || !hasTool('pdftotext')
const MM_PER_PX = 25.4 / DPI

/** A page as another program prints it at 400 dots to the inch: rows of grey values (portable graymap). */
function printed(bytes: Buffer, page: number): { readonly width: number; readonly rows: readonly Uint8Array[] } {
  const folder = mkdtempSync(join(tmpdir(), 'plan-'))
  try {
    writeFileSync(join(folder, 'a.pdf'), bytes)
    const pages = ['-f', String(page), '-l', String(page)]
    execFileSync(PRINTER, ['-gray', '-r', String(DPI), ...pages, '-singlefile', 'a.pdf', 'a'], { cwd: folder })
    const file = readFileSync(join(folder, 'a.pgm'))
    const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(file.subarray(0, 40).toString('latin1'))
    if (head === null) throw new Error('The page is not drawn as a graymap.')
    const [width, height] = [Number(head[1]), Number(head[2])]
    const start = head[0].length
    return {
      width,
      rows: Array.from({ length: height }, (_, y) => file.subarray(start + y * width, start + (y + 1) * width)),
    }
  } finally {
    rmSync(folder, { recursive: true })
  }
}

/** The tag in the middle of an eave interrupts its line by less than this; other things stand farther off. */
const TAG_MM = 5

/** The longest dark stretch of a row from end to end, interrupted by a tag at most, millimetres. */
function longestMm(row: Uint8Array): number {
  let [longest, start, last] = [0, -1, -1]
  row.forEach((grey, x) => {
    if (grey >= 128) return
    if (last < 0 || (x - last) * MM_PER_PX > TAG_MM) start = x
    last = x
    longest = Math.max(longest, last - start + 1)
  })
  return longest * MM_PER_PX
}

/** Columns of a page, so that upright lines can be measured as level ones are. */
function columnsOf({ width, rows }: ReturnType<typeof printed>): readonly Uint8Array[] {
  return Array.from({ length: width }, (_, x) => Uint8Array.from(rows, (row) => row[x] ?? 255))
}

function hipPacket(size: readonly [number, number], paper: PacketDocument['paper']): PacketDocument {
  const whole = buildPacket(
    aPacketInput({
      caseFile: aCaseFile({ facets: facetsOf(hip(size[0], size[1], 5)) }),
      options: {
        paper,
        photosPerPage: 4,
        videosInBundle: 'small',
        obscuredOriginals: 'keep-back',
        cost: false,
        handovers: 'leave-out',
      },
    }),
  )
  return { ...whole, watermark: null, sections: whole.sections.filter(({ key }) => key === 'roof-plan') }
}

describe('an eave of the roof plan, measured on the printed page', () => {
  it.skipIf(noPoppler).each([
    // 60 ft at 3/32 in to the foot are 5.625 in; 40 ft are 3.75 in.
    { paper: 'letter', scale: '3/32 in = 1 ft', longMm: 5.625 * 25.4, shortMm: 3.75 * 25.4 },
    // 60 ft are 18,288 mm and 40 ft 12,192 mm; at 1 : 125 they are 146.304 and 97.536 mm.
    { paper: 'a4', scale: '1 : 125', longMm: 146.304, shortMm: 97.536 },
  ] as const)('is right within 0.2 mm at $scale (needs poppler)', async ({ paper, scale, longMm, shortMm }) => {
    const { bytes } = await renderToBytes(hipPacket([60, 40], paper))
    expect(runOn(bytes, 'pdftotext', ['-f', '1', '-l', '1', 'PDF', '-'])).toContain(`Scale ${scale}`)
    const page = printed(bytes, 1)
    // The outer half of an eave's line ends with the eave; at its inner half the lines that it meets lie beyond its ends.
    const isThere = (lines: readonly Uint8Array[], mm: number) =>
      lines.some((line) => Math.abs(longestMm(line) - mm) < 0.2)
    expect(isThere(page.rows, longMm)).toBe(true)
    expect(isThere(columnsOf(page), shortMm)).toBe(true)
    // Somewhat longer or shorter there is none: the check can tell.
    expect([-0.6, 0.6].some((byMm) => isThere(page.rows, longMm + byMm))).toBe(false)
  })
})

describe('a plan on several sheets', () => {
  it.skipIf(noPoppler)('prints a key plan and each sheet on a page of its own (needs poppler)', async () => {
    const { bytes, pages } = await renderToBytes(hipPacket([300, 150], 'letter'))
    const text = runOn(bytes, 'pdftotext', ['PDF', '-']).split('\f')
    // 300 by 150 ft at 1 in = 20 ft are 15 by 7.5 in: three sheets across, two down.
    expect(pages).toBe(7)
    expect(text.slice(1, 7).map((page) => /Sheet \d of \d/.exec(page)?.[0])).toEqual(
      [1, 2, 3, 4, 5, 6].map((sheet) => `Sheet ${sheet} of 6`),
    )
    expect(text.slice(1, 7).every((page) => page.includes('Scale 1 in = 20 ft'))).toBe(true)
    expect(text[1]).toContain('match line, sheet 4')
  })
})

describe('the room for a plan on a page', () => {
  it.each(['letter', 'a4'] as const)('is never less than what sheets are divided for: %s', (paper) => {
    const { contentWidthPt, contentHeightPt } = paperOf(paper)
    expect(planRoom[paper].widthPt).toBeLessThanOrEqual(contentWidthPt)
    expect(planRoom[paper].heightPt).toBeLessThanOrEqual(contentHeightPt * PAGE_PLAN_SHARE)
  })
})
