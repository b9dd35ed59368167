import { useMemo } from 'react'
import { drawPlan } from '../../app/roof/draw-plan.ts'
import type { FacetId, FindingId, PhotoId } from '../../app/job/ids.ts'
import type { PlanPoint } from '../../app/job/places.ts'
import type { PlanBounds } from '../../app/roof/plan-drawing.ts'
import { useJob } from '../state/job-state.tsx'
import styles from './plan-inset.module.css'
import { type PlanHighlights, PlanShapes } from './plan-shapes.tsx'
import { fittedView } from './plan-view.ts'

const SIZE = { width: 280, height: 168 }
/** A camera farther off the roof than this would shrink the plan to a speck, feet. */
const FARTHEST_FT = 60
/** Room round a camera beside the roof, feet. */
const MARGIN_FT = 6

interface PlanInsetProps {
  readonly facetId: FacetId | null
  readonly photoId?: PhotoId
  readonly findingId?: FindingId
}

/** The small plan beside a record: its facet picked out, its pin, and where its camera stood. */
export function PlanInset({ facetId, photoId, findingId }: PlanInsetProps) {
  const { facets, findings, photos, job } = useJob()
  const { frame, sheet } = job
  const { frontAzimuthDeg } = sheet.property
  const roof = useMemo(
    () => drawPlan({ facets, findings: [], photos: [], frame, frontAzimuthDeg }),
    [facets, frame, frontAzimuthDeg],
  )
  const { pins, cameras } = useMemo(
    () =>
      drawPlan({
        facets: [],
        findings: findings.filter(({ id }) => id === findingId),
        photos: photos.filter(({ id }) => id === photoId),
        frame,
        frontAzimuthDeg,
      }),
    [findings, photos, frame, frontAzimuthDeg, findingId, photoId],
  )
  const highlights = useMemo(() => insetHighlights(facetId), [facetId])
  if (facets.length === 0) return null
  const [camera] = cameras
  const isFar = camera !== undefined && isFarFrom(roof.bounds, camera.at)
  const shown = camera === undefined || isFar ? roof.bounds : reaching(roof.bounds, camera.at)
  return (
    <figure className={styles['inset']}>
      <svg
        className={styles['plan']}
        viewBox={`0 0 ${SIZE.width} ${SIZE.height}`}
        role="img"
        aria-label="Place on the plan"
      >
        <PlanShapes
          drawing={{ ...roof, edges: [], pins, cameras: isFar ? [] : cameras }}
          highlights={highlights}
          view={fittedView(shown, SIZE)}
        />
      </svg>
      {isFar ? (
        <figcaption className={styles['far']}>The camera's position is too far off the roof to draw.</figcaption>
      ) : null}
    </figure>
  )
}

/** Only what the record is about is drawn beside the roof, so all of it is picked out. */
function insetHighlights(facetId: FacetId | null): PlanHighlights {
  return {
    facet: (id) => (id === facetId ? 'selected' : 'plain'),
    finding: () => 'selected',
    photo: () => 'selected',
    reading: () => 'selected',
  }
}

function isFarFrom(bounds: PlanBounds, { xFt, yFt }: PlanPoint): boolean {
  const dx = Math.max(bounds.minXFt - xFt, 0, xFt - bounds.maxXFt)
  const dy = Math.max(bounds.minYFt - yFt, 0, yFt - bounds.maxYFt)
  return Math.hypot(dx, dy) > FARTHEST_FT
}

function reaching(bounds: PlanBounds, { xFt, yFt }: PlanPoint): PlanBounds {
  return {
    minXFt: Math.min(bounds.minXFt, xFt - MARGIN_FT),
    minYFt: Math.min(bounds.minYFt, yFt - MARGIN_FT),
    maxXFt: Math.max(bounds.maxXFt, xFt + MARGIN_FT),
    maxYFt: Math.max(bounds.maxYFt, yFt + MARGIN_FT),
  }
}
