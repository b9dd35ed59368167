import { componentLabel } from '../evidence/catalog/components.ts'
import type { CaseFile } from '../evidence/case-file.ts'
import { readingLabel } from '../evidence/reading-label.ts'
import { chosenCriterion } from '../fieldtest/criteria/criteria.ts'
import { judgementWords, judgeReading } from '../fieldtest/judge-reading.ts'
import { outcomeLabels, pullDirectionLabels, pullPointLabels } from '../fieldtest/reading-words.ts'
import type { Reading } from '../fieldtest/reading.ts'
import { areaOfReading, type PlacedArea } from '../fieldtest/roof-area.ts'
import { jobZones } from '../roof/zones/job-zones.ts'
import { type Columns, type CsvTable, table } from './csv-table.ts'

/** What people call the records that a line names. */
interface LineNames {
  readonly facet: (id: string | null) => string
  readonly finding: (id: string | null) => string
  readonly photo: (id: string) => string
}

/** Columns of readings.csv. Units stand in the titles; what was typed in another unit stands beside. */
export function readingColumns({ job, facets, survey }: CaseFile, names: LineNames): Columns<Reading> {
  const criterion = chosenCriterion(survey)
  const zones = jobZones({ facets, upAzimuthDeg: job.frame.upAzimuthDeg, property: job.sheet.property })
  const judged = (reading: Reading) => judgeReading(reading, criterion, survey.listedResistanceLbf)
  const placed = (reading: Reading) => areaOfReading(reading, zones)
  return [
    ['reading', ({ number }) => readingLabel(number)],
    ['facet', ({ facetId }) => names.facet(facetId)],
    ['area', (reading) => areaKey(placed(reading))],
    ['area_by', (reading) => placed(reading).kind],
    ['component', ({ component }) => componentLabel(component)],
    ['lift_in', ({ liftIn }) => liftIn],
    ['lift_typed', ({ liftTyped }) => liftTyped],
    ['force_lbf', ({ forceLbf }) => forceLbf],
    ['force_typed', ({ forceTyped }) => forceTyped],
    ['method', ({ method }) => method],
    ['pull_point', ({ pullPoint }) => pullPointLabels[pullPoint]],
    ['pull_direction', ({ pullDirection }) => pullDirectionLabels[pullDirection]],
    ['outcome', ({ outcome }) => outcomeLabels[outcome]],
    ['instrument', ({ instrument }) => instrument],
    ['tester', ({ tester }) => tester],
    ['taken_at', ({ takenAt }) => takenAt ?? ''],
    ['finding', ({ findingId }) => names.finding(findingId)],
    ['photos', ({ photoIds }) => photoIds.map(names.photo).join(' ')],
    ['plan_x_ft', ({ at }) => at?.xFt ?? null],
    ['plan_y_ft', ({ at }) => at?.yFt ?? null],
    ['criterion', () => criterion.name],
    ['under_criterion', (reading) => judgementWords(judged(reading))],
    ['working', (reading) => judged(reading).working],
    ['note', ({ note }) => note],
  ]
}

function areaKey(placed: PlacedArea): string {
  return placed.kind === 'unknown' ? '' : placed.area
}

/** hand-checks.csv: tiles checked and found loose, line by line as they were counted. */
export function handCheckTable({ survey }: CaseFile, names: LineNames): CsvTable {
  return table(
    'hand-checks.csv',
    [
      ['facet', ({ facetId }) => names.facet(facetId)],
      ['area', ({ area }) => area],
      ['checked', ({ checked }) => checked],
      ['loose', ({ loose }) => loose],
      ['pulled', ({ tested }) => tested],
      ['by', ({ by }) => by],
      ['photos', ({ photoIds }) => photoIds.map(names.photo).join(' ')],
      ['note', ({ note }) => note],
    ],
    survey.checks,
  )
}
