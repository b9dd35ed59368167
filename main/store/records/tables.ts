import { findingSchema } from '../../../app/evidence/finding.ts'
import { readingSchema } from '../../../app/fieldtest/reading.ts'
import { draftDecisionSchema, narrationSchema } from '../../../app/narration/narration.ts'
import { facetSchema } from '../../../app/roof/facet.ts'
import { houseOutlineSchema } from '../../../app/roof/house-outline.ts'
import { planImageSchema } from '../../../app/roof/plan-image.ts'
import {
  weatherChoicesSchema,
  weatherSourceSchema,
  weatherStationSchema,
} from '../../../app/weather/weather-records.ts'
import { dataTable } from './data-table.ts'

export const outlineTable = dataTable(houseOutlineSchema, {
  name: 'outlines',
  column: 'name',
  key: (outline) => outline.name,
})
export const facetTable = dataTable(facetSchema, { name: 'facets', column: 'letter', key: (facet) => facet.letter })
export const findingTable = dataTable(findingSchema, {
  name: 'findings',
  column: 'number',
  key: (finding) => finding.number,
})
export const readingTable = dataTable(readingSchema, {
  name: 'readings',
  column: 'number',
  key: (reading) => reading.number,
})
/** An image is under the plan once, whoever laid it there. */
export const planImageTable = dataTable(planImageSchema, {
  name: 'plan_images',
  column: 'file_id',
  key: (image) => image.file.id,
})
export const narrationTable = dataTable(narrationSchema, {
  name: 'narrations',
  column: 'name',
  key: (narration) => narration.name,
})
export const draftDecisionTable = dataTable(draftDecisionSchema, {
  name: 'draft_decisions',
  column: 'draft_key',
  key: ({ key, startMs }) => `${startMs} ${key}`,
})
export const weatherStationTable = dataTable(weatherStationSchema, {
  name: 'weather_stations',
  column: 'name',
  key: (station) => station.code,
})
export const weatherSourceTable = dataTable(weatherSourceSchema, {
  name: 'weather_sources',
  column: 'name',
  key: (source) => source.attachmentId ?? source.id,
})
/** One record in a job, under the job's own identity. */
export const weatherChoicesTable = dataTable(weatherChoicesSchema, {
  name: 'weather_choices',
  column: 'name',
  key: () => 'choices',
})
