import { useState } from 'react'
import { newRuleSchema } from '../../app/rules/own-rule.ts'
import { ruleStatusSchema, type Rule } from '../../app/rules/rule.ts'
import { useDesk } from '../client/client-context.tsx'
import { Button } from '../ui/button.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { SelectField } from '../ui/select-field.tsx'
import { TextArea } from '../ui/text-area.tsx'
import { TextField } from '../ui/text-field.tsx'
import styles from './diary.module.css'
import { ruleDraft, ruleOf, type RuleDraft } from './rule-draft.ts'
import { RuleFigures } from './rule-figures.tsx'

const statuses = ruleStatusSchema.options.map((key) => ({ key, label: key }))
const kinds = [
  { key: 'clock', label: 'A time that runs from something' },
  { key: 'work-share', label: 'A share of the roof worked on' },
] as const

interface RuleDialogProps {
  /** The rule to change; null for a new one. */
  readonly rule: Rule | null
  readonly onClose: () => void
}

/** A rule of the office's own, of either kind. */
export function RuleDialog({ rule, onClose }: RuleDialogProps) {
  const desk = useDesk()
  const [draft, setDraft] = useState<RuleDraft>(() => ruleDraft(rule))
  const [fault, setFault] = useState<string | null>(null)
  const set = (part: Partial<RuleDraft>) => setDraft({ ...draft, ...part })
  async function save() {
    const read = newRuleSchema.safeParse(ruleOf(draft))
    if (!read.success) return setFault(read.error.issues[0]?.message ?? 'A field is wrong.')
    const reply = await desk.call('rules.save-own', { key: rule?.key ?? null, rule: read.data })
    if (reply.ok) onClose()
    else setFault(reply.error.message)
  }
  return (
    <Dialog
      title={rule === null ? 'New rule of the office' : `Change ${rule.title}`}
      isOpen
      onClose={onClose}
      actions={
        <>
          <Button onPress={onClose}>Cancel</Button>
          <Button look="main" onPress={() => void save()}>
            Save the rule
          </Button>
        </>
      }
    >
      <div className={styles['fields']}>
        <SelectField
          label="Kind"
          options={kinds}
          value={draft.kind}
          isDisabled={rule !== null}
          onChange={(kind) => set({ kind: kind ?? draft.kind })}
        />
        <AboutFields draft={draft} onChange={set} />
        <RuleFigures draft={draft} onChange={set} />
        {fault === null ? null : (
          <p className={styles['error']} role="alert">
            {fault}
          </p>
        )}
      </div>
    </Dialog>
  )
}

function AboutFields({ draft, onChange }: { draft: RuleDraft; onChange: (part: Partial<RuleDraft>) => void }) {
  const line = (key: 'title' | 'jurisdiction' | 'source' | 'link' | 'asOf', label: string, placeholder = '') => (
    <TextField
      label={label}
      placeholder={placeholder}
      value={draft[key]}
      onChange={(text) => onChange({ [key]: text })}
    />
  )
  return (
    <>
      {line('title', 'Title')}
      {line('jurisdiction', 'Jurisdiction, empty for the office', 'US-FL')}
      {line('source', 'Where it comes from')}
      {line('link', 'Where it can be read')}
      <SelectField
        label="Status"
        options={statuses}
        value={draft.status}
        onChange={(status) => onChange({ status: status ?? draft.status })}
      />
      {line('asOf', 'Looked at on', '2026-03-01')}
      <div className={styles['wide']}>
        <TextArea
          label="What the rule says, in plain words"
          value={draft.says}
          onChange={(says) => onChange({ says })}
        />
      </div>
      <div className={styles['wide']}>
        <TextField label="Caution" value={draft.caution} onChange={(caution) => onChange({ caution })} />
      </div>
    </>
  )
}
