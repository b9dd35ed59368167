import { useDeferredValue, useMemo } from 'react'
import { areaFigure, squaresFigure } from '../../app/packet/format/areas.ts'
import { directionWords } from '../../app/packet/format/directions.ts'
import { feetInches } from '../../app/packet/format/lengths.ts'
import { edgeTotals, roofEdges } from '../../app/roof/edges.ts'
import type { Facet } from '../../app/roof/facet.ts'
import { facetGeometry, roofTotals, type FacetGeometry } from '../../app/roof/facet-geometry.ts'
import type { EdgeKind } from '../../app/roof/plan-drawing.ts'
import { useJob } from '../state/job-state.tsx'
import { useFacetName } from '../state/roof-zones.ts'
import { useRelated, useSelection } from '../state/selection.tsx'
import { type Column, DataTable } from '../ui/data-table.tsx'
import { countWords } from '../ui/quantity-words.ts'
import { edgeWords } from './edge-lines.tsx'
import styles from './facets-table.module.css'

interface Row {
  readonly facet: Facet
  readonly geometry: FacetGeometry
  /** As given, else in plain words. */
  readonly name: string
}

const columns: readonly Column<Row>[] = [
  {
    key: 'letter',
    title: 'Facet',
    width: '64px',
    cell: ({ facet }) => <FacetLetter facet={facet} />,
    sortBy: ({ facet }) => facet.letter,
  },
  {
    key: 'name',
    title: 'Name',
    width: 'minmax(90px, 1fr)',
    cell: ({ name, facet }) => (facet.name === '' ? <span className={styles['worded']}>{name}</span> : name),
    sortBy: ({ name }) => name,
  },
  {
    key: 'pitch',
    title: 'Pitch',
    width: '66px',
    align: 'end',
    cell: ({ geometry }) => geometry.pitchLabel,
    sortBy: ({ facet }) => facet.pitchRise,
  },
  {
    key: 'faces',
    title: 'Faces',
    width: '140px',
    cell: ({ facet }) => directionWords(facet.downslopeAzimuthDeg),
    sortBy: ({ facet }) => facet.downslopeAzimuthDeg,
  },
  {
    key: 'area',
    title: 'Area, sq ft',
    width: '92px',
    align: 'end',
    cell: ({ geometry }) => areaFigure(geometry.areaSqFt),
    sortBy: ({ geometry }) => geometry.areaSqFt,
  },
  {
    key: 'squares',
    title: 'Squares',
    width: '78px',
    align: 'end',
    cell: ({ geometry }) => squaresFigure(geometry.squares),
    sortBy: ({ geometry }) => geometry.squares,
  },
  {
    key: 'inspected',
    title: 'Inspected',
    width: '88px',
    align: 'end',
    cell: ({ facet }) => (facet.inspected.percent === null ? 'not stated' : `${facet.inspected.percent}%`),
    sortBy: ({ facet }) => facet.inspected.percent,
  },
]

/** The letter, with a mark where something of the facet was set by hand. */
function FacetLetter({ facet: { letter, from, setByHand } }: { facet: Facet }) {
  return (
    <>
      <strong>{letter}</strong>
      {from === null || setByHand.length === 0 ? null : <span className={styles['worded']}> by hand</span>}
    </>
  )
}

const NO_ROWS: readonly Row[] = []

/** All facets with pitch, direction, area and inspected share, and the roof's sums under them. */
export function FacetsTable({ onOpen }: { onOpen: (facet: Facet) => void }) {
  const { facets } = useJob()
  const { selection, select } = useSelection()
  const { facetIds } = useRelated()
  const nameOf = useFacetName()
  const known = useMemo(
    () => facets.map((facet) => ({ facet, geometry: facetGeometry(facet), name: nameOf(facet) })),
    [facets, nameOf],
  )
  // The plan is drawn first; the table follows.
  const rows = useDeferredValue(known, NO_ROWS)
  return (
    <div className={styles['table']}>
      <div className={styles['rows']}>
        <DataTable
          label="Facets"
          columns={columns}
          rows={rows}
          rowKey={({ facet }) => facet.id}
          rowHeightPx={28}
          selectedKey={selection.kind === 'facet' ? selection.id : null}
          relatedKeys={facetIds}
          onSelect={({ facet }) => select({ kind: 'facet', id: facet.id })}
          onOpen={({ facet }) => onOpen(facet)}
          initialSorting={{ column: 'letter', direction: 'up' }}
        />
      </div>
      <RoofSums />
    </div>
  )
}

function RoofSums() {
  const { facets, job } = useJob()
  const { upAzimuthDeg } = job.frame
  const sums = useMemo(() => {
    const edges = roofEdges(facets, upAzimuthDeg)
    const totals = edgeTotals(edges)
    const kinds = (Object.keys(edgeWords) as EdgeKind[]).filter((kind) => totals[kind] > 0)
    const byHand = (kind: EdgeKind) => edges.filter((edge) => edge.kind === kind && edge.foundKind !== undefined).length
    const lengths = kinds.map((kind) => ({ kind, lengthFt: totals[kind], byHand: byHand(kind) }))
    return { totals: roofTotals(facets), lengths }
  }, [facets, upAzimuthDeg])
  const { planAreaSqFt, areaSqFt, squares } = sums.totals
  return (
    <div className={styles['sums']}>
      <p>
        <strong>
          {countWords(facets.length, 'facet')}, {areaFigure(areaSqFt)} sq ft sloped, {squaresFigure(squares)} squares
        </strong>{' '}
        on {areaFigure(planAreaSqFt)} sq ft of plan, no waste added
      </p>
      <p className={styles['lengths']}>
        {sums.lengths.map(({ kind, lengthFt, byHand }) => (
          <span key={kind}>
            {edgeWords[kind]} {feetInches(lengthFt)}
            {byHand === 0 ? '' : ` (${byHand} stated by hand)`}
          </span>
        ))}
      </p>
    </div>
  )
}
