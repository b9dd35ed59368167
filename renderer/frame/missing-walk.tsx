import type { PacketProblem, ProblemFix } from '../../app/packet/problem.ts'
import { useCommands } from '../state/commands.ts'
import { Badge } from '../ui/badge.tsx'
import { Button } from '../ui/button.tsx'
import { IconButton } from '../ui/icon-button.tsx'
import { KeyHint } from '../ui/key-hint.tsx'
import { walkKeys } from './frame-keys.ts'
import { weights } from './lacks.tsx'
import styles from './missing-walk.module.css'
import { useFix } from './use-fix.ts'
import { useMissingWalk, type Walk } from './use-missing-walk.ts'

/** Goes through what the job lacks one by one: each at its place, with its mend where one step mends it. */
export function MissingWalk() {
  const walk = useMissingWalk()
  const fix = useFix()
  useWalkKeys(walk, fix)
  const { current, problems } = walk
  if (current === null) return null
  return (
    <section className={styles['walk']} aria-label="What is missing, one by one">
      <p className={styles['words']} aria-live="polite">
        <WeightBadge problem={current} />{' '}
        <span className={styles['place']}>
          {problems.indexOf(current) + 1} of {problems.length}
        </span>{' '}
        {current.sentence}
      </p>
      <div className={styles['actions']}>
        {(current.fixes ?? []).map((one, index) => (
          <Button key={one.label} look={index === 0 ? 'main' : 'plain'} onPress={() => void fix(one)}>
            {one.label} {index > 1 ? null : <KeyHint keys={index === 0 ? walkKeys.fix.keys : walkKeys.other.keys} />}
          </Button>
        ))}
        <Button look="quiet" onPress={walk.skip}>
          Skip <KeyHint keys={walkKeys.skip.keys} />
        </Button>
        <IconButton icon="back" label="The one before" keys={walkKeys.previous.keys} onPress={() => walk.step(-1)} />
        <IconButton icon="forward" label="The next" keys={walkKeys.next.keys} onPress={() => walk.step(1)} />
        <IconButton icon="close" label="Stop going through" keys={walkKeys.stop.keys} onPress={walk.stop} />
      </div>
    </section>
  )
}

function useWalkKeys({ current, problems, step, skip, stop }: Walk, fix: (fix: ProblemFix) => Promise<void>): void {
  const [first, second] = current?.fixes ?? []
  const isOn = current !== null
  const mend = (one: ProblemFix | undefined) => ({
    enabled: one !== undefined,
    perform: () => {
      if (one !== undefined) void fix(one)
    },
  })
  useCommands(
    [
      { ...walkKeys.next, enabled: problems.length > 0, perform: () => step(1) },
      { ...walkKeys.previous, enabled: isOn, perform: () => step(-1) },
      { ...walkKeys.fix, ...mend(first) },
      { ...walkKeys.other, ...mend(second) },
      { ...walkKeys.skip, enabled: isOn, perform: skip },
      { ...walkKeys.stop, enabled: isOn, perform: stop },
    ],
    'frame',
  )
}

function WeightBadge({ problem }: { problem: PacketProblem }) {
  const weight = weights.find(({ key }) => key === problem.weight)
  return weight === undefined ? null : <Badge tone={weight.tone}>{weight.title}</Badge>
}
