import { videoLabel } from '../../app/evidence/video-label.ts'
import { useGoTo } from '../frame/use-go-to.ts'
import { type JobClock, timeWords } from '../state/job-clock.ts'
import { useSelection } from '../state/selection.tsx'
import type { TimedVideo } from './strip-lanes.ts'
import type { StripScale } from './strip-scale.ts'
import styles from './time-strip.module.css'

/** The least width of a bar that can still be hit, pixels. */
const LEAST_PX = 6
/** A bar this wide has room for its name. */
const NAMED_PX = 44

interface BarsProps {
  readonly videos: readonly TimedVideo[]
  readonly scale: StripScale
  readonly clock: JobClock
  readonly top: number
}

/** Videos as bars from their first frame to their last; a click goes to the video. */
export function VideoBars({ videos, scale, clock, top }: BarsProps) {
  const { selection } = useSelection()
  const goTo = useGoTo()
  const first = scale.spans[0]?.fromMs ?? Infinity
  const last = scale.spans.at(-1)?.toMs ?? -Infinity
  if (videos.length === 0) return null
  return (
    <g>
      <path className={styles['laneLine']} d={`M0 ${top + 18.5}H${scale.widthPx}`} />
      {videos
        .filter(({ fromMs, toMs }) => toMs >= first && fromMs <= last)
        .map(({ video, fromMs, toMs }) => {
          const x = scale.xOf(Math.max(fromMs, first))
          const widthPx = Math.max(LEAST_PX, scale.xOf(Math.min(toMs, last)) - x)
          const isSelected = selection.kind === 'video' && selection.id === video.id
          return (
            <g
              key={video.id}
              className={styles['video']}
              data-related={isSelected}
              onPointerDown={(event) => event.stopPropagation()}
              onClick={() => goTo({ workspace: 'video', target: { kind: 'video', id: video.id } })}
            >
              <title>
                {videoLabel(video.number)}, {timeWords(fromMs, clock)} to {timeWords(toMs, clock)}
              </title>
              <rect x={x} y={top + 4} width={widthPx} height={12} rx={2} />
              {widthPx >= NAMED_PX ? (
                <text x={x + 4} y={top + 14}>
                  {videoLabel(video.number)}
                </text>
              ) : null}
            </g>
          )
        })}
    </g>
  )
}
