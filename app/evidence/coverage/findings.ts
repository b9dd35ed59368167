import type { PacketProblem, ProblemFix } from '../../packet/problem.ts'
import type { CaseFile } from '../case-file.ts'
import { components } from '../catalog/components.ts'
import { conditions } from '../catalog/conditions.ts'
import type { PhotoRole } from '../catalog/keys.ts'
import { photoRoleLabels } from '../catalog/labels.ts'
import { findingLabel, type Finding } from '../finding.ts'
import { photoLabel } from '../photo.ts'
import { problem, type Check } from './check.ts'

/** Findings that are not placed, not shown, not counted, not measured, or whose cause has nothing under it. */
export const checkFindings: Check = (caseFile) => {
  if (caseFile.findings.length === 0) {
    return [
      problem('findings-none', {
        weight: 'notice',
        sentence: 'No finding is recorded. A roof found sound is a finding too.',
        place: { kind: 'job' },
      }),
    ]
  }
  return caseFile.findings.flatMap((finding) => [
    ...danglingReferences(finding, caseFile),
    ...placing(finding),
    ...(finding.kind === 'damage' ? damageChecks(finding, caseFile) : []),
    ...opinion(finding),
    ...showsNothing(finding),
  ])
}

function found(
  check: string,
  finding: Finding,
  told: {
    weight: PacketProblem['weight']
    sentence: string
    detail?: string
    fixes?: readonly ProblemFix[]
  },
): PacketProblem {
  return problem(check, {
    ...told,
    sentence: `${findingLabel(finding.number)} ${told.sentence}`,
    place: { kind: 'finding', id: finding.id },
  })
}

function danglingReferences(finding: Finding, { facets, photos }: CaseFile): readonly PacketProblem[] {
  const problems: PacketProblem[] = []
  if (finding.facetId !== null && !facets.some(({ id }) => id === finding.facetId)) {
    problems.push(
      found('finding-facet-gone', finding, {
        weight: 'blocking',
        sentence: 'is on a facet that is no longer on the plan. Choose its facet again.',
      }),
    )
  }
  for (const { photoId } of finding.photos) {
    const photo = photos.find(({ id }) => id === photoId)
    if (photo === undefined) {
      const sentence = 'names a photo that is not in this job. Take it off the finding.'
      problems.push(found('finding-photo-gone', finding, { weight: 'blocking', sentence, detail: photoId }))
    } else if (photo.tags.leftOutBecause !== null) {
      const sentence = `rests on ${photoLabel(photo.number)}, which is left out of the packet. Put the photo in, or take it off the finding.`
      const label = `Put ${photoLabel(photo.number)} back in the packet`
      const fixes = [{ kind: 'tag-photo' as const, label, photoId: photo.id, set: { leftOutBecause: null } }]
      problems.push(found('finding-photo-left-out', finding, { weight: 'mend', sentence, detail: photoId, fixes }))
    }
  }
  return problems
}

function placing(finding: Finding): readonly PacketProblem[] {
  const weight = finding.kind === 'damage' ? 'mend' : 'notice'
  const problems: PacketProblem[] = []
  if (finding.facetId === null) {
    problems.push(found('finding-no-facet', finding, { weight, sentence: 'is on no facet.' }))
  }
  if (finding.pin === null && finding.extent.kind !== 'whole-facet') {
    problems.push(found('finding-no-pin', finding, { weight, sentence: 'has no pin on the plan.' }))
  }
  return problems
}

const askedFor: readonly { role: PhotoRole; check: string; accepts: readonly PhotoRole[]; sentence: string }[] = [
  { role: 'close', check: 'finding-no-close', accepts: ['close', 'scale'], sentence: 'has no close-up.' },
  {
    role: 'mid',
    check: 'finding-no-mid',
    accepts: ['mid'],
    sentence: 'has no mid view that shows it with its neighbours.',
  },
  { role: 'scale', check: 'finding-no-scale', accepts: ['scale'], sentence: 'has no close-up with a scale.' },
  {
    role: 'test',
    check: 'finding-no-test-photo',
    accepts: ['test'],
    sentence: 'has no photo of the test with gauge and lifted nose in one picture.',
  },
]

function damageChecks(finding: Finding, caseFile: CaseFile): readonly PacketProblem[] {
  const problems: PacketProblem[] = [...photosOf(finding, caseFile)]
  if (finding.extent.kind === 'not-stated') {
    const sentence = `does not say how much: count the ${components[finding.component].many}, or say "several, not counted".`
    problems.push(found('finding-extent-unstated', finding, { weight: 'mend', sentence }))
  }
  if (finding.condition === 'lifts-by-hand' && !hasLift(finding, caseFile)) {
    const sentence = 'says that it lifts by hand, but no lift is measured. Add a measurement or a reading.'
    problems.push(found('finding-unmeasured-lift', finding, { weight: 'mend', sentence }))
  }
  const asksMeasure = conditions[finding.condition].measures.length > 0 && finding.condition !== 'lifts-by-hand'
  if (asksMeasure && finding.measurements.length === 0) {
    const sentence = 'has no measurement, though one is usual for what it says.'
    problems.push(found('finding-no-measure', finding, { weight: 'notice', sentence }))
  }
  return problems
}

function photosOf(finding: Finding, caseFile: CaseFile): readonly PacketProblem[] {
  if (finding.photos.length === 0) {
    return [found('finding-no-photo', finding, { weight: 'mend', sentence: 'has no photo.' })]
  }
  const has = new Set(finding.photos.map(({ role }) => role))
  return askedFor
    .filter(({ role, accepts }) => asks(finding, role) && !accepts.some((accepted) => has.has(accepted)))
    .map((asked) =>
      found(asked.check, finding, {
        weight: asked.role === 'close' ? 'mend' : 'notice',
        sentence: asked.sentence,
        fixes: photoThatFits(finding, asked, caseFile),
      }),
    )
}

/** A photo that is tagged with the part it would play: one of the finding's own, else one of the same facet, part and condition. */
function photoThatFits(
  finding: Finding,
  { accepts }: (typeof askedFor)[number],
  { photos }: CaseFile,
): readonly ProblemFix[] {
  const own = new Set(finding.photos.map(({ photoId }) => photoId))
  const fitting = photos.filter(
    ({ tags }) => tags.role !== null && accepts.includes(tags.role) && tags.leftOutBecause === null,
  )
  const fits =
    fitting.find(({ id }) => own.has(id)) ??
    fitting.find(
      ({ tags }) =>
        finding.facetId !== null &&
        tags.facetId === finding.facetId &&
        tags.component === finding.component &&
        tags.condition === finding.condition,
    )
  if (fits === undefined || fits.tags.role === null) return []
  const { role } = fits.tags
  const label = `Show ${photoLabel(fits.number)} in ${findingLabel(finding.number)} as ${photoRoleLabels[role].toLowerCase()}`
  return [{ kind: 'show-photo', label, findingId: finding.id, photoId: fits.id, role }]
}

function asks(finding: Finding, role: PhotoRole): boolean {
  return conditions[finding.condition].photoRoles.includes(role)
}

function hasLift(finding: Finding, { readings }: CaseFile): boolean {
  return (
    finding.measurements.some(({ what }) => what === 'lift-in') ||
    readings.some(({ findingId, liftIn }) => findingId === finding.id && liftIn !== null)
  )
}

function opinion(finding: Finding): readonly PacketProblem[] {
  const { cause, indicatorsSeen, otherExplanations } = finding.cause
  if (cause === 'undetermined') return []
  if (cause === 'not-stated') {
    if (finding.kind !== 'damage') return []
    const sentence = 'gives no opinion on cause. "Undetermined" is an answer too.'
    return [found('finding-cause-unstated', finding, { weight: 'notice', sentence })]
  }
  const problems: PacketProblem[] = []
  if (indicatorsSeen.length === 0) {
    const sentence = 'gives an opinion on cause but lists nothing that was seen for it.'
    problems.push(found('finding-cause-no-indicator', finding, { weight: 'mend', sentence }))
  }
  if (finding.kind === 'damage' && otherExplanations.length === 0) {
    const sentence = 'gives an opinion on cause but no other explanation that was considered.'
    problems.push(found('finding-cause-no-alternative', finding, { weight: 'notice', sentence }))
  }
  return problems
}

function showsNothing(finding: Finding): readonly PacketProblem[] {
  const needsWords = finding.kind === 'not-accessible' || finding.condition === 'other' || finding.component === 'other'
  if (!needsWords || finding.observation.trim() !== '') return []
  const sentence = 'has no observation in words, and its part or condition needs one.'
  return [found('finding-no-observation', finding, { weight: 'mend', sentence })]
}
