import styles from './choice-chips.module.css'

interface Choice {
  readonly key: string
  readonly label: string
  /** True while it is chosen; left out for one that only adds something. */
  readonly isOn?: boolean
}

interface ChoiceChipsProps {
  readonly label: string
  readonly choices: readonly Choice[]
  readonly onPress: (key: string) => void
}

/** Ready-made words to click in. */
export function ChoiceChips({ label, choices, onPress }: ChoiceChipsProps) {
  return (
    <div className={styles['chips']} role="group" aria-label={label}>
      {choices.map(({ key, label: words, isOn }) => (
        <button
          key={key}
          type="button"
          className={styles['chip']}
          {...(isOn === undefined ? {} : { 'aria-pressed': isOn })}
          onClick={() => onPress(key)}
        >
          {isOn === undefined ? <span aria-hidden="true">+ </span> : null}
          {words}
        </button>
      ))}
    </div>
  )
}
