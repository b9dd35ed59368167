import { useState } from 'react'
import type { PacketProblem } from '../../app/packet/problem.ts'
import { OthersLikeIt, weights } from '../frame/lacks.tsx'
import { placeOfProblem } from '../frame/places.ts'
import { useGoTo } from '../frame/use-go-to.ts'
import { type ProblemGroup, problemGroups } from '../state/problem-groups.ts'
import { Badge } from '../ui/badge.tsx'
import { Button } from '../ui/button.tsx'
import { focusFirstField } from '../ui/focus-first-field.ts'
import { TextField } from '../ui/text-field.tsx'
import styles from './packet.module.css'
import { type Reasons, withReason } from './reasons.ts'

interface ProblemListProps {
  readonly problems: readonly PacketProblem[]
  readonly reasons: Reasons
  readonly onReasons: (reasons: Reasons) => void
}

/** What to mend before issuing, gravest first; what may stand can be given a reason. */
export function ProblemList({ problems, reasons, onReasons }: ProblemListProps) {
  if (problems.length === 0) return <p className={styles['quiet']}>Nothing is left to mend.</p>
  return (
    <>
      {weights.map(({ key, title, tone }) => {
        const own = problems.filter((problem) => problem.weight === key)
        if (own.length === 0) return null
        return (
          <section key={key} className={styles['weight']}>
            <h3 className={styles['weightTitle']}>
              {title} <Badge tone={tone}>{own.length}</Badge>
            </h3>
            <ul>
              {problemGroups(own).map((group) => (
                <GroupLine
                  key={group.first.id}
                  group={group}
                  reason={reasons.get(group.first.id) ?? ''}
                  onReason={(reason) => onReasons(withReason(reasons, group, reason))}
                />
              ))}
            </ul>
          </section>
        )
      })}
    </>
  )
}

interface GroupLineProps {
  readonly group: ProblemGroup
  readonly reason: string
  readonly onReason: (reason: string) => void
}

function GroupLine({ group, reason, onReason }: GroupLineProps) {
  const goTo = useGoTo()
  const [isOpen, setOpen] = useState(false)
  const { first, others } = group
  const mayStand = first.weight === 'mend'
  return (
    <li className={styles['problem']}>
      <p>{first.sentence}</p>
      <OthersLikeIt group={group} />
      {isOpen || reason === '' ? null : <p className={styles['stands']}>Stands: {reason}</p>}
      <div className={styles['problemActions']}>
        <Button look="quiet" onPress={() => goTo(placeOfProblem(first.place))}>
          Go there
        </Button>
        {mayStand && !isOpen ? (
          <Button look="quiet" onPress={() => setOpen(true)}>
            {standWords(reason, others.length)}
          </Button>
        ) : null}
      </div>
      {isOpen ? (
        <div ref={focusFirstField}>
          <TextField
            label="Why it may stand; the log keeps the reason"
            value={reason}
            onChange={onReason}
            onBlur={() => setOpen(false)}
          />
        </div>
      ) : null}
    </li>
  )
}

function standWords(reason: string, others: number): string {
  if (reason !== '') return 'Change the reason'
  return others === 0 ? 'Let it stand…' : `Let all ${others + 1} stand…`
}
