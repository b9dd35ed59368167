import type { Attachment } from '../evidence/attachment.ts'
import type { Handover } from '../diary/handovers.ts'
import type { CaseFile } from '../evidence/case-file.ts'
import type { LogEntry } from '../evidence/log-entry.ts'
import type { Video } from '../evidence/video.ts'
import type { PlanImage } from '../roof/plan-image.ts'
import type { PacketOptions } from './options.ts'

/** Everything that a packet is made from. */
export interface PacketInput {
  readonly caseFile: CaseFile
  readonly attachments: readonly Attachment[]
  readonly videos: readonly Video[]
  /** Pictures under the plan; their files are among the attachments or the photos. */
  readonly planImages: readonly PlanImage[]
  /** Documents received and handed over, for recipients who get that list; of the diary nothing else can come here. */
  readonly handovers: readonly Handover[]
  /** The whole evidence log, oldest first. */
  readonly log: readonly LogEntry[]
  /** Hash of the log's last entry, 64 hex digits; empty when nothing is logged yet. */
  readonly headHash: string
  /** Number of the revision being issued; null for a draft. */
  readonly revision: number | null
  readonly issuedAtMs: number
  readonly options: PacketOptions
  /** Who made the packet. */
  readonly operator: string
  readonly programVersion: string
}
