import { isAgencyTest } from '../../fieldtest/criteria/criteria.ts'
import type { PacketProblem, ProblemPlace } from '../../packet/problem.ts'
import { wordingFlags } from '../../packet/wording-guard.ts'
import type { CaseFile } from '../case-file.ts'
import { lookedAtLabels } from '../catalog/labels.ts'
import { findingLabel, type Finding } from '../finding.ts'
import { photoLabel } from '../photo.ts'
import { readingLabel } from '../reading-label.ts'
import { problem, type Check } from './check.ts'

/** Free text that a person typed, where it stands, and what to call it. */
interface TypedText {
  readonly place: ProblemPlace
  readonly field: string
  readonly called: string
  readonly text: string
}

/** Wording outside a contractor's part in any free text that a packet prints. */
export const checkWording: Check = (caseFile) => {
  const mayNameProtocol = isAgencyTest(caseFile.survey)
  return typedTexts(caseFile).flatMap((typed) => flagged(typed, mayNameProtocol))
}

/** A text that was looked at once says the same each time; a large job has thousands, and few change with an edit. */
const looked = new Map<string, ReturnType<typeof wordingFlags>>()
const MOST_KEPT = 50_000

function flagsOf(text: string): ReturnType<typeof wordingFlags> {
  const known = looked.get(text)
  if (known !== undefined) return known
  if (looked.size >= MOST_KEPT) looked.clear()
  const flags = wordingFlags(text)
  looked.set(text, flags)
  return flags
}

function flagged({ place, field, called, text }: TypedText, mayNameProtocol: boolean): readonly PacketProblem[] {
  if (text === '') return []
  const flags = flagsOf(text).filter(({ matched }) => !(mayNameProtocol && /^TAS/i.test(matched)))
  const [first] = flags
  if (first === undefined) return []
  const words = [...new Set(flags.map(({ matched }) => `"${matched}"`))].join(', ')
  const sentence = `${called}: ${words}. ${first.why} ${first.instead}`
  return [problem('wording', { weight: 'mend', sentence, place, detail: field })]
}

function typedTexts(caseFile: CaseFile): readonly TypedText[] {
  return [
    ...sheetTexts(caseFile),
    ...caseFile.facets.map(({ id, letter, inspected }) => ({
      place: { kind: 'facet', id } as const,
      field: 'inspected.note',
      called: `Facet ${letter}, inspected share`,
      text: inspected.note,
    })),
    ...caseFile.photos.flatMap(({ id, number, tags }): readonly TypedText[] => {
      const place = { kind: 'photo', id } as const
      const label = photoLabel(number)
      return [
        { place, field: 'caption', called: `${label}, caption`, text: tags.caption },
        { place, field: 'leftOutBecause', called: `${label}, reason left out`, text: tags.leftOutBecause ?? '' },
      ]
    }),
    ...caseFile.findings.flatMap(findingTexts),
    ...caseFile.readings.map(({ id, number, note }) => ({
      place: { kind: 'reading', id } as const,
      field: 'note',
      called: `${readingLabel(number)}, note`,
      text: note,
    })),
    ...surveyTexts(caseFile),
    ...scopeTexts(caseFile),
    ...caseFile.cameras.map(({ id, clock }) => ({
      place: { kind: 'job' } as const,
      field: `camera.${id}`,
      called: 'Reason of a clock correction',
      text: clock.why,
    })),
  ]
}

function surveyTexts({ survey }: CaseFile): readonly TypedText[] {
  const one = (field: string, called: string, text: string): TypedText => ({
    place: { kind: 'field-tests' },
    field,
    called: `Field tests, ${called}`,
    text,
  })
  const own = survey.ownCriteria.map(({ name, scope, source, cautions }) =>
    [name, scope, source, ...cautions].join('\n'),
  )
  return [
    one('checks', 'hand checks', survey.checks.map(({ note }) => note).join('\n')),
    one('squares', 'test squares', survey.squares.map(({ note }) => note).join('\n')),
    one('others', 'other tests', survey.others.map(({ text }) => text).join('\n')),
    one('ownCriteria', 'own criteria', own.join('\n')),
    one('instruments', 'instruments', survey.instruments.map(({ certificate }) => certificate).join('\n')),
  ]
}

function scopeTexts({ scope }: CaseFile): readonly TypedText[] {
  const { isOffered, changes, own, percentages, stated } = scope.choices
  if (!isOffered) return []
  const text = [
    ...changes.flatMap(({ leftOutBecause, byHand }) => [leftOutBecause ?? '', byHand?.why ?? '']),
    ...own.flatMap(({ words, source }) => [words, source]),
    ...percentages.map(({ name }) => name),
    stated.weightSource,
  ].join('\n')
  return [{ place: { kind: 'scope' }, field: 'scope', called: 'Scope', text }]
}

function sheetTexts({ job }: CaseFile): readonly TypedText[] {
  const { loss, inspection, covering, permits, priorRepairs, notes } = job.sheet
  const one = (field: string, called: string, text: string): TypedText => ({
    place: { kind: 'sheet', field },
    field,
    called: `Job sheet, ${called}`,
    text,
  })
  return [
    one('loss.description', 'loss', loss.description),
    one('inspection.weather', 'weather at the inspection', inspection.weather),
    one('inspection.marksOnArrival', 'marks on arrival', inspection.marksOnArrival),
    one('inspection.overallOpinion', 'overall opinion', inspection.overallOpinion),
    one('covering.fastening', 'fastening', covering.fastening),
    one('covering.underlayment', 'underlayment', covering.underlayment),
    one('covering.stockNote', 'matching stock', covering.stockNote),
    one('permits', 'permits', permits.map(({ description }) => description).join('\n')),
    one('priorRepairs', 'earlier repairs', priorRepairs.map(({ description }) => description).join('\n')),
    one('notes', 'notes', notes),
  ]
}

function findingTexts(finding: Finding): readonly TypedText[] {
  const { cause, lookedAt } = finding
  const one = (field: string, called: string, text: string): TypedText => ({
    place: { kind: 'finding', id: finding.id },
    field,
    called: `${findingLabel(finding.number)}, ${called}`,
    text,
  })
  return [
    one('observation', 'observation', finding.observation),
    one('placeWords', 'place in words', finding.placeWords),
    one('degree', 'degree', finding.degree),
    one('temporaryMeasure', 'temporary measure', finding.temporaryMeasure),
    one('measurements', 'measurements', finding.measurements.map(({ note }) => note).join('\n')),
    one('cause.note', 'opinion on cause', cause.note),
    one('cause.indicatorsSeen', 'indicators seen', cause.indicatorsSeen.join('\n')),
    one('cause.indicatorsLookedForNotSeen', 'indicators not seen', cause.indicatorsLookedForNotSeen.join('\n')),
    one(
      'cause.otherExplanations',
      'other explanations',
      cause.otherExplanations.map(({ explanation, whyLessLikely }) => `${explanation}: ${whyLessLikely}`).join('\n'),
    ),
    ...lookedAtTexts(lookedAt, one),
  ]
}

function lookedAtTexts(
  lookedAt: Finding['lookedAt'],
  one: (field: string, called: string, text: string) => TypedText,
): readonly TypedText[] {
  return (['debris', 'fastener', 'fractureFace', 'bedding', 'footTraffic'] as const).map((key) =>
    one(`lookedAt.${key}`, lookedAtLabels[key].heading.toLowerCase(), lookedAt[key]),
  )
}
