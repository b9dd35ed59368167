import { alternatives, chordParts } from '../state/keys.ts'
import styles from './key-hint.module.css'

const names: Readonly<Record<string, string>> = {
  ArrowLeft: '←',
  ArrowRight: '→',
  ArrowUp: '↑',
  ArrowDown: '↓',
  Escape: 'Esc',
}

/** Keys as they are printed on the keyboard: `Ctrl+Shift+Z` in three small frames. */
export function KeyHint({ keys }: { keys: string }) {
  return (
    <span className={styles['hint']}>
      {alternatives(keys).map((chord, at) => (
        <span key={chord} className={styles['chord']}>
          {at > 0 ? <span className={styles['or']}>or</span> : null}
          {chordParts(chord).map((key) => (
            <kbd key={key} className={styles['key']}>
              {names[key] ?? key}
            </kbd>
          ))}
        </span>
      ))}
    </span>
  )
}
