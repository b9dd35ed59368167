import { useCallback, useEffect, useState } from 'react'
import type { ListedRule } from '../../app/rules/listed-rule.ts'
import { useDesk } from '../client/client-context.tsx'
import { useMessages } from '../ui/message.tsx'

/** Rules of the library, kept fresh; empty until they are there. */
export function useRules(): readonly ListedRule[] {
  const desk = useDesk()
  const { say } = useMessages()
  const [rules, setRules] = useState<readonly ListedRule[]>([])
  const refresh = useCallback(async () => {
    const reply = await desk.call('rules.list', {})
    if (reply.ok) setRules(reply.value.rules)
    else say({ tone: 'error', text: reply.error.message, help: reply.error.help })
  }, [desk, say])
  useEffect(() => {
    void refresh()
    return desk.listen(
      ({ type }) => {
        if (type === 'rules-changed') void refresh()
      },
      () => void refresh(),
    )
  }, [desk, refresh])
  return rules
}
