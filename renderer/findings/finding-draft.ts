import type { z } from 'zod'
import type { ComponentKey, ConditionKey } from '../../app/evidence/catalog/keys.ts'
import { type Extent, type Finding, findingSchema, type Measurement } from '../../app/evidence/finding.ts'
import type { Photo } from '../../app/evidence/photo.ts'

/** An extent on the form: the amount may still be missing. */
export interface DraftExtent {
  readonly kind: Extent['kind']
  /** Count, feet or square feet, whichever the kind asks for. */
  readonly amount: number | null
}

/** A measured value on the form: the value may still be missing. */
export type DraftMeasurement = Omit<Measurement, 'value'> & { readonly value: number | null }

/** A finding on the form: like the record, but with fields that may still be open. */
export type FindingDraft = Omit<Finding, 'id' | 'number' | 'component' | 'condition' | 'extent' | 'measurements'> & {
  readonly component: ComponentKey | null
  readonly condition: ConditionKey | null
  readonly extent: DraftExtent
  readonly measurements: readonly DraftMeasurement[]
}

const savedSchema = findingSchema.omit({ id: true, number: true })
export type SavedFinding = z.output<typeof savedSchema>

/** What keeps a draft from being saved, and the field it is about. */
export interface DraftFault {
  readonly field: 'component' | 'condition' | 'extent' | 'measurements' | 'other'
  readonly text: string
}

/** A form with nothing filled in. */
export function blankDraft(): FindingDraft {
  const {
    component: _component,
    condition: _condition,
    ...rest
  } = savedSchema.parse({
    kind: 'damage',
    component: 'other',
    condition: 'other',
  })
  return { ...rest, component: null, condition: null, extent: { kind: 'not-stated', amount: null }, measurements: [] }
}

/** The form for a finding that is already on record. */
export function draftOfFinding(finding: Finding): FindingDraft {
  const { id: _id, number: _number, ...rest } = finding
  return { ...rest, extent: draftExtent(finding.extent) }
}

/** The form for a finding that is proposed but not on record. */
export function draftOfSaved(finding: SavedFinding): FindingDraft {
  return { ...finding, extent: draftExtent(finding.extent) }
}

const kindOfCondition: Partial<Record<ConditionKey, Finding['kind']>> = {
  sound: 'sound',
  'not-accessible': 'not-accessible',
  'prior-repair': 'earlier-repair',
  'surface-ageing': 'wear',
}

/** A form filled with what the photos agree on: facet, component, condition; each photo keeps its role. */
export function draftFromPhotos(photos: readonly Photo[]): FindingDraft {
  const condition = agreed(photos.map((photo) => photo.tags.condition))
  return {
    ...blankDraft(),
    kind: (condition === null ? undefined : kindOfCondition[condition]) ?? 'damage',
    facetId: agreed(photos.map((photo) => photo.tags.facetId)),
    component: agreed(photos.map((photo) => photo.tags.component)),
    condition,
    photos: photos.map((photo) => ({ photoId: photo.id, role: photo.tags.role ?? 'other' })),
  }
}

/** The value that all state alike; photos that say nothing don't disagree. */
function agreed<T>(values: readonly (T | null)[]): T | null {
  const stated = new Set(values.filter((value) => value !== null))
  const [only] = stated
  return stated.size === 1 && only !== undefined ? only : null
}

/** Turns a form into a record, or says what is still open. Empty rows are dropped. */
export function findingOfDraft(draft: FindingDraft): { finding: SavedFinding } | { faults: readonly DraftFault[] } {
  const faults: DraftFault[] = []
  if (draft.component === null) faults.push({ field: 'component', text: 'Choose the component that this is about.' })
  if (draft.condition === null) faults.push({ field: 'condition', text: 'Choose the condition that was seen.' })
  const extent = savedExtent(draft.extent)
  if (extent === null) faults.push({ field: 'extent', text: 'Type the amount, or choose an extent without one.' })
  if (draft.measurements.some((row) => row.value === null)) {
    faults.push({ field: 'measurements', text: 'A measured row has no value. Type it or remove the row.' })
  }
  if (faults.length > 0) return { faults }
  const { cause } = draft
  const parsed = savedSchema.safeParse({
    ...draft,
    extent,
    cause: { ...cause, otherExplanations: cause.otherExplanations.filter((row) => row.explanation.trim() !== '') },
  })
  if (parsed.success) return { finding: parsed.data }
  return { faults: parsed.error.issues.map((issue) => ({ field: 'other' as const, text: issue.message })) }
}

function draftExtent(extent: Extent): DraftExtent {
  switch (extent.kind) {
    case 'exactly':
    case 'at-least':
    case 'about':
      return { kind: extent.kind, amount: extent.count }
    case 'length':
      return { kind: 'length', amount: extent.lengthFt }
    case 'area':
      return { kind: 'area', amount: extent.areaSqFt }
    case 'several':
    case 'examples':
    case 'whole-facet':
    case 'not-stated':
      return { kind: extent.kind, amount: null }
  }
}

/** The extent as a record; null while its amount is missing. */
export function savedExtent({ kind, amount }: DraftExtent): Extent | null {
  switch (kind) {
    case 'exactly':
    case 'at-least':
    case 'about':
      return amount === null ? null : { kind, count: amount }
    case 'length':
      return amount === null ? null : { kind, lengthFt: amount }
    case 'area':
      return amount === null ? null : { kind, areaSqFt: amount }
    case 'several':
    case 'examples':
    case 'whole-facet':
    case 'not-stated':
      return { kind }
  }
}

/** True when the form says the same as before. */
export function sameDraft(a: FindingDraft, b: FindingDraft): boolean {
  return JSON.stringify(a) === JSON.stringify(b)
}
