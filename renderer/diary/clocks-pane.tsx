import { useEffect, useState } from 'react'
import { clockCaution } from '../../app/diary/clock-caution.ts'
import { basisWords, spanWords, type ClockReading } from '../../app/diary/clock-reading.ts'
import type { ListedRule } from '../../app/rules/listed-rule.ts'
import { useDesk } from '../client/client-context.tsx'
import { useEdit, useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { Checkbox } from '../ui/checkbox.tsx'
import { AskClockDialog } from './ask-clock-dialog.tsx'
import styles from './diary.module.css'
import { useRules } from './use-rules.ts'

type ClockRule = Extract<ListedRule['rule'], { kind: 'clock' }>

/** Statutory clocks as general information: none until somebody asks for one. */
export function ClocksPane() {
  const { diary } = useJob()
  const clocks = useClocks()
  const listed = useRules()
  const [asking, setAsking] = useState<ClockRule | null>(null)
  const rules = listed.flatMap(({ rule, isPutAway }) => (rule.kind === 'clock' && !isPutAway ? [rule] : []))
  const offered = rules.filter(({ jurisdiction }) => diary.clocks.jurisdictions.includes(jurisdiction))
  const own = rules.filter(({ jurisdiction }) => jurisdiction === '')
  return (
    <div className={styles['pane']}>
      <p className={styles['caution']} role="note">
        {clockCaution}
      </p>
      <section className={styles['part']} aria-label="Clocks asked for">
        <h3>Asked for in this job</h3>
        {clocks.length === 0 ? (
          <p className={styles['quiet']}>None. Clocks are off until you choose a jurisdiction and ask for one.</p>
        ) : (
          clocks.map((clock) => <ShownClock key={clock.asked.id} clock={clock} />)
        )}
      </section>
      <section className={styles['part']} aria-label="Clocks to ask for">
        <h3>Ask for a clock</h3>
        <Jurisdictions rules={rules} />
        <RuleLines rules={[...offered, ...own]} onAsk={setAsking} />
      </section>
      {asking === null ? null : <AskClockDialog rule={asking} onClose={() => setAsking(null)} />}
    </div>
  )
}

/** The clocks of the open job, counted anew with every change of job or rules. */
function useClocks(): readonly ClockReading[] {
  const desk = useDesk()
  const { job, diary } = useJob()
  const rules = useRules()
  const [clocks, setClocks] = useState<readonly ClockReading[]>([])
  useEffect(() => {
    let isGone = false
    void desk.call('diary.clocks', { jobId: job.id }).then((reply) => {
      if (reply.ok && !isGone) setClocks(reply.value.clocks)
    })
    return () => {
      isGone = true
    }
  }, [desk, job.id, diary.clocks, rules])
  return clocks
}

function ShownClock({ clock }: { clock: ClockReading }) {
  const edit = useEdit()
  const [, ...particular] = clock.cautions
  return (
    <article className={styles['clock']}>
      <p>
        {clock.sentence}
        {clock.asked.note === '' ? '' : ` Start: ${clock.asked.note}.`}
      </p>
      <p className={styles['quiet']}>{clock.working.join(' ')}</p>
      {particular.map((words) => (
        <p key={words} className={styles['quiet']}>
          {words}
        </p>
      ))}
      <p className={styles['quiet']}>
        {clock.basis} {clock.link === '' ? '' : `Look it up: ${clock.link}`}
      </p>
      <Button look="quiet" onPress={() => void edit('diary.drop-clock', { id: clock.asked.id })}>
        Drop this clock
      </Button>
    </article>
  )
}

function Jurisdictions({ rules }: { rules: readonly ClockRule[] }) {
  const { diary } = useJob()
  const edit = useEdit()
  const { jurisdictions } = diary.clocks
  const codes = [...new Set([...rules.map(({ jurisdiction }) => jurisdiction), ...jurisdictions])].filter(
    (code) => code !== '',
  )
  return (
    <div className={styles['checks']} role="group" aria-label="Jurisdictions">
      {codes.map((code) => (
        <Checkbox
          key={code}
          isSelected={jurisdictions.includes(code)}
          onChange={(isOn) =>
            void edit('diary.choose-jurisdictions', {
              jurisdictions: isOn ? [...jurisdictions, code] : jurisdictions.filter((one) => one !== code),
            })
          }
        >
          {code}
        </Checkbox>
      ))}
    </div>
  )
}

function RuleLines({ rules, onAsk }: { rules: readonly ClockRule[]; onAsk: (rule: ClockRule) => void }) {
  if (rules.length === 0) return <p className={styles['quiet']}>Choose a jurisdiction to see its clocks.</p>
  return (
    <table className={styles['list']} aria-label="Clocks to choose from">
      <thead>
        <tr>
          <th scope="col">Where</th>
          <th scope="col">Clock</th>
          <th scope="col">Counted</th>
          <th scope="col">Source and status</th>
          <th scope="col">Do</th>
        </tr>
      </thead>
      <tbody>
        {rules.map((rule) => (
          <tr key={rule.key}>
            <td>{rule.jurisdiction === '' ? 'Office' : rule.jurisdiction}</td>
            <td>
              {rule.title}
              <p className={styles['quiet']}>{rule.says}</p>
            </td>
            <td>{spanWords(rule.data)}</td>
            <td className={styles['quiet']}>{basisWords(rule)}</td>
            <td>
              <Button aria-label={`Ask for ${rule.title}`} onPress={() => onAsk(rule)}>
                Ask
              </Button>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
