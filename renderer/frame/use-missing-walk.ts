import { useEffect, useState } from 'react'
import type { PacketProblem } from '../../app/packet/problem.ts'
import { useProblems } from '../state/problems.tsx'
import { placeOfProblem } from './places.ts'
import { useGoTo } from './use-go-to.ts'
import { nextOnWalk } from './walk-steps.ts'

/** A walk along what the open job lacks. */
export interface Walk {
  /** The problem that the walk is at; null while nobody walks. */
  readonly current: PacketProblem | null
  readonly problems: readonly PacketProblem[]
  step(by: 1 | -1): void
  /** Passes over the present one until the job is opened again. */
  skip(): void
  stop(): void
}

/** Where the walk is; each step goes to the problem's place. What is mended leaves the list, and the walk goes on. */
export function useMissingWalk(): Walk {
  const problems = useProblems()
  const goTo = useGoTo()
  const [at, setAt] = useState<{ id: string; index: number } | null>(null)
  const [skipped, setSkipped] = useState<ReadonlySet<string>>(new Set())
  const current = at === null ? null : (problems.find(({ id }) => id === at.id) ?? null)
  function show(problem: PacketProblem | null) {
    setAt(problem === null ? null : { id: problem.id, index: problems.indexOf(problem) })
    if (problem !== null) goTo(placeOfProblem(problem.place))
  }
  useEffect(() => {
    if (at === null || current !== null) return
    const left = problems.filter(({ id }) => !skipped.has(id))
    show(left.find((problem) => problems.indexOf(problem) >= at.index) ?? left.at(-1) ?? null)
  })
  return {
    current,
    problems,
    step: (by) => show(nextOnWalk(problems, { from: current, by, skipped })),
    skip() {
      if (current === null) return
      const more = new Set([...skipped, current.id])
      setSkipped(more)
      show(nextOnWalk(problems, { from: current, by: 1, skipped: more }))
    },
    stop: () => setAt(null),
  }
}
