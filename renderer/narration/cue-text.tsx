import type { Draft } from '../../app/narration/draft.ts'
import { textPieces, wordFieldLabels } from './highlights.ts'
import styles from './narration.module.css'

interface CueTextProps {
  readonly text: string
  readonly cue: number
  readonly drafts: readonly Draft[]
}

/** A cue's words, with those that a draft was read from underlined and named by field. */
export function CueText({ text, cue, drafts }: CueTextProps) {
  return (
    <>
      {textPieces(text, cue, drafts).map(({ text: words, field }, at) =>
        field === null ? (
          <span key={at}>{words}</span>
        ) : (
          <mark key={at} className={styles['said']} data-field={field} title={wordFieldLabels[field]}>
            {words}
          </mark>
        ),
      )}
    </>
  )
}
