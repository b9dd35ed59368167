import { refuse } from '../../app/contract/app-error.ts'
import { contentFault, type HandedItem } from '../../app/diary/entry.ts'
import type { DescribedJob } from '../../app/job/described-job.ts'
import { checkOutline, outlineFaultSentence } from '../../app/roof/outline.ts'
import { shippedWorkShares } from '../../app/rules/shipped-work-shares.ts'
import { bids } from '../../app/scope/scope-record.ts'
import type { Waiting } from '../library/intake/find-files.ts'

/**
 * Checks what a schema can't: that every name in a described job names something, and one thing only.
 *
 * @throws AppFailure `invalid` naming the field
 */
export function checkReferences(described: DescribedJob, files: readonly Waiting[]): void {
  const { facets, findings, readings, photos } = described
  refuseRepeats(
    'facets',
    'letter',
    facets.map((facet) => facet.letter),
  )
  refuseRepeats(
    'findings',
    'number',
    findings.map((finding) => finding.number),
  )
  refuseRepeats(
    'readings',
    'number',
    readings.map((reading) => reading.number),
  )
  refuseRepeats(
    'photos',
    'file',
    photos.map((photo) => photo.file),
  )
  checkDiary(described)
  const need = needs(described, files)
  facets.forEach((facet, i) => {
    const fault = checkOutline(facet.outline)[0]
    if (fault !== undefined) refuseField(`facets.${i}.outline`, outlineFaultSentence(fault))
  })
  described.narrations.forEach(({ file }, i) => {
    if (!files.some(({ fileName }) => fileName === file)) {
      refuseField(`narrations.${i}.file`, `there is no file "${file}" in narration/.`)
    }
  })
  photos.forEach((photo, i) => {
    need.file(photo.file, `photos.${i}.file`)
    need.facet(photo.facet, `photos.${i}.facet`)
  })
  findings.forEach((finding, i) => {
    need.facet(finding.facet, `findings.${i}.facet`)
    finding.photos.forEach((photo, k) => need.file(photo.file, `findings.${i}.photos.${k}.file`))
  })
  readings.forEach((reading, i) => {
    need.facet(reading.facet, `readings.${i}.facet`)
    reading.photos.forEach((file, k) => need.file(file, `readings.${i}.photos.${k}`))
    need.finding(reading.finding, `readings.${i}.finding`)
  })
  for (const bid of bids) {
    described.scope?.facets[bid]?.forEach((letter, i) => need.facet(letter, `scope.facets.${bid}.${i}`))
  }
  checkAssessment(described, need)
  for (const list of ['checks', 'squares', 'others'] as const) {
    described.survey?.[list].forEach(({ facet, photos: shown }, i) => {
      need.facet(facet, `survey.${list}.${i}.facet`)
      shown.forEach((file, k) => need.file(file, `survey.${list}.${i}.photos.${k}`))
    })
  }
}

function checkAssessment({ assessment }: DescribedJob, need: ReturnType<typeof needs>): void {
  assessment?.sections.forEach(({ facets }, i) =>
    facets.forEach((letter, k) => need.facet(letter, `assessment.sections.${i}.facets.${k}`)),
  )
  for (const list of ['planned', 'earlier'] as const) {
    assessment?.[list].forEach(({ facet }, i) => need.facet(facet, `assessment.${list}.${i}.facet`))
  }
  assessment?.treatments.forEach(({ finding }, i) => need.finding(finding, `assessment.treatments.${i}.finding`))
  const key = assessment?.rule ?? null
  if (key !== null && !shippedWorkShares.some((rule) => rule.key === key)) {
    refuseField('assessment.rule', `"${key}" is no rule on the share of work that comes with the program.`)
  }
}

function checkDiary(described: DescribedJob): void {
  described.diary.forEach(({ content }, i) => {
    const fault = contentFault(content)
    if (fault !== null) refuseField(`diary.${i}.content.${fault.field}`, fault.sentence)
    if (content.attachmentIds.length > 0 || (content.kind === 'handed-over' && content.items.some(hasPacket))) {
      refuseField(`diary.${i}.content`, 'files and packets are tied to entries in the program, not in job.json.')
    }
  })
  refuseRepeats(
    'diary',
    'number',
    described.diary.map((entry) => entry.number),
  )
}

function hasPacket({ packet }: HandedItem): boolean {
  return packet !== null
}

function needs(described: DescribedJob, files: readonly Waiting[]) {
  const counts = new Map<string, number>()
  for (const { fileName } of files) counts.set(fileName, (counts.get(fileName) ?? 0) + 1)
  const letters = new Set(described.facets.map((facet) => facet.letter))
  const numbers = new Set(described.findings.map((finding) => finding.number))
  return {
    file: (file: string, field: string) => {
      const count = counts.get(file) ?? 0
      if (count === 0) refuseField(field, `there is no photo "${file}" in photos/.`)
      if (count > 1) refuseField(field, `photos/ has ${count} files called "${file}". Give them names of their own.`)
    },
    facet: (letter: string | null, field: string) => {
      if (letter !== null && !letters.has(letter)) refuseField(field, `there is no facet "${letter}".`)
    },
    finding: (number: number | null, field: string) => {
      if (number !== null && !numbers.has(number)) refuseField(field, `there is no finding ${number}.`)
    },
  }
}

function refuseRepeats(list: string, field: string, values: readonly (string | number)[]): void {
  const seen = new Set<string | number>()
  values.forEach((value, i) => {
    if (seen.has(value)) refuseField(`${list}.${i}.${field}`, `${value} is used twice.`)
    seen.add(value)
  })
}

function refuseField(field: string, why: string): never {
  return refuse('invalid', `job.json, ${field}: ${why}`, { about: field })
}
