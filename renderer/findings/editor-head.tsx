import type { ReactNode } from 'react'
import { Badge } from '../ui/badge.tsx'
import { Button } from '../ui/button.tsx'
import { IconButton } from '../ui/icon-button.tsx'
import { KeyHint } from '../ui/key-hint.tsx'
import styles from './findings-workspace.module.css'

/** The table of findings, which may give its room to the form. */
export interface TableFold {
  readonly isFolded: boolean
  toggle(): void
}

interface EditorHeadProps {
  readonly title: string
  readonly isChanged: boolean
  /** Null where there is no table to fold. */
  readonly fold: TableFold | null
  readonly canDiscard: boolean
  readonly onDiscard: () => void
  readonly canSave: boolean
  readonly onSave: () => void
  /** Further buttons. */
  readonly children: ReactNode
}

/** The line over the form: whose it is, whether it is saved, and what can be done with it. */
export function EditorHead(props: EditorHeadProps) {
  const { title, isChanged, fold, children } = props
  return (
    <header className={styles['editorHead']}>
      {fold === null ? null : (
        <IconButton
          icon={fold.isFolded ? 'down' : 'up'}
          label={fold.isFolded ? 'Show the table of findings' : 'Fold the table of findings'}
          aria-expanded={!fold.isFolded}
          onPress={fold.toggle}
        />
      )}
      <h2>{title}</h2>
      {isChanged ? <Badge tone="caution">Not saved</Badge> : null}
      <span className={styles['gap']} />
      {children}
      <Button onPress={props.onDiscard} isDisabled={!props.canDiscard}>
        Discard
      </Button>
      <Button look="main" onPress={props.onSave} isDisabled={!props.canSave}>
        Save <KeyHint keys="Ctrl+Enter" />
      </Button>
    </header>
  )
}
