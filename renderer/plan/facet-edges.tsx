import { useMemo } from 'react'
import { directionWords } from '../../app/packet/format/directions.ts'
import { feetInches } from '../../app/packet/format/lengths.ts'
import { type RoofEdge, roofEdges } from '../../app/roof/edges.ts'
import type { Facet } from '../../app/roof/facet.ts'
import { edgeOfFacet } from '../../app/roof/kinds-by-hand.ts'
import { edgeKinds, type EdgeKind } from '../../app/roof/plan-drawing.ts'
import { useEdit, useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { SelectField } from '../ui/select-field.tsx'
import { edgeWords } from './edge-lines.tsx'
import styles from './facet-edges.module.css'

/** The edges of a facet with their lengths; the kind of each can be stated by hand, and left to the slopes again. */
export function FacetEdges({ facet }: { facet: Facet }) {
  const { facets, job } = useJob()
  const { upAzimuthDeg } = job.frame
  const edges = useMemo(
    () => roofEdges(facets, upAzimuthDeg).filter(({ facetIds }) => facetIds.includes(facet.id)),
    [facets, upAzimuthDeg, facet.id],
  )
  return (
    <details className={styles['edges']}>
      <summary>{edges.length} edges</summary>
      <ul aria-label={`Edges of facet ${facet.letter}`}>
        {edges.map((edge) => (
          <EdgeLine key={`${edge.from.xFt} ${edge.from.yFt} ${edge.to.xFt} ${edge.to.yFt}`} edge={edge} facet={facet} />
        ))}
      </ul>
    </details>
  )
}

function EdgeLine({ edge, facet }: { edge: RoofEdge; facet: Facet }) {
  const { facets, job } = useJob()
  const edit = useEdit()
  const { upAzimuthDeg } = job.frame
  const named = edgeOfFacet(edge, facet, upAzimuthDeg)
  const place =
    named.at === 'shared'
      ? `with ${facets.find(({ id }) => id === named.with)?.letter ?? 'another facet'}`
      : `on the ${directionWords((facet.downslopeAzimuthDeg + named.facingDeg) % 360)} side`
  const found = edge.foundKind ?? edge.kind
  const state = (kind: EdgeKind | null) => void edit('facets.set-edge', { id: facet.id, edge: named, kind })
  return (
    <li>
      <SelectField
        label={`${feetInches(edge.trueLengthFt)} ${place}`}
        options={edgeKinds.map((kind) => ({ key: kind, label: edgeWords[kind] }))}
        value={edge.kind}
        onChange={(kind) => {
          if (kind !== null && kind !== edge.kind) state(kind === found ? null : kind)
        }}
      />
      {edge.foundKind === undefined ? null : (
        <p className={styles['stated']}>
          <span>Stated by hand; {edgeWords[edge.foundKind].toLowerCase()} by the slopes</span>
          <Button onPress={() => state(null)}>Set back</Button>
        </p>
      )}
    </li>
  )
}
