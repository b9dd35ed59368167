import { describe, expect, it } from 'vitest'
import { aPacketInput } from '../../../tests/builders/packet-input.ts'
import { diaryEntrySchema } from '../../diary/entry.ts'
import { handovers } from '../../diary/handovers.ts'
import { buildPacket } from '../build-packet.ts'
import { packetOptionsSchema } from '../options.ts'
import { wordingFlags } from '../wording-guard.ts'
import { clockCaution } from '../../diary/clock-caution.ts'

const at = { date: '2026-03-16', time: '10:00', timeZone: 'America/New_York' }
const packet = { id: 'p', revision: 1, pdfSha256: 'a'.repeat(64), headHash: 'b'.repeat(64) }
const entries = [
  { kind: 'call', at, person: 'Ada Owner', text: 'A private remark.' },
  {
    kind: 'handed-over',
    at,
    from: 'Ida Inspector',
    to: 'Ada Owner',
    items: [{ what: '', packet }, { what: 'keys of the gate' }],
    medium: 'by hand',
    signedBy: 'A. Owner',
    text: 'Another private remark.',
  },
  { kind: 'received', at, from: 'Ada Owner', what: 'Permit of 2011', text: 'A third private remark.' },
].map((content, at) => diaryEntrySchema.parse({ id: `e${at}`, number: at + 1, content, madeAtMs: 0, madeBy: 'Ida' }))

const custodyOf = (input: Parameters<typeof aPacketInput>[0]) =>
  JSON.stringify(buildPacket(aPacketInput(input)).sections.find(({ key }) => key === 'custody'))

describe('documents handed over, in custody', () => {
  it('are left out unless a person asks for them', () => {
    expect(packetOptionsSchema.parse({}).handovers).toBe('leave-out')
    expect(custodyOf({})).not.toContain('handed over')
  })

  it('name who, what, how, and the hashes of a packet', () => {
    const custody = custodyOf({ handovers: handovers(entries) })
    for (const words of [
      'Contacts and documents handed over',
      'keys of the gate',
      'Permit of 2011',
      'signed by A. Owner',
    ])
      expect(custody).toContain(words)
    expect(custody).toContain(packet.pdfSha256)
    expect(custody).toContain(packet.headHash)
  })

  it('bring no call and nothing that was said along', () => {
    const document = JSON.stringify(buildPacket(aPacketInput({ handovers: handovers(entries) })))
    expect(document).toContain('keys of the gate')
    expect(document).not.toContain('private remark')
    expect(document).not.toContain(clockCaution)
  })

  it('are worded within a contractor’s part', () => {
    const custody = custodyOf({ handovers: handovers(entries) })
    expect(wordingFlags(custody.slice(custody.indexOf('Contacts and documents')))).toEqual([])
  })
})
