import { useState } from 'react'
import type { PacketProblem } from '../../app/packet/problem.ts'
import { type ProblemGroup, problemGroups } from '../state/problem-groups.ts'
import { Button } from '../ui/button.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { countWords } from '../ui/quantity-words.ts'
import { TextField } from '../ui/text-field.tsx'
import styles from './packet.module.css'
import { type Reasons, withoutReason, withReason } from './reasons.ts'

interface IssueDialogProps {
  readonly isOpen: boolean
  readonly onClose: () => void
  readonly revision: number
  readonly problems: readonly PacketProblem[]
  readonly reasons: Reasons
  readonly onReasons: (reasons: Reasons) => void
  readonly onIssue: () => void
}

/** Asks for the reasons that are still missing, then freezes the next revision. */
export function IssueDialog(props: IssueDialogProps) {
  const { isOpen, onClose, revision, problems, reasons, onIssue } = props
  const open = withoutReason(problems, reasons)
  return (
    <Dialog
      title={`Issue revision ${revision}`}
      isOpen={isOpen}
      onClose={onClose}
      actions={
        <>
          <Button onPress={onClose}>Not yet</Button>
          <Button look="main" isDisabled={open.length > 0} onPress={onIssue}>
            Issue revision {revision}
          </Button>
        </>
      }
    >
      <p>
        Issuing freezes the packet and its evidence bundle under this number. Later changes go into the next revision.
      </p>
      <ReasonsForm {...props} />
    </Dialog>
  )
}

function ReasonsForm({ problems, reasons, onReasons }: IssueDialogProps) {
  const standing = problems.filter((problem) => problem.weight === 'mend')
  const [same, setSame] = useState('')
  if (standing.length === 0) return null
  const open = withoutReason(problems, reasons)
  return (
    <div className={styles['reasons']}>
      <h3 className={styles['partTitle']}>
        {countWords(standing.length, 'thing')} not mended: say why the packet may issue without
      </h3>
      <div className={styles['sameReason']}>
        <TextField label="One reason for all that have none" value={same} onChange={setSame} />
        <Button
          isDisabled={same.trim().length < 3 || open.length === 0}
          onPress={() => {
            onReasons(new Map([...reasons, ...open.map((problem) => [problem.id, same.trim()] as const)]))
            setSame('')
          }}
        >
          Use for {open.length}
        </Button>
      </div>
      <ul>
        {problemGroups(standing).map((group) => (
          <li key={group.first.id} className={styles['reason']}>
            <TextField
              label={groupWords(group)}
              placeholder="Why it may stand"
              value={reasons.get(group.first.id) ?? ''}
              onChange={(reason) => onReasons(withReason(reasons, group, reason))}
            />
          </li>
        ))}
      </ul>
    </div>
  )
}

function groupWords({ first, others }: ProblemGroup): string {
  return others.length === 0 ? first.sentence : `${first.sentence} And ${others.length} more like this.`
}
