import { useEffect, useRef } from 'react'
import { frameTimeWords } from '../../app/evidence/video-label.ts'
import styles from './video.module.css'

/** A piece of narration: when it begins and ends, counted from the video's first frame, and what is said. */
export interface Cue {
  readonly startMs: number
  readonly endMs: number
  readonly text: string
}

interface CueListProps {
  readonly cues: readonly Cue[]
  readonly atMs: number
  readonly onJump: (ms: number) => void
}

/** What is said in a video, line by line; the line of the present moment is marked and kept in sight. */
export function CueList({ cues, atMs, onJump }: CueListProps) {
  const list = useRef<HTMLOListElement>(null)
  const current = cues.findIndex(({ startMs, endMs }) => atMs >= startMs && atMs < endMs)
  useEffect(() => {
    list.current?.children[current]?.scrollIntoView({ block: 'nearest' })
  }, [current])
  if (cues.length === 0) return null
  return (
    <ol ref={list} className={styles['cues']} aria-label="Narration">
      {cues.map((cue, at) => (
        <li key={`${cue.startMs} ${at}`}>
          <button
            type="button"
            className={styles['cue']}
            aria-current={at === current ? 'true' : undefined}
            onClick={() => onJump(Math.max(0, cue.startMs))}
          >
            <span className={styles['cueTime']}>{frameTimeWords(Math.max(0, cue.startMs))}</span>
            <span>{cue.text}</span>
          </button>
        </li>
      ))}
    </ol>
  )
}
