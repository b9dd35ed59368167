import { areaFigure, squaresFigure } from '../../app/packet/format/areas.ts'
import type { Facet } from '../../app/roof/facet.ts'
import { facetGeometry } from '../../app/roof/facet-geometry.ts'
import styles from './facet-details.module.css'

/** A facet's areas, with the formula and the numbers behind them on demand. */
export function FacetWorking({ facet }: { facet: Facet }) {
  const { planAreaSqFt, slopeFactor, areaSqFt, squares, pitchLabel } = facetGeometry(facet)
  return (
    <section className={styles['areas']} aria-label="Areas">
      <p className={styles['figure']}>
        <strong>{squaresFigure(squares)} squares</strong>
        <span>{areaFigure(areaSqFt)} sq ft sloped</span>
      </p>
      <details className={styles['working']}>
        <summary>Show the working</summary>
        <dl>
          <dt>Plan area</dt>
          <dd>
            {planAreaSqFt.toFixed(2)} sq ft, enclosed by the {facet.outline.length} corners as drawn: half the sum of
            x₁·y₂ − x₂·y₁ over the sides
          </dd>
          <dt>Slope factor</dt>
          <dd>
            √(1 + ({pitchText(facet.pitchRise)} ÷ 12)²) = {slopeFactor.toFixed(5)} for a pitch of {pitchLabel}
          </dd>
          <dt>Sloped area</dt>
          <dd>
            {planAreaSqFt.toFixed(2)} × {slopeFactor.toFixed(5)} = {areaSqFt.toFixed(2)} sq ft
          </dd>
          <dt>Squares</dt>
          <dd>
            {areaSqFt.toFixed(2)} ÷ 100 = {squares.toFixed(4)}; a roof square is 100 sq ft of sloped surface
          </dd>
        </dl>
        <p>The slope factor is the one of construction-handbook slope tables. Waste is never in these figures.</p>
      </details>
    </section>
  )
}

function pitchText(pitchRise: number): string {
  return String(Number(pitchRise.toFixed(3)))
}
