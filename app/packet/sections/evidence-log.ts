import { photoLabel, type Photo } from '../../evidence/photo.ts'
import { videoLabel } from '../../evidence/video-label.ts'
import { localDate } from '../../evidence/photo-local-time.ts'
import { inWalkOrder, isPlacedByHand } from '../../evidence/walk-order.ts'
import type { CalendarDate } from '../../job/calendar.ts'
import type { Block, Section, TableBlock } from '../document.ts'
import { dateWords, instantWords, photoClockWords } from '../format/times.ts'
import { facetLink, findingLinks, findingsShown, photoLink } from '../links.ts'
import { logRuns } from '../log-words.ts'
import type { PacketContext } from '../packet-context.ts'
import { photoSubject } from '../photo-words.ts'
import { joined, plain } from '../text.ts'
import { column, heading, paragraph, titledSection } from './section.ts'

/** First the inspection by its photos' times, then what was done to the record, each in order. */
export function evidenceLogSection(context: PacketContext): Section {
  return titledSection('evidence-log', 'Evidence log', [
    heading('On the roof, by the time of the photos', true),
    ...walk(context),
    heading('The record', true),
    ...record(context),
  ])
}

function walk(context: PacketContext): readonly Block[] {
  const { days, loose: untimed } = daysOfWalk(context.photos)
  const inspector = context.sheet.inspection.inspector.trim()
  return [
    ...(inspector === '' ? [] : [paragraph(`Inspector: ${inspector}.`)]),
    ...days.flatMap(({ date, photos }) => [
      { kind: 'heading' as const, level: 3 as const, text: dateWords(date), inOutline: false },
      dayTable(photos, context),
    ]),
    ...(untimed.length === 0
      ? []
      : [paragraph([...plain('Without a known time: '), ...joined(untimed.map(photoLink)), ...plain('.')])]),
    ...(context.photos.length === 0 ? [paragraph('No photo is in the packet.')] : []),
  ]
}

/** The walk day by day. A photo that a person placed stands with the photo before it, or at the beginning of the first day. */
function daysOfWalk(photos: readonly Photo[]) {
  const days = new Map<CalendarDate, Photo[]>()
  const early: Photo[] = []
  const loose: Photo[] = []
  let latest: Photo[] | null = null
  for (const photo of inWalkOrder(photos)) {
    const date = localDate(photo.time)
    if (date !== null) {
      latest = days.get(date) ?? []
      latest.push(photo)
      days.set(date, latest)
    } else if (isPlacedByHand(photo)) (latest ?? early).push(photo)
    else loose.push(photo)
  }
  const inOrder = [...days].map(([date, own], at) => ({ date, photos: at === 0 ? [...early, ...own] : own }))
  return { days: inOrder, loose: inOrder.length === 0 ? [...early, ...loose] : loose }
}

function dayTable(photos: readonly Photo[], context: PacketContext): TableBlock {
  return {
    kind: 'table',
    summary: 'Photos of a day in the order in which they were taken',
    columns: [
      column('Time', 2),
      column('Photo', 1),
      column('Facet', 0.8),
      column('What it shows', 6),
      column('Finding', 2),
    ],
    rows: photos.map((photo) => {
      const findings = findingsShown(photo, context)
      return {
        cells: [
          plain(isPlacedByHand(photo) ? 'placed by hand' : photoClockWords(photo.time)),
          photoLink(photo),
          facetLink(photo.tags.facetId === null ? undefined : context.facetById.get(photo.tags.facetId)),
          plain(shortened(photoSubject(photo))),
          findings.length === 0 ? plain('-') : findingLinks(findings),
        ],
      }
    }),
  }
}

/** The full caption stands beside the photo; here a line is enough. */
function shortened(words: string): string {
  return words.length <= 90 ? words : `${words.slice(0, 89).trimEnd()}…`
}

function record(context: PacketContext): readonly Block[] {
  const { log, headHash } = context.input
  if (log.length === 0) return [paragraph('The log has no entry yet.')]
  const { caseFile, videos } = context.input
  const labels = new Map<string, string>([
    ...caseFile.photos.map(({ id, number }) => [id, photoLabel(number)] as const),
    ...videos.map(({ id, number }) => [id, videoLabel(number)] as const),
  ])
  return [
    paragraph(
      `${log.length} entries. Each carries the hash of the one before, so none can be changed, dropped or put in later without the head hash changing.`,
      'small',
    ),
    paragraph([{ text: 'Head hash ' }, { text: headHash, style: 'mono' }], 'small'),
    {
      kind: 'table',
      summary: 'What was done to the record, by whom and when',
      columns: [column('Entry', 1), column('Time', 3.7), column('What', 5.8), column('By', 1.6)],
      rows: logRuns(log, (id) => labels.get(id) ?? 'a file').map(({ first, last, words }) => ({
        cells: [
          plain(first.seq === last.seq ? String(first.seq) : `${first.seq}-${last.seq}`),
          plain(instantWords(first.atMs, context.zone)),
          plain(words),
          plain(first.actor),
        ],
      })),
    },
  ]
}
