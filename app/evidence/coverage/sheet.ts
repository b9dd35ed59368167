import type { JobSheet } from '../../job/sheet.ts'
import type { Check } from './check.ts'
import { problem } from './check.ts'

interface RequiredField {
  readonly field: string
  readonly isEmpty: (sheet: JobSheet) => boolean
  readonly sentence: string
}

const blank = (text: string) => text.trim() === ''

const requiredFields: readonly RequiredField[] = [
  {
    field: 'property.address',
    isEmpty: (sheet) => blank(sheet.property.address),
    sentence: 'The job sheet has no address. Say which house this is.',
  },
  {
    field: 'property.frontAzimuthDeg',
    isEmpty: (sheet) => sheet.property.frontAzimuthDeg === null,
    sentence:
      'The direction of the front is not set, so "left of the front door" can’t be placed. Set it on the job sheet.',
  },
  {
    field: 'owner.name',
    isEmpty: (sheet) => blank(sheet.owner.name),
    sentence: 'The owner’s name is empty.',
  },
  {
    field: 'loss.date',
    isEmpty: (sheet) => sheet.loss.date === null,
    sentence: 'The date of loss is empty.',
  },
  {
    field: 'inspection.dates',
    isEmpty: (sheet) => sheet.inspection.dates.length === 0,
    sentence: 'No inspection date is given.',
  },
  {
    field: 'inspection.inspector',
    isEmpty: (sheet) => blank(sheet.inspection.inspector),
    sentence: 'The inspector’s name is empty.',
  },
  {
    field: 'contractor.name',
    isEmpty: (sheet) => blank(sheet.contractor.name),
    sentence: 'The contractor’s name is empty.',
  },
  {
    field: 'contractor.licence',
    isEmpty: (sheet) => blank(sheet.contractor.licence),
    sentence: 'The contractor’s licence number is empty.',
  },
  {
    field: 'covering.class',
    isEmpty: (sheet) => sheet.covering.class === 'not-stated',
    sentence: 'The roof covering is not stated.',
  },
]

/** Fields of the job sheet that every packet needs and that are empty. */
export const checkSheet: Check = ({ job }) =>
  requiredFields
    .filter(({ isEmpty }) => isEmpty(job.sheet))
    .map(({ field, sentence }) => problem('sheet-empty', { weight: 'mend', sentence, place: { kind: 'sheet', field } }))
