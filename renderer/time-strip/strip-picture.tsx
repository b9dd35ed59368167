import { type PointerEvent, useMemo, useRef, useState } from 'react'
import { findingLabel } from '../../app/evidence/finding.ts'
import { dayWords, type JobClock } from '../state/job-clock.ts'
import { useRelated, useSelection } from '../state/selection.tsx'
import { durationWords } from '../ui/quantity-words.ts'
import { type Lane, nearestPhoto, type StripContent, type TimedPhoto } from './strip-lanes.ts'
import { PlacedMarks } from './placed-marks.tsx'
import { rulerMarks } from './strip-ruler.ts'
import { isInSight, type StripScale, type TimeWindow } from './strip-scale.ts'
import { ReadingMarks } from './reading-marks.tsx'
import { CueMarks } from './cue-marks.tsx'
import styles from './time-strip.module.css'
import { VideoBars } from './video-bars.tsx'
import { findingWords, tickWords } from './strip-words.ts'

/** Heights in pixels, shared with the names at the left. */
const RULER_PX = 20
const LANE_PX = 20
/** A pointer that moved less than this clicked; one that moved more drew a window. */
const CLICK_PX = 4
/** A finding's mark with its air, and a letter of its label. */
const MARK_PX = 17
const LETTER_PX = 7
/** A click this far from the nearest tick hits nothing. */
const REACH_PX = 12

interface PictureProps {
  readonly content: StripContent
  readonly clock: JobClock
  readonly scale: StripScale
  readonly onWindow: (window: TimeWindow) => void
}

/** The drawn strip: ruler, findings, lanes of ticks; a click selects, a drag zooms. */
export function StripPicture({ content, clock, scale, onWindow }: PictureProps) {
  const lanesTop = lanesTopOf(content)
  const heightPx = lanesTop + LANE_PX * content.lanes.length
  const [hover, setHover] = useState<TimedPhoto | null>(null)
  const pointer = usePointer({ content, scale, onWindow, onHover: setHover })
  return (
    <svg className={styles['picture']} width={scale.widthPx} height={heightPx} aria-hidden="true" {...pointer.handlers}>
      {hover === null ? null : <title>{tickWords(hover.photo, clock)}</title>}
      <Ruler scale={scale} clock={clock} />
      {scale.breaks.map((gap) => (
        <g key={gap.fromX} className={styles['break']}>
          <rect x={gap.fromX} width={gap.toX - gap.fromX} y={0} height={heightPx} />
          <path d={zigzag(gap.fromX + 2, heightPx)} />
          <path d={zigzag(gap.toX - 6, heightPx)} />
          <title>{durationWords(gap.gapMs)} without a photo</title>
        </g>
      ))}
      {content.lanes.map((lane, at) => (
        <LaneTicks key={lane.cameraId ?? ''} lane={lane} scale={scale} top={lanesTop + LANE_PX * at} series={at} />
      ))}
      <VideoBars videos={content.videos} scale={scale} clock={clock} top={videosTopOf(content)} />
      <PlacedMarks content={content} scale={scale} heightPx={heightPx} />
      <FindingMarks content={content} scale={scale} />
      {content.readings.length === 0 ? null : (
        <ReadingMarks content={content} scale={scale} clock={clock} top={RULER_PX + LANE_PX} />
      )}
      {content.cues.length === 0 ? null : <CueMarks content={content} scale={scale} top={cuesTopOf(content)} />}
      {hover === null ? null : <HoverLine x={scale.xOf(hover.instantMs)} heightPx={heightPx} />}
      {pointer.drawn === null ? null : (
        <rect
          className={styles['window']}
          x={Math.min(pointer.drawn.fromX, pointer.drawn.toX)}
          width={Math.abs(pointer.drawn.toX - pointer.drawn.fromX)}
          y={0}
          height={heightPx}
        />
      )}
    </svg>
  )
}

/** Where the videos' row is: under the findings and, where there are any, the field tests. */
function videosTopOf({ readings }: StripContent): number {
  return RULER_PX + LANE_PX * (readings.length === 0 ? 1 : 2)
}

/** Where the cues' row is: under the videos, where there are any. */
function cuesTopOf(content: StripContent): number {
  return videosTopOf(content) + (content.videos.length === 0 ? 0 : LANE_PX)
}

/** Where the cameras' lanes begin. */
function lanesTopOf(content: StripContent): number {
  return cuesTopOf(content) + (content.cues.length === 0 ? 0 : LANE_PX)
}

function HoverLine({ x, heightPx }: { x: number; heightPx: number }) {
  return <path className={styles['hoverLine']} d={`M${x} 0V${heightPx}`} />
}

function Ruler({ scale, clock }: { scale: StripScale; clock: JobClock }) {
  const marks = useMemo(() => rulerMarks(scale, clock.offsetMinutesAt), [scale, clock])
  const days = useMemo(() => newDays(scale, clock), [scale, clock])
  return (
    <g className={styles['ruler']}>
      <path d={`M0 ${RULER_PX}H${scale.widthPx}`} />
      <path d={marks.map((mark) => `M${mark.x} ${RULER_PX}v${mark.label === null ? -3 : -6}`).join('')} />
      {marks.map((mark) =>
        mark.label === null ? null : (
          <text key={mark.x} x={mark.x + 3} y={12}>
            {mark.label}
          </text>
        ),
      )}
      {days.map((day) => (
        <path key={day.x} className={styles['day']} d={`M${day.x} 0V${RULER_PX}`}>
          <title>{day.words}</title>
        </path>
      ))}
    </g>
  )
}

function newDays(scale: StripScale, clock: JobClock) {
  let before = ''
  return scale.spans.flatMap((span) => {
    const words = dayWords(span.fromMs, clock)
    if (words === before) return []
    before = words
    return [{ x: span.fromX, words }]
  })
}

interface LaneProps {
  readonly lane: Lane
  readonly scale: StripScale
  readonly top: number
  readonly series: number
}

/** Many ticks are one path; only those that belong to the selection are drawn apart. */
function LaneTicks({ lane, scale, top, series }: LaneProps) {
  const { photoIds } = useRelated()
  const inSight = useMemo(() => lane.photos.filter((one) => isInSight(one.instantMs, scale)), [lane, scale])
  const all = useMemo(
    () => inSight.map((one) => `M${scale.xOf(one.instantMs).toFixed(1)} ${top + 4}v${LANE_PX - 7}`).join(''),
    [inSight, scale, top],
  )
  const related = inSight.filter((one) => photoIds.has(one.photo.id))
  return (
    <g>
      <path className={styles['laneLine']} d={`M0 ${top + LANE_PX - 1.5}H${scale.widthPx}`} />
      <path className={styles['ticks']} data-series={(series % 5) + 1} d={all} />
      {related.map((one) => (
        <rect
          key={one.photo.id}
          className={styles['relatedTick']}
          x={scale.xOf(one.instantMs) - 3}
          y={top + 1}
          width={6}
          height={LANE_PX - 3}
          rx={1.5}
        />
      ))}
    </g>
  )
}

function FindingMarks({ content, scale }: { content: StripContent; scale: StripScale }) {
  const { findingIds } = useRelated()
  const { select } = useSelection()
  const inSight = content.findings
    .filter(({ instantMs }) => isInSight(instantMs, scale))
    .map(({ finding, instantMs }) => ({ finding, x: scale.xOf(instantMs), label: findingLabel(finding.number) }))
  return (
    <g>
      <path className={styles['laneLine']} d={`M0 ${RULER_PX + LANE_PX - 1.5}H${scale.widthPx}`} />
      {inSight.map(({ finding, x, label }, at) => {
        const roomPx = (inSight[at + 1]?.x ?? Infinity) - x
        return (
          <g
            key={finding.id}
            className={styles['finding']}
            data-related={findingIds.has(finding.id)}
            onPointerDown={(event) => event.stopPropagation()}
            onClick={() => select({ kind: 'finding', id: finding.id })}
          >
            <title>{findingWords(finding.number, finding.observation)}</title>
            <path d={`M${x} ${RULER_PX + 4}l6 6l-6 6l-6 -6z`} />
            {roomPx >= MARK_PX + label.length * LETTER_PX ? (
              <text x={x + 9} y={RULER_PX + 14}>
                {label}
              </text>
            ) : null}
          </g>
        )
      })}
    </g>
  )
}

interface PointerWork {
  readonly content: StripContent
  readonly scale: StripScale
  readonly onWindow: (window: TimeWindow) => void
  readonly onHover: (photo: TimedPhoto | null) => void
}

function usePointer({ content, scale, onWindow, onHover }: PointerWork) {
  const { select } = useSelection()
  const [drawn, setDrawn] = useState<{ fromX: number; toX: number } | null>(null)
  const start = useRef<number | null>(null)
  const hit = (event: PointerEvent<SVGSVGElement>) => photoAt(placeOf(event), content, scale)
  return {
    drawn,
    handlers: {
      onPointerDown(event: PointerEvent<SVGSVGElement>) {
        start.current = placeOf(event).x
        event.currentTarget.setPointerCapture(event.pointerId)
      },
      onPointerMove(event: PointerEvent<SVGSVGElement>) {
        const { x } = placeOf(event)
        if (start.current === null) onHover(hit(event))
        else if (Math.abs(x - start.current) > CLICK_PX) setDrawn({ fromX: start.current, toX: x })
      },
      onPointerUp(event: PointerEvent<SVGSVGElement>) {
        const photo = drawn === null ? hit(event) : null
        if (drawn !== null) {
          const [fromX, toX] = [drawn.fromX, drawn.toX].toSorted((a, b) => a - b)
          onWindow({ fromMs: scale.instantOf(fromX ?? 0), toMs: scale.instantOf(toX ?? 0) })
        } else if (photo !== null) select({ kind: 'photos', ids: [photo.photo.id], lead: photo.photo.id })
        start.current = null
        setDrawn(null)
      },
      onPointerLeave() {
        onHover(null)
      },
    },
  }
}

function placeOf(event: PointerEvent<SVGSVGElement>): { x: number; y: number } {
  const box = event.currentTarget.getBoundingClientRect()
  return { x: event.clientX - box.left, y: event.clientY - box.top }
}

function photoAt({ x, y }: { x: number; y: number }, content: StripContent, scale: StripScale): TimedPhoto | null {
  const lane = content.lanes[Math.floor((y - lanesTopOf(content)) / LANE_PX)]
  if (lane === undefined) return null
  const nearest = nearestPhoto(lane, scale.instantOf(x))
  return nearest !== null && Math.abs(scale.xOf(nearest.instantMs) - x) <= REACH_PX ? nearest : null
}

function zigzag(x: number, heightPx: number): string {
  const steps = Math.ceil(heightPx / 8)
  return `M${x} 0${Array.from({ length: steps }, (_, at) => `l${at % 2 === 0 ? 4 : -4} 8`).join('')}`
}
