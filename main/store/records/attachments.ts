import { z } from 'zod'
import { refuse } from '../../../app/contract/app-error.ts'
import {
  attachmentSchema,
  attachmentTagsSchema,
  type Attachment,
  type AttachmentTags,
} from '../../../app/evidence/attachment.ts'
import { photoFileSchema } from '../../../app/evidence/photo.ts'
import { row, rows, run, type ReadDb, type WriteDb } from '../database.ts'
import { fromJson } from '../json-column.ts'
import type { RecordTable } from './record-table.ts'

/** An attachment and the name under which its bytes are kept. */
export interface StoredAttachment {
  readonly jobId: string
  readonly storedName: string
  readonly attachment: Attachment
}

const attachmentRowSchema = z.object({
  id: z.string(),
  job_id: z.string(),
  stored_name: z.string(),
  file: z.string(),
  type_label: z.string(),
  why: z.string(),
  tags: z.string(),
  taken_in_at_ms: z.number(),
})

const COLUMNS = 'select id, job_id, stored_name, file, type_label, why, tags, taken_in_at_ms from attachments'

/** What people say of an attachment: the only thing about one that they set. */
export const attachmentTagsTable: RecordTable<AttachmentTags> = {
  get: (db, { jobId, id }) => {
    const kept = findAttachment(db, id)
    return kept === null || kept.jobId !== jobId ? null : kept.attachment.tags
  },
  put: (db, { jobId, id }, tags) => {
    if (tags === null) refuse('invalid', 'An attachment is never removed.')
    const written = run(db, 'update attachments set tags = :tags where id = :id and job_id = :jobId', {
      id,
      jobId,
      tags: JSON.stringify(tags),
    })
    if (written === 0) refuse('not-found', 'This attachment is not in the job.')
  },
  parse: (value) => attachmentTagsSchema.parse(value),
}

/** The attachments of a job in the order they came in. */
export function listAttachments(db: ReadDb, jobId: string): StoredAttachment[] {
  return rows(db, `${COLUMNS} where job_id = :jobId order by taken_in_at_ms, stored_name`, { jobId }).map(toAttachment)
}

/** One attachment by identity. */
export function findAttachment(db: ReadDb, id: string): StoredAttachment | null {
  const found = row(db, `${COLUMNS} where id = :id`, { id })
  return found === null ? null : toAttachment(found)
}

/** The attachment of a job that has these bytes, or null. */
export function attachmentByHash(db: ReadDb, jobId: string, sha256: string): StoredAttachment | null {
  const found = row(db, `${COLUMNS} where job_id = :jobId and sha256 = :sha256`, { jobId, sha256 })
  return found === null ? null : toAttachment(found)
}

/** Adds an attachment. */
export function addAttachment(db: WriteDb, { jobId, storedName, attachment }: StoredAttachment): void {
  run(
    db,
    `insert into attachments (id, job_id, sha256, stored_name, file, type_label, why, tags, taken_in_at_ms)
     values (:id, :jobId, :sha256, :storedName, :file, :typeLabel, :why, :tags, :takenInAtMs)`,
    {
      id: attachment.id,
      jobId,
      sha256: attachment.file.sha256,
      storedName,
      file: JSON.stringify(attachment.file),
      typeLabel: attachment.typeLabel,
      why: attachment.why,
      tags: JSON.stringify(attachment.tags),
      takenInAtMs: attachment.takenInAtMs,
    },
  )
}

function toAttachment(found: unknown): StoredAttachment {
  const kept = attachmentRowSchema.parse(found)
  return {
    jobId: kept.job_id,
    storedName: kept.stored_name,
    attachment: attachmentSchema.parse({
      id: kept.id,
      file: fromJson(photoFileSchema, kept.file, 'facts of an attachment'),
      typeLabel: kept.type_label,
      why: kept.why,
      tags: fromJson(attachmentTagsSchema, kept.tags, 'description of an attachment'),
      takenInAtMs: kept.taken_in_at_ms,
    }),
  }
}
