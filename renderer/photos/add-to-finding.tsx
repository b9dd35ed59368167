import { useState } from 'react'
import { findingLabel, type Finding } from '../../app/evidence/finding.ts'
import { whatWords } from '../../app/packet/finding-words.ts'
import { useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { countWords } from '../ui/quantity-words.ts'
import { TextField } from '../ui/text-field.tsx'
import styles from './tag-bar.module.css'

interface AddToFindingProps {
  /** How many photos are to be added. */
  readonly count: number
  readonly onAdd: (finding: Finding) => void
  readonly onClose: () => void
}

const SHOWN = 12

/** Asks which finding the selected photos belong to: type its number or its words, Enter takes the first. */
export function AddToFinding({ count, onAdd, onClose }: AddToFindingProps) {
  const { findings } = useJob()
  const [text, setText] = useState('')
  const fitting = findingsFor(findings, text)
  const [first] = fitting
  return (
    <Dialog title={`Add ${countWords(count, 'photo')} to a finding`} isOpen onClose={onClose}>
      <form
        className={styles['reasonForm']}
        onSubmit={(event) => {
          event.preventDefault()
          if (first !== undefined) onAdd(first)
        }}
      >
        <TextField label="Number or words" value={text} onChange={setText} placeholder="12, or ridge tile loose" />
        <ul className={styles['found']}>
          {fitting.slice(0, SHOWN).map((finding) => (
            <li key={finding.id}>
              <Button look="quiet" onPress={() => onAdd(finding)}>
                <strong>{findingLabel(finding.number)}</strong> {whatWords(finding)}
              </Button>
            </li>
          ))}
        </ul>
        {first === undefined ? <p>No finding fits.</p> : null}
      </form>
    </Dialog>
  )
}

/** Findings that fit what is typed: a number fits exactly, words all have to stand in it; the newest first. */
export function findingsFor(findings: readonly Finding[], text: string): readonly Finding[] {
  const typed = text.trim().toLowerCase()
  const number = /^(?:f-?)?(\d+)$/.exec(typed)?.[1]
  if (number !== undefined) return findings.filter((finding) => finding.number === Number(number))
  const words = typed.split(/\s+/)
  return findings
    .filter((finding) => {
      const said = `${whatWords(finding)} ${finding.placeWords} ${finding.observation}`.toLowerCase()
      return words.every((word) => said.includes(word))
    })
    .toReversed()
}
