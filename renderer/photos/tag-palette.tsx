import type { PhotoTagsPatch } from '../../app/contract/edits.ts'
import { IconButton } from '../ui/icon-button.tsx'
import { KeyHint } from '../ui/key-hint.tsx'
import styles from './tag-bar.module.css'
import { choicesWithWords, type TagKeyChoice, tagSteps } from './tag-keys.ts'
import type { OpenStep } from './use-tag-steps.ts'

interface TagPaletteProps {
  readonly open: OpenStep
  readonly choices: readonly TagKeyChoice[]
  readonly onChoose: (patch: PhotoTagsPatch) => void
  readonly onLeave: () => void
}

/** Everything that can be chosen in the open step, with the letters for it. Typing narrows it. */
export function TagPalette({ open, choices, onChoose, onLeave }: TagPaletteProps) {
  const label = tagSteps.find(({ step }) => step === open.step)?.label ?? ''
  const fitting =
    open.words === null
      ? choices.filter(({ keys }) => open.typed === '' || keys?.startsWith(open.typed) === true)
      : choicesWithWords(choices, open.words)
  return (
    <div className={styles['palette']}>
      <div className={styles['paletteHead']}>
        <p role="status">
          <strong>{label}</strong>: {howWords(open)}
          {open.missed ? '. That fits nothing here.' : ''}
        </p>
        <IconButton icon="close" label="Leave this step" keys="Escape" onPress={onLeave} />
      </div>
      <ul className={styles['choices']}>
        {fitting.map(({ keys, label: words, patch }) => (
          <li key={words}>
            <button type="button" className={styles['choice']} onClick={() => onChoose(patch)}>
              <span className={styles['choiceKeys']}>
                {keys === null ? null : [...keys].map((letter, at) => <KeyHint key={at} keys={letter.toUpperCase()} />)}
              </span>
              {words}
            </button>
          </li>
        ))}
      </ul>
    </div>
  )
}

function howWords({ typed, words }: OpenStep): string {
  if (words !== null) return `type its words, Enter takes the first${words === '' ? '' : `; so far “${words}”`}`
  return `type its letters, or / and its words${typed === '' ? '' : `; so far “${typed.toUpperCase()}”`}`
}
