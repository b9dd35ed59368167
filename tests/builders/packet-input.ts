import { nextEntry } from '../../app/evidence/log-chain.ts'
import type { LogEntry, LogEvent } from '../../app/evidence/log-entry.ts'
import { packetOptionsSchema } from '../../app/packet/options.ts'
import type { PacketInput } from '../../app/packet/packet-input.ts'
import { aCaseFile } from './case-file.ts'
import { WALK_STARTED_MS } from './records.ts'

/** A whole log from events, a minute apart, all by one person. */
export function aLog(events: readonly LogEvent[], actor = 'Olive Office'): readonly LogEntry[] {
  const log: LogEntry[] = []
  events.forEach((event, i) => {
    log.push(nextEntry(log.at(-1) ?? null, { atMs: WALK_STARTED_MS + i * 60_000, actor, event }))
  })
  return log
}

/** What a packet is made from: a draft of an almost empty job, unless fields say otherwise. */
export function aPacketInput(given: Partial<PacketInput> = {}): PacketInput {
  const log = given.log ?? aLog([{ type: 'job-opened', number: '2026-1' }])
  return {
    caseFile: aCaseFile(),
    attachments: [],
    videos: [],
    planImages: [],
    handovers: [],
    log,
    headHash: log.at(-1)?.hash ?? '',
    revision: null,
    issuedAtMs: WALK_STARTED_MS + 86_400_000,
    options: packetOptionsSchema.parse({}),
    operator: 'Olive Office',
    programVersion: '0.1.0',
    ...given,
  }
}
