import type { MouseEvent } from 'react'
import { readingLabel } from '../../app/evidence/reading-label.ts'
import type { Reading } from '../../app/fieldtest/reading.ts'
import type { PlanPoint } from '../../app/job/places.ts'
import { useJob } from '../state/job-state.tsx'
import styles from './field-tests.module.css'

/** Room around the roof, feet. */
const MARGIN_FT = 3

/** The roof in small; a click puts the reading's pin there. The fields for x and y do the same by keyboard. */
export function PlaceMap({ reading, onPlace }: { reading: Reading; onPlace: (at: PlanPoint) => void }) {
  const { facets } = useJob()
  const points = facets.flatMap(({ outline }) => outline)
  if (points.length === 0) return <p className={styles['quiet']}>Draw the roof plan to pin this reading on it.</p>
  const xs = points.map(({ xFt }) => xFt)
  const ys = points.map(({ yFt }) => yFt)
  const left = Math.min(...xs) - MARGIN_FT
  const top = Math.max(...ys) + MARGIN_FT
  const widthFt = Math.max(...xs) + MARGIN_FT - left
  const heightFt = top - Math.min(...ys) + MARGIN_FT
  function place(event: MouseEvent<SVGSVGElement>) {
    const matrix = event.currentTarget.getScreenCTM()
    if (matrix === null) return
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse())
    onPlace({ xFt: Math.round(at.x * 10) / 10, yFt: Math.round(-at.y * 10) / 10 })
  }
  const label = `Plan with ${readingLabel(reading.number)}${reading.at === null ? ', not pinned yet' : ''}`
  return (
    <figure className={styles['map']}>
      {/* oxlint-disable-next-line jsx-a11y/click-events-have-key-events, jsx-a11y/no-noninteractive-element-interactions -- the fields for x and y are the way by keyboard */}
      <svg viewBox={`${left} ${-top} ${widthFt} ${heightFt}`} role="img" aria-label={label} onClick={place}>
        {facets.map(({ id, outline }) => (
          <polygon key={id} points={outline.map(({ xFt, yFt }) => `${xFt},${-yFt}`).join(' ')} strokeWidth="1" />
        ))}
        {reading.at === null ? null : <circle cx={reading.at.xFt} cy={-reading.at.yFt} r={widthFt / 60} />}
      </svg>
      <figcaption className={styles['quiet']}>Click to put the pin where the tile is.</figcaption>
    </figure>
  )
}
