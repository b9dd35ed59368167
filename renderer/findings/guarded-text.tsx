import { wordingFlags } from '../../app/packet/wording-guard.ts'
import { TextArea } from '../ui/text-area.tsx'
import styles from './finding-form.module.css'

interface GuardedTextProps {
  readonly label: string
  readonly value: string
  readonly onChange: (text: string) => void
  readonly rows?: number
  readonly help?: string
  readonly placeholder?: string
  readonly maxLength: number
}

/** A longer text that the packet prints. Wording outside a contractor's part is pointed out under it, never changed. */
export function GuardedText(props: GuardedTextProps) {
  const flags = wordingFlags(props.value)
  return (
    <div className={styles['guarded']}>
      <TextArea {...props} rows={props.rows ?? 3} />
      {flags.length === 0 ? null : (
        <ul className={styles['flags']} aria-label={`Wording of ${props.label}`}>
          {flags.map((flag) => (
            <li key={`${flag.at} ${flag.matched}`}>
              <strong>“{flag.matched}”</strong> {flag.why} {flag.instead}
            </li>
          ))}
        </ul>
      )}
    </div>
  )
}
