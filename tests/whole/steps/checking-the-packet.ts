import { createHash } from 'node:crypto'
import { mkdirSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeAll, expect, it } from 'vitest'
import { battenbook } from '../../cli/command.ts'
import { hasTool, runTool } from '../outside-tools.ts'
import { flipOneBit, repack } from '../repack.ts'
import { address, ownerName } from './filling-the-sheet.ts'
import { jobNumber } from './first-run.ts'
import { markedWords } from './marking-photos.ts'
import { caption } from './tagging-photos.ts'
import type { AtWork } from './work.ts'
import { observation } from './writing-findings.ts'
import { wastePercent } from './zones-and-quantities.ts'

/** Somebody else checks what was taken away, with tools of their own. */
export function checkingThePacket(work: AtWork): void {
  const needs = (tool: string) => ({ has: hasTool(tool), note: hasTool(tool) ? '' : ` (skipped: no ${tool})` })
  const text = needs('pdftotext')
  const pdf = needs('qpdf')
  const zip = needs('unzip')
  const sums = needs('sha256sum')
  const unpacked = () => join(work().desktop, 'unpacked')

  beforeAll(() => {
    mkdirSync(unpacked(), { recursive: true })
  })

  it.skipIf(!text.has)(`reads in the PDF what was recorded${text.note}`, () => {
    const { desktop, card } = work()
    const { code, text: said } = runTool('pdftotext', ['-layout', 'packet.pdf', '-'], desktop)
    expect(code).toBe(0)
    const words = said.replace(/\s+/g, ' ')
    for (const wanted of [
      jobNumber,
      ownerName,
      address,
      'F-1',
      'P-001',
      'P-004',
      'Facet A',
      observation,
      'near the ridge',
      'Edge zones on the plan',
      'ASCE 7-16 is the edition named for this job',
      `Allowance of ${wastePercent} %, chosen by the contractor`,
      'totals are sums of the lines before rounding',
      markedWords,
      'annotated copy of P-003',
      '6.0 in by scale line S1 (12 in, steel rule)',
      'Supporting pictures',
      '“Site model”, source: drawn by this test; laid under the roof plan',
    ])
      expect(words).toContain(wanted)
    // Arabic may come out letter by letter in the order of the page, so only its letters are looked for.
    for (const letter of caption.replace(/[^\p{Script=Arabic}]/gu, ''))
      expect(words.normalize('NFKC')).toContain(letter)
    // As the camera wrote it; and 7 minutes later than the second camera's clock, in the house's time zone.
    expect(words).toContain('09:11:05 -04:00')
    expect(words).toContain('09:22:05 -04:00')
    const sha256 = createHash('sha256')
      .update(readFileSync(join(card, 'ONE_0002.JPG')))
      .digest('hex')
    expect(words).toContain(sha256.slice(0, 12))
  })

  it.skipIf(!pdf.has)(`finds nothing wrong with the PDF's structure${pdf.note}`, () => {
    const { code, text: said } = runTool('qpdf', ['--check', 'packet.pdf'], work().desktop)
    expect(said).toContain('No syntax or stream encoding errors found')
    expect(code).toBe(0)
  })

  it.skipIf(!zip.has)(`unpacks the bundle to the files of the card, byte for byte${zip.note}`, () => {
    const { desktop, card } = work()
    expect(runTool('unzip', ['-q', 'bundle.zip', '-d', unpacked()], desktop).code).toBe(0)
    const digest = (path: string) => createHash('sha256').update(readFileSync(path)).digest('hex')
    const kept = new Set(
      ['originals', 'attachments'].flatMap((folder) =>
        readdirSync(join(unpacked(), folder)).map((name) => digest(join(unpacked(), folder, name))),
      ),
    )
    const brought = readdirSync(card)
      .filter((name) => !name.startsWith('.'))
      .map((name) => digest(join(card, name)))
    // The picture that was laid under the plan is kept too, named for what it is.
    brought.push(digest(join(desktop, 'model.jpg')))
    expect(readFileSync(join(unpacked(), 'supporting-pictures.csv'), 'utf8')).toContain(
      `model.jpg,${digest(join(desktop, 'model.jpg'))},Rendered picture,Site model,drawn by this test,`,
    )
    expect(kept).toEqual(new Set(brought))
    expect(readdirSync(unpacked())).toEqual(
      expect.arrayContaining(['facets.csv', 'edges.csv', 'roof-totals.csv', 'zones.csv', 'findings.csv']),
    )
    expect(digest(join(unpacked(), 'packet.pdf'))).toBe(digest(join(desktop, 'packet.pdf')))
  })

  it.skipIf(!zip.has || !sums.has)(`checks the manifest with the standard tool${zip.note}${sums.note}`, () => {
    const { code, text: said } = runTool('sha256sum', ['--check', '--strict', 'manifest.sha256'], unpacked())
    expect(
      said
        .trimEnd()
        .split('\n')
        .filter((line) => !line.endsWith(': OK')),
    ).toEqual([])
    expect(said).toContain('packet.pdf: OK')
    expect(code).toBe(0)
  })

  it('verifies the bundle from the terminal', async () => {
    const run = await battenbook('verify', join(work().desktop, 'bundle.zip'))
    expect(run).toMatchObject({ code: 0, stderr: '', stdout: expect.stringMatching(/^Sound: \d+ files/) })
  })

  it.skipIf(!zip.has)(`names the one file of a repacked bundle in which a bit was turned over${zip.note}`, async () => {
    const again = join(work().desktop, 'repacked.zip')
    await repack(unpacked(), again)
    expect(await battenbook('verify', again)).toMatchObject({ code: 0 })
    const [name = ''] = readdirSync(join(unpacked(), 'originals')).filter((file) => file.endsWith('ONE_0002.JPG'))
    flipOneBit(join(unpacked(), 'originals', name))
    await repack(unpacked(), again)
    const run = await battenbook('verify', again)
    expect(run.code).toBe(1)
    expect(run.stdout).toContain(`originals/${name}`)
    expect(run.stdout.trimEnd().split('\n')).toHaveLength(1)
  })
}
