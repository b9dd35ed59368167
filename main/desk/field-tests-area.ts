import { parse } from 'csv-parse/sync'
import { refuse } from '../../app/contract/app-error.ts'
import type { SurveyPatch } from '../../app/contract/field-tests.ts'
import { readCsvReadings } from '../../app/fieldtest/csv-readings.ts'
import { readingSchema, type Reading } from '../../app/fieldtest/reading.ts'
import { fieldSurveySchema, handCheckFault, type FieldSurvey } from '../../app/fieldtest/survey.ts'
import { readingIdSchema } from '../../app/job/ids.ts'
import type { ReadDb } from '../store/database.ts'
import type { Write } from '../store/record-edits.ts'
import { fieldSurveyOf } from '../store/records/field-survey.ts'
import { facetTable, findingTable, readingTable } from '../store/records/tables.ts'
import type { DeskWorld } from './desk-world.ts'
import { editJob } from './edit-job.ts'
import type { Area } from './handlers.ts'
import { needRecords } from './need-records.ts'

/** Uplift readings, one by one and many in a step. */
export function readingsArea(world: DeskWorld): Area<'readings'> {
  return {
    'readings.save': ({ jobId, id, reading }) =>
      editJob(world, jobId, (db, newNumber) => {
        const known =
          id === null
            ? null
            : (readingTable.get(db, { jobId, id }) ?? refuse('not-found', 'This reading is no longer in the job.'))
        needRecords(db, jobId, reading)
        const after = readingSchema.parse({
          ...reading,
          id: known?.id ?? readingIdSchema.parse(world.newId()),
          number: known?.number ?? newNumber('reading'),
        })
        return {
          summary: `${known === null ? 'Add' : 'Change'} reading ${after.number}`,
          writes: [{ record: 'reading', id: after.id, after }],
          result: { id: after.id, number: after.number },
        }
      }),
    'readings.add': ({ jobId, readings }) =>
      editJob(world, jobId, (db, newNumber) => {
        const added = readings.map((reading): Reading => {
          needRecords(db, jobId, reading)
          return { ...reading, id: readingIdSchema.parse(world.newId()), number: newNumber('reading') }
        })
        return {
          summary: added.length === 1 ? `Add reading ${added[0]?.number}` : `Add ${added.length} readings`,
          writes: added.map((after): Write => ({ record: 'reading', id: after.id, after })),
          result: { ids: added.map(({ id }) => id) },
        }
      }),
    'readings.remove': ({ jobId, id }) =>
      editJob(world, jobId, (db) => {
        const reading =
          readingTable.get(db, { jobId, id }) ?? refuse('not-found', 'This reading is no longer in the job.')
        return {
          summary: `Remove reading ${reading.number}`,
          writes: [{ record: 'reading', id, after: null }],
          result: {},
        }
      }),
  }
}

const partNames = {
  criterionKey: 'the criterion',
  ownCriteria: 'own criteria',
  agency: 'the testing agency',
  listedResistanceLbf: 'the listed resistance',
  instruments: 'instruments',
  checks: 'hand checks',
  squares: 'test squares',
  others: 'other tests',
} as const satisfies Record<keyof FieldSurvey, string>

/** Criterion, instruments, hand checks, test squares and other tests. */
export function surveyArea(world: DeskWorld): Area<'survey'> {
  return {
    'survey.save': ({ jobId, set }) =>
      editJob(world, jobId, (db) => {
        const after = fieldSurveySchema.parse({ ...fieldSurveyOf(db, jobId), ...onlyGiven(set) })
        refuseFaults(db, jobId, after)
        const parts = Object.entries(partNames).flatMap(([key, name]) => (key in onlyGiven(set) ? [name] : []))
        return {
          summary: `Change ${parts.join(', ')} of the field tests`,
          writes: [{ record: 'field-survey', id: jobId, after }],
          result: {},
        }
      }),
  }
}

/** Files of readings, read but not kept. */
export function fieldFilesArea(world: DeskWorld): Area<'field-files'> {
  const { db } = world.library
  return {
    'field-files.read-csv': ({ jobId, text }) =>
      readCsvReadings(tableOf(text), {
        facets: facetTable.list(db, jobId),
        findings: findingTable.list(db, jobId),
      }),
  }
}

/** Cells of a CSV file. The separator is the one that its first line has most of, so that decimal commas survive. */
function tableOf(text: string): readonly (readonly string[])[] {
  const firstLine = text.replace(/^\uFEFF/, '').split(/\r?\n/, 1)[0] ?? ''
  const countOf = (mark: string) => firstLine.split(mark).length
  const [delimiter = ','] = [',', ';', '\t'].toSorted((a, b) => countOf(b) - countOf(a))
  try {
    const records: string[][] = parse(text, {
      bom: true,
      delimiter,
      relax_column_count: true,
      skip_empty_lines: true,
      trim: true,
    })
    return records
  } catch (cause) {
    return refuse('invalid', 'This file can’t be read as a table.', {
      about: 'text',
      help: `Save it as CSV and try again. ${cause instanceof Error ? cause.message : ''}`.trim(),
    })
  }
}

/** A field that is there but undefined, as the window's channel can carry it, is not a change. */
function onlyGiven(set: SurveyPatch): SurveyPatch {
  const given = { ...set }
  for (const key in given) if (given[key as keyof SurveyPatch] === undefined) delete given[key as keyof SurveyPatch]
  return given
}

/** Refuses counts that don't fit together and lines that point to records which are not in the job. */
function refuseFaults(db: ReadDb, jobId: string, survey: FieldSurvey): void {
  for (const check of survey.checks) {
    const fault = handCheckFault(check)
    if (fault !== null) refuse('invalid', fault, { about: 'checks' })
  }
  const named = [...survey.checks, ...survey.squares, ...survey.others]
  for (const { facetId, photoIds } of named) needRecords(db, jobId, { facetId, photoIds })
}
