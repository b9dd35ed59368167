import { useDeferredValue, useMemo } from 'react'
import { causes } from '../../app/evidence/catalog/causes.ts'
import { findingKindLabels } from '../../app/evidence/catalog/labels.ts'
import { type Finding, findingLabel } from '../../app/evidence/finding.ts'
import type { FacetId } from '../../app/job/ids.ts'
import { whatWords } from '../../app/packet/finding-words.ts'
import { findingZone, shortZone } from '../../app/roof/zones/finding-zone.ts'
import type { JobZones } from '../../app/roof/zones/job-zones.ts'
import { shortExtent } from './short-extent.ts'
import { useJob } from '../state/job-state.tsx'
import { useProblems } from '../state/problems.tsx'
import { useRoofZones } from '../state/roof-zones.ts'
import { useRelated, useSelection } from '../state/selection.tsx'
import { Badge } from '../ui/badge.tsx'
import { type Column, DataTable } from '../ui/data-table.tsx'

interface FindingsTableProps {
  readonly findings: readonly Finding[]
  readonly onOpen: (finding: Finding) => void
}

const NO_ROWS: readonly Finding[] = []

/** The findings in a row each: what, how much, where, shown by how many photos, and the opinion on cause. */
export function FindingsTable({ findings, onOpen }: FindingsTableProps) {
  const { facets } = useJob()
  const lacks = useLackCounts()
  const { selection, select } = useSelection()
  const { findingIds } = useRelated()
  // The form and its details are drawn first; the table follows.
  const rows = useDeferredValue(findings, NO_ROWS)
  const zones = useRoofZones()
  const columns = useMemo(() => {
    const letters = new Map(facets.map((facet) => [facet.id, facet.letter]))
    return columnsFor(letters, lacks, zones)
  }, [facets, lacks, zones])
  return (
    <DataTable
      label="Findings"
      columns={columns}
      rows={rows}
      rowKey={(finding) => finding.id}
      rowHeightPx={28}
      selectedKey={selection.kind === 'finding' ? selection.id : null}
      relatedKeys={findingIds}
      onSelect={(finding) => select({ kind: 'finding', id: finding.id })}
      onOpen={onOpen}
      initialSorting={{ column: 'number', direction: 'up' }}
    />
  )
}

/** How many things each finding lacks, by its identity. */
export function useLackCounts(): ReadonlyMap<string, number> {
  const problems = useProblems()
  return useMemo(() => {
    const counts = new Map<string, number>()
    for (const { place } of problems) {
      if (place.kind === 'finding') counts.set(place.id, (counts.get(place.id) ?? 0) + 1)
    }
    return counts
  }, [problems])
}

const evidenceColumns: readonly Column<Finding>[] = [
  {
    key: 'photos',
    title: 'Photos',
    width: '60px',
    align: 'end',
    cell: ({ photos }) => photos.length,
    sortBy: ({ photos }) => photos.length,
  },
  {
    key: 'pin',
    title: 'Pin',
    width: '48px',
    cell: ({ pin }) => (pin === null ? 'no' : 'yes'),
    sortBy: ({ pin }) => (pin === null ? 0 : 1),
  },
]

function columnsFor(
  letters: ReadonlyMap<FacetId, string>,
  lacks: ReadonlyMap<string, number>,
  zones: JobZones,
): readonly Column<Finding>[] {
  const facetOf = ({ facetId }: Finding) => (facetId === null ? null : (letters.get(facetId) ?? null))
  return [
    {
      key: 'number',
      title: 'No.',
      width: '54px',
      cell: ({ number }) => <strong>{findingLabel(number)}</strong>,
      sortBy: ({ number }) => number,
    },
    {
      key: 'kind',
      title: 'Kind',
      width: '108px',
      cell: ({ kind }) => findingKindLabels[kind],
      sortBy: ({ kind }) => findingKindLabels[kind],
    },
    { key: 'what', title: 'What', width: 'minmax(106px, 2fr)', cell: whatWords, sortBy: whatWords },
    {
      key: 'extent',
      title: 'How much',
      width: 'minmax(72px, 1fr)',
      cell: ({ extent }) => shortExtent(extent),
      sortBy: ({ extent }) => shortExtent(extent),
    },
    { key: 'facet', title: 'Facet', width: '52px', cell: (finding) => facetOf(finding) ?? 'none', sortBy: facetOf },
    ...zoneColumns(zones),
    ...evidenceColumns,
    {
      key: 'cause',
      title: 'Cause',
      width: '104px',
      cell: ({ cause }) => causes[cause.cause].label,
      sortBy: ({ cause }) => causes[cause.cause].label,
    },
    {
      key: 'lacks',
      title: 'Lacks',
      width: '62px',
      cell: ({ id }) => <LackMark count={lacks.get(id) ?? 0} />,
      sortBy: ({ id }) => lacks.get(id) ?? 0,
    },
  ]
}

/** The zone of each finding, where zones can be worked out. */
function zoneColumns(zones: JobZones): readonly Column<Finding>[] {
  if (zones.kind !== 'drawn') return []
  // Sorting asks for a zone again and again, and an area's shares take a while to cut.
  const known = new WeakMap<Finding, string>()
  const zoneOf = (finding: Finding) => {
    const words = known.get(finding) ?? shortZone(findingZone(finding, zones))
    known.set(finding, words)
    return words
  }
  return [{ key: 'zone', title: 'Zone', width: 'minmax(80px, 1fr)', cell: zoneOf, sortBy: zoneOf }]
}

function LackMark({ count }: { count: number }) {
  return count === 0 ? null : <Badge tone="caution">{count}</Badge>
}
