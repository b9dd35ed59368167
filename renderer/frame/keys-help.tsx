import { useMemo } from 'react'
import { type Command, useCommands, useKnownCommands } from '../state/commands.ts'
import { Dialog } from '../ui/dialog.tsx'
import { KeyHint } from '../ui/key-hint.tsx'
import { frameKeys } from './frame-keys.ts'
import styles from './keys-help.module.css'

interface KeysHelpProps {
  readonly isOpen: boolean
  readonly onOpenChange: (isOpen: boolean) => void
}

/** The list of keys that work now, opened with `?`. */
export function KeysHelp({ isOpen, onOpenChange }: KeysHelpProps) {
  useCommands([{ ...frameKeys.keys, enabled: true, perform: () => onOpenChange(true) }], 'frame')
  const commands = useKnownCommands()
  const groups = useMemo(() => byScope(commands), [commands])
  return (
    <Dialog title="Keys" isOpen={isOpen} onClose={() => onOpenChange(false)} size="large">
      {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- a list longer than the window is scrolled by the keyboard once it is reached */}
      <div className={styles['groups']} role="region" aria-label="Keys that work here" tabIndex={0}>
        {[...groups].map(([scope, list]) => (
          <section key={scope} className={styles['group']}>
            <h3 className={styles['scope']}>{scopeTitle(scope)}</h3>
            <dl>
              {list.map((command) => (
                <div key={command.id} className={styles['line']}>
                  <dt>{command.label}</dt>
                  <dd>
                    <KeyHint keys={command.keys} />
                  </dd>
                </div>
              ))}
            </dl>
          </section>
        ))}
      </div>
    </Dialog>
  )
}

function byScope(commands: readonly Command[]): ReadonlyMap<string, readonly Command[]> {
  const groups = new Map<string, Command[]>()
  for (const command of commands) {
    const scope = command.id.split('.')[0] ?? ''
    const list = groups.get(scope)
    if (list === undefined) groups.set(scope, [command])
    else if (!list.some((one) => one.id === command.id)) list.push(command)
  }
  return groups
}

/** Scopes whose names are no words to read. */
const scopeTitles: Readonly<Record<string, string>> = {
  frame: 'Everywhere',
  'photo-tags': 'Tagging the selected photos',
  'photo-picking': 'Selecting what to tag',
  'photo-viewer': 'A photo shown large',
  'photo-marks': 'Drawing over a photo',
  'near-doubles': 'Near-doubles',
}

function scopeTitle(scope: string): string {
  return scopeTitles[scope] ?? `${scope.charAt(0).toUpperCase()}${scope.slice(1)}`
}
