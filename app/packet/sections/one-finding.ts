import { causes } from '../../evidence/catalog/causes.ts'
import { consequenceLabels, crackPathLabels, findingKindLabels, lookedAtLabels } from '../../evidence/catalog/labels.ts'
import { measurementWords } from '../../evidence/catalog/measures.ts'
import { explanatoryNote } from '../../evidence/catalog/notes.ts'
import { findingLabel, type Finding } from '../../evidence/finding.ts'
import { markerPoint } from '../../roof/draw-plan.ts'
import { placeWords } from '../../roof/place-words.ts'
import { findingZone, findingZoneWords } from '../../roof/zones/finding-zone.ts'
import { anchorOfFinding, anchorOfNote } from '../anchors.ts'
import type { FactsBlock, GroupBlock, Text } from '../document.ts'
import { recordingStartMs } from '../../narration/aligned.ts'
import { instantWords } from '../format/times.ts'
import { howMuchWords, whatWords } from '../finding-words.ts'
import { facetWithName, photoLinksOf, pinLink, readingLink } from '../links.ts'
import type { PacketContext } from '../packet-context.ts'
import { joined, plain } from '../text.ts'

type Row = FactsBlock['rows'][number]

/** A finding as blocks: what must stay together on a page, and what may go on over pages. */
export interface FindingBlocks {
  readonly start: GroupBlock['blocks']
  readonly rest: readonly FactsBlock[]
}

/** A finding: where it is and what shows it, what was observed and measured, and, apart from that, the opinion on cause. */
export function findingBlocks(finding: Finding, context: PacketContext): FindingBlocks {
  const label = findingLabel(finding.number)
  const continued = `${label}, continued`
  const facts = (rows: readonly Row[]): readonly FactsBlock[] =>
    rows.length === 0 ? [] : [{ kind: 'facts', columns: 1, continued, rows }]
  return {
    start: [
      {
        kind: 'heading',
        level: 3,
        text: `${label} ${whatWords(finding)}`,
        anchor: anchorOfFinding(finding),
        inOutline: true,
      },
      { kind: 'facts', columns: 2, continued, rows: placeRows(finding, context) },
    ],
    rest: [
      ...facts([...observedRows(finding), ...measuredRows(finding, context), ...spokenRows(finding, context)]),
      ...facts([...opinionRows(finding), ...afterRows(finding)]),
    ],
  }
}

/** What a damage finding does not say is said to be missing; other findings just leave it out. */
function missing(label: string, words: string, { kind }: Finding): readonly Row[] {
  return kind === 'damage' ? [{ label, value: [{ text: words, style: 'quiet' }] }] : []
}

function placeRows(finding: Finding, context: PacketContext): readonly Row[] {
  const place = finding.placeWords.trim()
  const marked = [
    ...(finding.urgent ? ['urgent'] : []),
    ...(finding.showsPoorly ? ['shows poorly in the picture'] : []),
  ]
  return [
    { label: 'Kind', value: plain(findingKindLabels[finding.kind]) },
    { label: 'How much', value: plain(howMuchWords(finding)) },
    {
      label: 'Where',
      wide: true,
      value: joined([
        facetWithName(finding.facetId, context),
        ...(place === '' ? pinWords(finding, context) : [plain(place)]),
        pinLink(finding),
      ]),
    },
    ...(context.zones.kind === 'drawn'
      ? [{ label: 'Zone', wide: true as const, value: plain(findingZoneWords(findingZone(finding, context.zones))) }]
      : []),
    { label: 'Photos', wide: true, value: photoLinksOf(finding, context) },
    ...(marked.length === 0 ? [] : [{ label: 'Remarks', value: plain(marked.join('; ')) }]),
  ]
}

/** Where the pin stands, in words, for a finding whose place nobody put into words. */
function pinWords({ pin, facetId }: Finding, { house }: PacketContext): readonly Text[] {
  return pin === null ? [] : [plain(`${placeWords(markerPoint(pin), house, facetId)} (read off the plan)`)]
}

function observedRows(finding: Finding): readonly Row[] {
  const parts = [finding.degree.trim(), finding.observation.trim()].filter((part) => part !== '')
  const path = finding.crackPath === null ? [] : [`Crack runs ${crackPathLabels[finding.crackPath]}.`]
  const observed = [...parts, ...path].map(asSentence).join(' ')
  return [
    ...(observed === ''
      ? missing('Observed', 'nothing further in words', finding)
      : [{ label: 'Observed', value: plain(observed) }]),
    ...(['debris', 'fastener', 'fractureFace', 'bedding', 'footTraffic'] as const).flatMap((key): readonly Row[] => {
      const answer = finding.lookedAt[key].trim()
      if (answer !== '') return [{ label: lookedAtLabels[key].heading, value: plain(answer) }]
      return []
    }),
  ]
}

function measuredRows(finding: Finding, context: PacketContext): readonly Row[] {
  const measured = finding.measurements.map(measurementWords)
  const readings = context.readingsByFinding.get(finding.id) ?? []
  const values: readonly Text[] = [
    ...measured.map(plain),
    ...(readings.length === 0 ? [] : [[...plain('readings '), ...joined(readings.map(readingLink))]]),
  ]
  return values.length === 0
    ? missing('Measured', 'nothing measured', finding)
    : [{ label: 'Measured', value: joined(values, '; ') }]
}

/** What was said of it while it was found, word for word, with the time where the recording is on the clock. */
function spokenRows({ spoken }: Finding, { input, zone }: PacketContext): readonly Row[] {
  const { narrations, photos } = input.caseFile
  const { videos } = input
  const quotes = spoken.flatMap(({ narrationId, cue }) => {
    const narration = narrations.find(({ id }) => id === narrationId)
    const said = narration?.cues[cue]
    if (narration === undefined || said === undefined) return []
    const startMs = recordingStartMs(narration, { photos, videos })
    return [`“${said.text}” (${startMs === null ? narration.name : instantWords(startMs + said.startMs, zone)})`]
  })
  return quotes.length === 0 ? [] : [{ label: 'Spoken', value: plain(quotes.join(' ')) }]
}

function opinionRows({ cause, kind }: Finding): readonly Row[] {
  if (cause.cause === 'not-stated' && kind !== 'damage' && cause.note.trim() === '') return []
  const note = cause.note.trim()
  const list = (label: string, items: readonly string[]): readonly Row[] =>
    items.length === 0 ? [] : [{ label, value: plain(items.join('; ')) }]
  return [
    {
      label: 'Opinion on cause',
      value: [{ text: causes[cause.cause].opinion, style: 'emphasis' }, ...(note === '' ? [] : plain(` ${note}`))],
    },
    ...list('Seen for it', cause.indicatorsSeen),
    ...list('Looked for, not seen', cause.indicatorsLookedForNotSeen),
    ...list(
      'Other explanations',
      cause.otherExplanations.map(({ explanation, whyLessLikely }) =>
        whyLessLikely.trim() === '' ? explanation : `${explanation} (${whyLessLikely.trim()})`,
      ),
    ),
  ]
}

function afterRows(finding: Finding): readonly Row[] {
  const notes = finding.noteKeys.flatMap((key): readonly Text[] => {
    const note = explanatoryNote(key)
    return note === null ? [] : [[{ text: note.title, link: anchorOfNote(key) }]]
  })
  const measure = finding.temporaryMeasure.trim()
  return [
    ...(finding.consequences.length === 0
      ? []
      : [{ label: 'Consequence', value: plain(finding.consequences.map((key) => consequenceLabels[key]).join('; ')) }]),
    ...(measure === '' ? [] : [{ label: 'Temporary measure', value: plain(measure) }]),
    ...(notes.length === 0 ? [] : [{ label: 'Note', value: joined(notes, '; ') }]),
  ]
}

function asSentence(words: string): string {
  const start = words.charAt(0).toUpperCase() + words.slice(1)
  return /[.!?]$/.test(start) ? start : `${start}.`
}
