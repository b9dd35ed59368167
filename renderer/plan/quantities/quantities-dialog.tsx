import { useMemo } from 'react'
import { edgeQuantities, facetQuantities, type FacetTable, type PieceSize } from '../../../app/roof/quantities.ts'
import { roofEdges } from '../../../app/roof/edges.ts'
import { feetInches } from '../../../app/packet/format/lengths.ts'
import { useJob } from '../../state/job-state.tsx'
import { Dialog } from '../../ui/dialog.tsx'
import { edgeWords } from '../edge-lines.tsx'
import { FacetFigures } from './facet-figures.tsx'
import { QuantitiesWorking } from './quantities-working.tsx'
import styles from './quantities.module.css'
import { WasteFigures } from './waste-figures.tsx'

interface QuantitiesDialogProps {
  readonly isOpen: boolean
  readonly onClose: () => void
}

/** The roof in figures, as the packet prints them, with the working behind them. */
export function QuantitiesDialog({ isOpen, onClose }: QuantitiesDialogProps) {
  return (
    <Dialog title="Quantities" isOpen={isOpen} onClose={onClose} size="large">
      <Quantities />
    </Dialog>
  )
}

/** Length and width that a piece covers, where the job sheet has both. */
function usePieceSize(): PieceSize | null {
  const { exposureIn, coverWidthIn } = useJob().job.sheet.covering
  return useMemo(
    () => (exposureIn === null || coverWidthIn === null ? null : { exposureIn, coverWidthIn }),
    [exposureIn, coverWidthIn],
  )
}

function Quantities() {
  const { facets, job } = useJob()
  const { upAzimuthDeg } = job.frame
  const piece = usePieceSize()
  const quantities: FacetTable = useMemo(
    () => facetQuantities(facets, { upAzimuthDeg, piece }),
    [facets, upAzimuthDeg, piece],
  )
  return (
    <div className={styles['quantities']}>
      <FacetFigures quantities={quantities} />
      <QuantitiesWorking quantities={quantities} piece={piece} />
      <h3>Edges</h3>
      <EdgeFigures />
      <h3>Allowance for waste</h3>
      <WasteFigures totals={quantities.totals} />
    </div>
  )
}

function EdgeFigures() {
  const { facets, job } = useJob()
  const { upAzimuthDeg } = job.frame
  const kinds = useMemo(() => edgeQuantities(roofEdges(facets, upAzimuthDeg)), [facets, upAzimuthDeg])
  return (
    <table aria-label="Edges by kind">
      <thead>
        <tr>
          <th scope="col">Edge</th>
          <th scope="col">Number</th>
          <th scope="col">Plan length</th>
          <th scope="col">True length</th>
        </tr>
      </thead>
      <tbody>
        {kinds.map(({ kind, count, statedByHand, planLengthFt, trueLengthFt }) => (
          <tr key={kind}>
            <th scope="row">
              {edgeWords[kind]}
              {statedByHand === 0 ? '' : ` (${statedByHand} stated by hand)`}
            </th>
            <td>{count}</td>
            <td>{feetInches(planLengthFt)}</td>
            <td>{feetInches(trueLengthFt)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
