import { useDeferredValue, useState } from 'react'
import { readingLabel } from '../../app/evidence/reading-label.ts'
import { chosenCriterion } from '../../app/fieldtest/criteria/criteria.ts'
import { ruleWords } from '../../app/fieldtest/criteria/criterion.ts'
import { judgeReading } from '../../app/fieldtest/judge-reading.ts'
import { liftPlot, liftPlotLegend } from '../../app/fieldtest/plots/lift-plot.ts'
import type { Reading } from '../../app/fieldtest/reading.ts'
import { useCommands } from '../state/commands.ts'
import { useJob } from '../state/job-state.tsx'
import { useSelection } from '../state/selection.tsx'
import { Button } from '../ui/button.tsx'
import { DataTable } from '../ui/data-table.tsx'
import styles from './field-tests.module.css'
import { ImportDialog } from './import-dialog.tsx'
import { NewReading } from './new-reading.tsx'
import { PlotFigure } from './plot-figure.tsx'
import { useReadingColumns } from './reading-columns.tsx'
import { ShowWorking } from './show-working.tsx'

const NO_ROWS: readonly Reading[] = []

/** Lift readings: a line to enter the next one, a table that edits in place, and the plot against the criterion. */
export function ReadingsPane() {
  const { readings, survey } = useJob()
  // The table measures itself once it stands; its rows follow.
  const rows = useDeferredValue(readings, NO_ROWS)
  const { selection, select } = useSelection()
  const columns = useReadingColumns()
  const [isImporting, setImporting] = useState(false)
  const startImport = () => setImporting(true)
  useCommands([
    { id: 'readings.import', label: 'Bring readings in from a file', keys: 'I', enabled: true, perform: startImport },
  ])
  const criterion = chosenCriterion(survey)
  const plot = liftPlot(readings, criterion, survey.listedResistanceLbf)
  return (
    <>
      <NewReading />
      <p className={styles['quiet']}>
        Enter adds the reading and starts the next. Held against: {criterion.name}. {ruleWords(criterion.rule)} [
        {criterion.status}]
      </p>
      <p>
        <Button onPress={startImport}>Bring in a file…</Button>
      </p>
      {readings.length === 0 ? (
        <p className={styles['quiet']}>
          No reading yet. Type the lift and the force of the first tile above, or “by hand” where no force was read.
        </p>
      ) : (
        <div className={styles['readings']}>
          <DataTable
            label="Lift readings"
            columns={columns}
            rows={rows}
            rowKey={({ id }) => id}
            rowHeightPx={38}
            selectedKey={selection.kind === 'reading' ? selection.id : null}
            onSelect={({ id }) => select({ kind: 'reading', id })}
            initialSorting={{ column: 'number', direction: 'up' }}
          />
        </div>
      )}
      {plot === null ? null : <PlotFigure plot={plot} legend={liftPlotLegend} />}
      {readings.length === 0 ? null : (
        <ShowWorking
          lines={readings.map(
            (reading) =>
              `${readingLabel(reading.number)}: ${judgeReading(reading, criterion, survey.listedResistanceLbf).working}`,
          )}
        />
      )}
      {isImporting ? <ImportDialog onClose={() => setImporting(false)} /> : null}
    </>
  )
}
