import { useState } from 'react'
import type { PacketProblem } from '../../app/packet/problem.ts'
import { type ProblemGroup, problemGroups } from '../state/problem-groups.ts'
import { useProblems } from '../state/problems.tsx'
import { Badge, type BadgeTone } from '../ui/badge.tsx'
import styles from './lacks.module.css'
import { walkKeys } from './frame-keys.ts'
import { placeOfProblem } from './places.ts'
import { useGoTo } from './use-go-to.ts'

/** The weights of a problem, gravest first, in words. */
export const weights = [
  { key: 'blocking', title: 'Must be mended', tone: 'bad' },
  { key: 'mend', title: 'Should be mended', tone: 'caution' },
  { key: 'notice', title: 'Worth a look', tone: 'note' },
] as const satisfies readonly { key: PacketProblem['weight']; title: string; tone: BadgeTone }[]

/** What the open job still lacks; each line goes to its place. */
export function Lacks() {
  const problems = useProblems()
  if (problems.length === 0) return <p className={styles['none']}>Nothing is missing. The packet can be issued.</p>
  return (
    <>
      <p className={styles['walk']}>{walkKeys.next.keys} goes through them one by one.</p>
      {weights.map(({ key, title, tone }) => {
        const own = problems.filter((problem) => problem.weight === key)
        if (own.length === 0) return null
        return (
          <section key={key} className={styles['group']}>
            <h3 className={styles['title']}>
              {title} <Badge tone={tone}>{own.length}</Badge>
            </h3>
            <ul>
              {problemGroups(own).map((group) => (
                <li key={group.first.id}>
                  <LackLine problem={group.first} />
                  <OthersLikeIt group={group} />
                </li>
              ))}
            </ul>
          </section>
        )
      })}
    </>
  )
}

/** The others of a group, one line each, folded until asked for. */
export function OthersLikeIt({ group: { others } }: { group: ProblemGroup }) {
  const [isOpen, setOpen] = useState(false)
  if (others.length === 0) return null
  return (
    <>
      <button type="button" className={styles['more']} aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
        {isOpen ? 'Fold' : 'and'} {others.length} more like this
      </button>
      {isOpen ? (
        <ul>
          {others.map((problem) => (
            <li key={problem.id}>
              <LackLine problem={problem} />
            </li>
          ))}
        </ul>
      ) : null}
    </>
  )
}

function LackLine({ problem }: { problem: PacketProblem }) {
  const goTo = useGoTo()
  return (
    <button type="button" className={styles['line']} onClick={() => goTo(placeOfProblem(problem.place))}>
      {problem.sentence}
    </button>
  )
}
