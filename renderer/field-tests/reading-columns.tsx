import { useMemo, useRef } from 'react'
import { readingLabel } from '../../app/evidence/reading-label.ts'
import { chosenCriterion } from '../../app/fieldtest/criteria/criteria.ts'
import { judgementWords, judgeReading } from '../../app/fieldtest/judge-reading.ts'
import type { Reading } from '../../app/fieldtest/reading.ts'
import { areaOfReading, roofAreaLabels } from '../../app/fieldtest/roof-area.ts'
import type { ReadingId } from '../../app/job/ids.ts'
import type { JobZones } from '../../app/roof/zones/job-zones.ts'
import { useEdit, useJob } from '../state/job-state.tsx'
import { useRoofZones } from '../state/roof-zones.ts'
import type { Column } from '../ui/data-table.tsx'
import { AreaField, FacetField } from './place-fields.tsx'
import { TypedValueField } from './typed-value-field.tsx'

type ReadingPatch = Partial<Omit<Reading, 'id' | 'number'>>
type SaveReading = (reading: Reading, set: ReadingPatch) => void

/** The way to change some fields of a reading. Changes that the desk has not answered yet go along with the next one. */
export function useSaveReading(): SaveReading {
  const edit = useEdit()
  const waiting = useRef(new Map<ReadingId, ReadingPatch>())
  return ({ id, number: _number, ...rest }, set) => {
    const all = { ...waiting.current.get(id), ...set }
    waiting.current.set(id, all)
    void edit('readings.save', { id, reading: { ...rest, ...all } }).then(() => {
      if (waiting.current.get(id) === all) waiting.current.delete(id)
    })
  }
}

/** Columns of the readings. Facet, area, lift and force edit in place; the rest is edited in the details. */
export function useReadingColumns(): readonly Column<Reading>[] {
  const { survey, facets } = useJob()
  const zones = useRoofZones()
  const save = useSaveReading()
  const criterion = useMemo(() => chosenCriterion(survey), [survey])
  const letterOf = ({ facetId }: Reading) => facets.find(({ id }) => id === facetId)?.letter ?? null
  return [
    {
      key: 'number',
      title: 'No.',
      width: '52px',
      cell: ({ number }) => <strong>{readingLabel(number)}</strong>,
      sortBy: ({ number }) => number,
    },
    ...placeColumns({ save, zones, letterOf }),
    ...valueColumns(save),
    {
      key: 'judgement',
      title: 'Under the criterion',
      width: 'minmax(150px, 1fr)',
      cell: (reading) => judgementWords(judgeReading(reading, criterion, survey.listedResistanceLbf)),
    },
  ]
}

interface Placing {
  readonly save: SaveReading
  readonly zones: JobZones
  readonly letterOf: (reading: Reading) => string | null
}

function placeColumns({ save, zones, letterOf }: Placing): readonly Column<Reading>[] {
  return [
    {
      key: 'facet',
      title: 'Facet',
      width: '88px',
      cell: (reading) => (
        <FacetField
          label={`Facet of ${readingLabel(reading.number)}`}
          hideLabel
          value={reading.facetId}
          onChange={(facetId) => save(reading, { facetId })}
        />
      ),
      sortBy: letterOf,
    },
    {
      key: 'area',
      title: 'Area',
      width: '124px',
      cell: (reading) => {
        const placed = areaOfReading(reading, zones)
        if (placed.kind === 'by-pin') return `${roofAreaLabels[placed.area]}, by its pin`
        return (
          <AreaField
            label={`Area of ${readingLabel(reading.number)}`}
            hideLabel
            value={reading.area}
            onChange={(area) => save(reading, { area })}
          />
        )
      },
    },
  ]
}

function valueColumns(save: SaveReading): readonly Column<Reading>[] {
  return [
    {
      key: 'lift',
      title: 'Lift, in',
      width: '84px',
      cell: (reading) => (
        <TypedValueField
          what="lift"
          label={`Lift of ${readingLabel(reading.number)}`}
          hideLabel
          value={reading.liftIn}
          typed={reading.liftTyped}
          onChange={({ value, typed }) => save(reading, { liftIn: value, liftTyped: typed })}
        />
      ),
      sortBy: ({ liftIn }) => liftIn,
    },
    {
      key: 'force',
      title: 'Force, lbf',
      width: '92px',
      cell: (reading) => (
        <TypedValueField
          what="force"
          label={`Force of ${readingLabel(reading.number)}`}
          hideLabel
          value={reading.forceLbf}
          typed={reading.forceTyped}
          onChange={({ value, typed }) =>
            save(reading, { forceLbf: value, forceTyped: typed, method: value === null ? 'by-hand' : 'gauge' })
          }
        />
      ),
      sortBy: ({ forceLbf }) => forceLbf,
    },
  ]
}
