import { componentLabel } from '../../../evidence/catalog/components.ts'
import { readingLabel } from '../../../evidence/reading-label.ts'
import type { Criterion } from '../../../fieldtest/criteria/criterion.ts'
import { judgementWords, judgeReading } from '../../../fieldtest/judge-reading.ts'
import { liftPlot, liftPlotLegend } from '../../../fieldtest/plots/lift-plot.ts'
import {
  figure,
  forceWords,
  liftWords,
  outcomeLabels,
  pullDirectionLabels,
  pullPointLabels,
} from '../../../fieldtest/reading-words.ts'
import type { Reading } from '../../../fieldtest/reading.ts'
import { areaOfReading, roofAreaLabels } from '../../../fieldtest/roof-area.ts'
import type { Instrument } from '../../../fieldtest/survey.ts'
import { anchorOfReading } from '../../anchors.ts'
import type { Block, TableBlock, Text } from '../../document.ts'
import { facetLink, findingLink, photoLink, readingLink } from '../../links.ts'
import type { PacketContext } from '../../packet-context.ts'
import { joined, ledBy, plain } from '../../text.ts'
import { column, heading, paragraph } from '../section.ts'

/** Readings as they were written down, what each says under the criterion with its working, and the plot. */
export function readingBlocks(context: PacketContext, criterion: Criterion): readonly Block[] {
  const { readings } = context
  const { listedResistanceLbf } = context.input.caseFile.survey
  const without = readings.filter(({ liftIn, forceLbf }) => liftIn === null || forceLbf === null).length
  const plot = liftPlot(readings, criterion, listedResistanceLbf)
  return [
    heading('Readings', true),
    readingTable(context),
    ...instrumentsUsed(context),
    ...testers(context),
    paragraph(
      without === 0
        ? 'Every reading has both lift and force.'
        : `Without a lift or a force, and so not to be weighed against any figure: ${without} of ${readings.length} readings.`,
    ),
    ...(plot === null
      ? []
      : [
          {
            kind: 'group',
            blocks: [
              { kind: 'heading', level: 3, text: 'Lift against force', inOutline: false },
              { kind: 'plot', plot },
              paragraph(liftPlotLegend, 'small'),
            ],
          } as const satisfies Block,
        ]),
    heading('What each reading says under the criterion'),
    judgementTable(context, criterion),
  ]
}

function readingTable(context: PacketContext): TableBlock {
  return {
    kind: 'table',
    summary: 'Lift readings as written down',
    columns: [
      column('Reading', 1),
      column('Facet', 0.8),
      column('Area', 1.2),
      column('Lift, in', 1, 'end'),
      column('Force, lbf', 1.1, 'end'),
      column('How', 2.4),
      column('Finding', 1),
      column('Photos', 1.1),
      column('Note', 3.4),
    ],
    rows: context.readings.map((reading) => ({ anchor: anchorOfReading(reading), cells: cellsOf(reading, context) })),
  }
}

function cellsOf(reading: Reading, context: PacketContext): readonly Text[] {
  const finding = reading.findingId === null ? undefined : context.findingById.get(reading.findingId)
  const photos = reading.photoIds.flatMap((id) => context.photoById.get(id) ?? [])
  return [
    [{ text: readingLabel(reading.number), style: 'strong' }],
    facetLink(reading.facetId === null ? undefined : context.facetById.get(reading.facetId)),
    areaCell(reading, context),
    reading.liftIn === null ? notRecorded(liftWords(reading)) : plain(withTyped(reading.liftIn, reading.liftTyped)),
    reading.forceLbf === null
      ? notRecorded(forceWords(reading))
      : plain(withTyped(reading.forceLbf, reading.forceTyped)),
    plain(howWords(reading)),
    finding === undefined ? plain('-') : findingLink(finding),
    photos.length === 0 ? plain('none') : joined(photos.map(photoLink)),
    plain(reading.note.trim()),
  ]
}

function areaCell(reading: Reading, { zones }: PacketContext): Text {
  const placed = areaOfReading(reading, zones)
  if (placed.kind === 'unknown') return notRecorded('not known')
  return plain(`${roofAreaLabels[placed.area]}${placed.kind === 'chosen' ? ', as chosen' : ''}`)
}

function withTyped(value: number, typed: string): string {
  return `${figure(value)}${typed === '' ? '' : ` (typed ${typed})`}`
}

/** Method, point and direction of pull, outcome and time, as far as each was written down. */
function howWords(reading: Reading): string {
  return [
    reading.component === 'field-tile' ? '' : componentLabel(reading.component).toLowerCase(),
    reading.method === 'gauge' ? 'gauge' : 'by hand',
    reading.pullPoint === 'not-stated' ? '' : pullPointLabels[reading.pullPoint],
    reading.pullDirection === 'not-stated' ? '' : pullDirectionLabels[reading.pullDirection],
    reading.outcome === 'not-stated' ? '' : outcomeLabels[reading.outcome],
    reading.takenAt === null ? '' : reading.takenAt.replace('T', ' '),
  ]
    .filter((part) => part !== '')
    .join(', ')
}

function notRecorded(words: string): Text {
  return [{ text: words, style: 'quiet' }]
}

function judgementTable({ readings, input }: PacketContext, criterion: Criterion): TableBlock {
  return {
    kind: 'table',
    summary: 'What each reading says under the criterion, with its working',
    columns: [column('Reading', 1), column('Under the criterion', 3), column('Working', 7)],
    rows: readings.map((reading) => {
      const judgement = judgeReading(reading, criterion, input.caseFile.survey.listedResistanceLbf)
      return { cells: [readingLink(reading), plain(judgementWords(judgement)), plain(judgement.working)] }
    }),
  }
}

/** Each instrument once, with what is known of it and the readings that were taken with it. */
function instrumentsUsed({ readings, input }: PacketContext): readonly Block[] {
  const names = [...new Set(readings.map(({ instrument }) => instrument.trim()))].filter((name) => name !== '')
  if (names.length === 0) return []
  const used = names.map((name) => {
    const taken = readings.filter(({ instrument }) => instrument.trim() === name)
    const known = input.caseFile.survey.instruments.find((one) => one.name === name)
    const about = known === undefined ? '' : instrumentWords(known)
    return [...plain(`${name}${about} (`), ...joined(taken.map(readingLink)), ...plain(')')]
  })
  return [paragraph(ledBy(used.length === 1 ? 'Instrument:' : 'Instruments:', [...joined(used, '; '), ...plain('.')]))]
}

/** Who took which readings, where it was written down. */
function testers({ readings }: PacketContext): readonly Block[] {
  const names = [...new Set(readings.map(({ tester }) => tester.trim()))].filter((name) => name !== '')
  if (names.length === 0) return []
  const each = names.map((name) => {
    const taken = readings.filter(({ tester }) => tester.trim() === name)
    return [...plain(`${name} (`), ...joined(taken.map(readingLink)), ...plain(')')]
  })
  return [paragraph(ledBy('Taken by:', [...joined(each, '; '), ...plain('.')]))]
}

function instrumentWords({ serial, calibratedOn, certificate }: Instrument): string {
  const parts = [
    serial === '' ? '' : `serial ${serial}`,
    calibratedOn === null ? 'calibration date not stated' : `calibrated ${calibratedOn}`,
    certificate,
  ]
  return `, ${parts.filter((part) => part !== '').join(', ')}`
}
