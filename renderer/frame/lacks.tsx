import type { PacketProblem } from '../../app/packet/problem.ts'
import { useProblems } from '../state/problems.tsx'
import { Badge, type BadgeTone } from '../ui/badge.tsx'
import styles from './lacks.module.css'
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
  const goTo = useGoTo()
  if (problems.length === 0) return <p className={styles['none']}>Nothing is missing. The packet can be issued.</p>
  return (
    <>
      {weights.map(({ key, title, tone }) => {
        const own = problems.filter((problem) => problem.weight === key)
        if (own.length === 0) return null
        return (
          <section key={key} className={styles['group']}>
            <h3 className={styles['title']}>
              {title} <Badge tone={tone}>{own.length}</Badge>
            </h3>
            <ul>
              {own.map((problem) => (
                <li key={problem.id}>
                  <button type="button" className={styles['line']} onClick={() => goTo(placeOfProblem(problem.place))}>
                    {problem.sentence}
                  </button>
                </li>
              ))}
            </ul>
          </section>
        )
      })}
    </>
  )
}
