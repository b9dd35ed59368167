import { refuse } from '../../app/contract/app-error.ts'
import type { CallOutput, ParsedInput } from '../../app/contract/contract.ts'
import { calendarEvents } from '../../app/diary/calendar-events.ts'
import {
  contentFault,
  diaryEntrySchema,
  diaryKindLabels,
  diaryLabel,
  type DiaryContent,
  type DiaryEntry,
} from '../../app/diary/entry.ts'
import { diaryEntryIdSchema, type JobId } from '../../app/job/ids.ts'
import { safeFileName } from '../library/file-names.ts'
import { calendarFile } from '../publish/calendar-file.ts'
import type { ReadDb } from '../store/database.ts'
import { listPackets } from '../store/packets.ts'
import { findAttachment } from '../store/records/attachments.ts'
import { diaryEntryTable, jobClocksOf } from '../store/records/diary.ts'
import { listRules } from '../store/rules.ts'
import { countedClocks } from './diary-clocks.ts'
import type { DeskWorld } from './desk-world.ts'
import { editJob } from './edit-job.ts'
import type { Area } from './handlers.ts'
import { handoverListPdf } from './handover-list-pdf.ts'
import { needJob } from './snapshot.ts'

/** The diary of a job, and the statutory clocks that were asked for in it. */
export function diaryArea(world: DeskWorld): Area<'diary'> {
  const { db } = world.library
  return {
    'diary.save': (asked) => saveEntry(world, asked),
    'diary.strike': ({ jobId, id, because }) =>
      editJob(world, jobId, (now) => {
        const entry = needEntry(now, jobId, id)
        const struck = because === null ? null : { because, atMs: world.now(), by: world.operator() }
        return {
          summary: `${because === null ? 'Take back the striking out of' : 'Strike out'} diary entry ${diaryLabel(entry.number)}`,
          writes: [{ record: 'diary-entry', id, after: { ...entry, struck } }],
          result: {},
        }
      }),
    ...clockEdits(world),
    'diary.clocks': ({ jobId }) => {
      needJob(db, jobId)
      return { clocks: countedClocks(db, jobClocksOf(db, jobId)) }
    },
    'diary.calendar': (asked) => calendarOf(world, asked),
    'diary.handover-list': (asked) => handoverListPdf(world, asked),
  }
}

function saveEntry(
  world: DeskWorld,
  { jobId, id, content, because }: ParsedInput<'diary.save'>,
): CallOutput<'diary.save'> {
  return editJob(world, jobId, (db, newNumber) => {
    const fault = contentFault(content)
    if (fault !== null) refuse('invalid', fault.sentence, { about: `content.${fault.field}` })
    refuseStrangers(db, jobId, content)
    const known = id === null ? null : needEntry(db, jobId, id)
    const replaced = { replacedAtMs: world.now(), replacedBy: world.operator(), because }
    const after = diaryEntrySchema.parse(
      known === null
        ? {
            id: diaryEntryIdSchema.parse(world.newId()),
            number: newNumber('diary-entry'),
            content,
            madeAtMs: world.now(),
            madeBy: world.operator(),
          }
        : { ...known, content, earlier: [...known.earlier, { content: known.content, ...replaced }] },
    )
    const kind = diaryKindLabels[content.kind].toLowerCase()
    return {
      // The words of the entry stay out of the log, which goes into packets.
      summary: `${known === null ? 'Add' : 'Correct'} diary entry ${diaryLabel(after.number)}, ${kind}`,
      writes: known !== null && isSame(known.content, content) ? [] : [{ record: 'diary-entry', id: after.id, after }],
      result: { id: after.id, number: after.number },
    }
  })
}

function isSame(a: DiaryContent, b: DiaryContent): boolean {
  return JSON.stringify(a) === JSON.stringify(b)
}

/** Refuses files and revisions that are not this job's. */
function refuseStrangers(db: ReadDb, jobId: JobId, content: DiaryContent): void {
  for (const id of content.attachmentIds) {
    if (findAttachment(db, id)?.jobId !== jobId) {
      refuse('not-found', 'A file of this entry is not kept with the job.', { about: 'content.attachmentIds' })
    }
  }
  if (content.kind !== 'handed-over') return
  const issued = listPackets(db, jobId)
  for (const { packet } of content.items) {
    if (packet === null) continue
    const found = issued.find(({ id }) => id === packet.id)
    if (found?.headHash !== packet.headHash || found.pdfSha256 !== packet.pdfSha256) {
      refuse('not-found', 'This packet was not issued in this job.', { about: 'content.items' })
    }
  }
}

function needEntry(db: ReadDb, jobId: JobId, id: string): DiaryEntry {
  return diaryEntryTable.get(db, { jobId, id }) ?? refuse('not-found', 'This entry is no longer in the diary.')
}

type ClockEdits = Pick<Area<'diary'>, 'diary.choose-jurisdictions' | 'diary.ask-clock' | 'diary.drop-clock'>

function clockEdits(world: DeskWorld): ClockEdits {
  return {
    'diary.choose-jurisdictions': ({ jobId, jurisdictions }) =>
      editJob(world, jobId, (db) => ({
        summary: 'Choose whose statutory clocks can be asked for',
        writes: [{ record: 'diary-clocks', id: jobId, after: { ...jobClocksOf(db, jobId), jurisdictions } }],
        result: {},
      })),
    'diary.ask-clock': ({ jobId, id: known, clock }) =>
      editJob(world, jobId, (db) => {
        const rule = listRules(db).find((listed) => listed.rule.key === clock.ruleKey)?.rule
        if (rule?.kind !== 'clock') return refuse('not-found', 'There is no such clock.', { about: 'clock.ruleKey' })
        const clocks = jobClocksOf(db, jobId)
        const id = known ?? world.newId()
        const isKnown = clocks.asked.some((one) => one.id === id)
        if (known !== null && !isKnown) refuse('not-found', 'This clock is no longer in the diary.')
        if (rule.data.unit === 'hours' && clock.start.time === null) {
          refuse('invalid', 'Hours are counted from a time of day. Write it as 14:30.', { about: 'clock.start.time' })
        }
        const after = { ...clock, id }
        const asked = isKnown ? clocks.asked.map((one) => (one.id === id ? after : one)) : [...clocks.asked, after]
        return {
          summary: `${isKnown ? 'Change' : 'Ask for'} a statutory clock`,
          writes: [{ record: 'diary-clocks', id: jobId, after: { ...clocks, asked } }],
          result: { id },
        }
      }),
    'diary.drop-clock': ({ jobId, id }) =>
      editJob(world, jobId, (db) => {
        const clocks = jobClocksOf(db, jobId)
        const asked = clocks.asked.filter((one) => one.id !== id)
        return {
          summary: 'Drop a statutory clock',
          writes: [{ record: 'diary-clocks', id: jobId, after: { ...clocks, asked } }],
          result: {},
        }
      }),
  }
}

function calendarOf(
  world: DeskWorld,
  { jobId, kinds, clocks }: ParsedInput<'diary.calendar'>,
): CallOutput<'diary.calendar'> {
  const { db } = world.library
  const { job } = needJob(db, jobId)
  const events = calendarEvents({
    jobNumber: job.number,
    entries: diaryEntryTable.list(db, jobId),
    kinds,
    clocks: clocks ? countedClocks(db, jobClocksOf(db, jobId)) : [],
    madeAtMs: world.now(),
  })
  return {
    fileName: `${safeFileName(job.number)}-diary.ics`,
    text: calendarFile(`Job ${job.number}`, events),
    events: events.length,
  }
}
