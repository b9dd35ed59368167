import { useState } from 'react'
import { basisWords } from '../../app/diary/clock-reading.ts'
import type { ListedRule } from '../../app/rules/listed-rule.ts'
import { useDesk } from '../client/client-context.tsx'
import { Button } from '../ui/button.tsx'
import { useMessages } from '../ui/message.tsx'
import styles from './diary.module.css'
import { RuleDialog } from './rule-dialog.tsx'
import { useRules } from './use-rules.ts'

/** Rules of the whole library: shipped ones, which can be hidden, and the office's own. */
export function RulesPane() {
  const rules = useRules()
  const [editing, setEditing] = useState<ListedRule['rule'] | 'new' | null>(null)
  return (
    <div className={styles['pane']}>
      <div className={styles['actions']}>
        <Button look="main" onPress={() => setEditing('new')}>
          New rule of the office
        </Button>
        <span className={styles['quiet']}>
          Rules hold for every job of this library. Shipped ones stay as they came; hide one and write your own beside
          it.
        </span>
      </div>
      <table className={styles['list']} aria-label="Rules of the library">
        <thead>
          <tr>
            <th scope="col">Where</th>
            <th scope="col">Rule</th>
            <th scope="col">Source and status</th>
            <th scope="col">From</th>
            <th scope="col">Do</th>
          </tr>
        </thead>
        <tbody>
          {rules.map((listed) => (
            <RuleRow key={listed.rule.key} listed={listed} onEdit={() => setEditing(listed.rule)} />
          ))}
        </tbody>
      </table>
      {editing === null ? null : (
        <RuleDialog rule={editing === 'new' ? null : editing} onClose={() => setEditing(null)} />
      )}
    </div>
  )
}

function RuleRow({ listed, onEdit }: { listed: ListedRule; onEdit: () => void }) {
  const desk = useDesk()
  const { say } = useMessages()
  const { rule, from, isPutAway, version } = listed
  async function putAway() {
    const reply =
      from === 'own'
        ? await desk.call('rules.withdraw-own', { key: rule.key, withdrawn: !isPutAway })
        : await desk.call('rules.hide-shipped', { key: rule.key, hidden: !isPutAway })
    if (!reply.ok) say({ tone: 'error', text: reply.error.message, help: reply.error.help })
  }
  const words = from === 'own' ? (isPutAway ? 'Bring back' : 'Withdraw') : isPutAway ? 'Show' : 'Hide'
  return (
    <tr>
      <td>{rule.jurisdiction === '' ? 'Office' : rule.jurisdiction}</td>
      <td className={isPutAway ? styles['quiet'] : undefined}>
        {rule.title}
        {isPutAway ? (from === 'own' ? ' (withdrawn)' : ' (hidden)') : ''}
        <p className={styles['quiet']}>{rule.says}</p>
      </td>
      <td className={styles['quiet']}>{basisWords(rule)}</td>
      <td>{from === 'own' ? `own, version ${version}` : 'shipped'}</td>
      <td>
        {from === 'own' ? (
          <Button aria-label={`Change ${rule.title}`} onPress={onEdit}>
            Change…
          </Button>
        ) : null}
        <Button look="quiet" aria-label={`${words} ${rule.title}`} onPress={() => void putAway()}>
          {words}
        </Button>
      </td>
    </tr>
  )
}
