import { z } from 'zod'
import { packetSummarySchema, type PacketSummary } from '../../app/contract/jobs.ts'
import { row, rows, run, type ReadDb, type WriteDb } from './database.ts'
import { fromJson } from './json-column.ts'

const summaryRowSchema = z.object({ job_id: z.string(), summary: z.string() })

/** The issued revisions of a job, first to last. */
export function listPackets(db: ReadDb, jobId: string): PacketSummary[] {
  return rows(db, 'select job_id, summary from packets where job_id = :jobId order by revision', { jobId }).map(
    (found) => fromJson(packetSummarySchema, summaryRowSchema.parse(found).summary, 'packet'),
  )
}

/** One issued revision by identity, with its job. */
export function findPacket(db: ReadDb, id: string): { jobId: string; packet: PacketSummary } | null {
  const found = row(db, 'select job_id, summary from packets where id = :id', { id })
  if (found === null) return null
  const { job_id, summary } = summaryRowSchema.parse(found)
  return { jobId: job_id, packet: fromJson(packetSummarySchema, summary, 'packet') }
}

/** Adds an issued revision with the snapshot it was made from. */
export function addPacket(
  db: WriteDb,
  jobId: string,
  { packet, snapshot }: { packet: PacketSummary; snapshot: unknown },
): void {
  run(
    db,
    `insert into packets (id, job_id, revision, issued_at_ms, summary, snapshot)
     values (:id, :jobId, :revision, :issuedAtMs, :summary, :snapshot)`,
    {
      id: packet.id,
      jobId,
      revision: packet.revision,
      issuedAtMs: packet.issuedAtMs,
      summary: JSON.stringify(packet),
      snapshot: JSON.stringify(snapshot),
    },
  )
}
