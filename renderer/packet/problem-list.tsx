import { useState } from 'react'
import type { PacketProblem } from '../../app/packet/problem.ts'
import { weights } from '../frame/lacks.tsx'
import { placeOfProblem } from '../frame/places.ts'
import { useGoTo } from '../frame/use-go-to.ts'
import { Badge } from '../ui/badge.tsx'
import { Button } from '../ui/button.tsx'
import { focusFirstField } from '../ui/focus-first-field.ts'
import { TextField } from '../ui/text-field.tsx'
import styles from './packet.module.css'
import type { Reasons } from './reasons.ts'

interface ProblemListProps {
  readonly problems: readonly PacketProblem[]
  readonly reasons: Reasons
  readonly onReason: (problemId: string, reason: string) => void
}

/** What to mend before issuing, gravest first; what may stand can be given a reason. */
export function ProblemList({ problems, reasons, onReason }: ProblemListProps) {
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
              {own.map((problem) => (
                <ProblemLine
                  key={problem.id}
                  problem={problem}
                  reason={reasons.get(problem.id) ?? ''}
                  onReason={(reason) => onReason(problem.id, reason)}
                />
              ))}
            </ul>
          </section>
        )
      })}
    </>
  )
}

interface ProblemLineProps {
  readonly problem: PacketProblem
  readonly reason: string
  readonly onReason: (reason: string) => void
}

function ProblemLine({ problem, reason, onReason }: ProblemLineProps) {
  const goTo = useGoTo()
  const [isOpen, setOpen] = useState(false)
  const mayStand = problem.weight === 'mend'
  return (
    <li className={styles['problem']}>
      <p>{problem.sentence}</p>
      <div className={styles['problemActions']}>
        <Button look="quiet" onPress={() => goTo(placeOfProblem(problem.place))}>
          Go there
        </Button>
        {mayStand && !isOpen && reason === '' ? (
          <Button look="quiet" onPress={() => setOpen(true)}>
            Let it stand…
          </Button>
        ) : null}
      </div>
      {mayStand && (isOpen || reason !== '') ? (
        <div ref={isOpen ? focusFirstField : null}>
          <TextField label="Why it may stand; the log keeps the reason" value={reason} onChange={onReason} />
        </div>
      ) : null}
    </li>
  )
}
