import { useMemo, useRef, useState } from 'react'
import type { ScopePatch } from '../../app/contract/scope.ts'
import { buildScope, type BuiltScope } from '../../app/scope/build-scope.ts'
import { priceScope, type PricedScope } from '../../app/scope/price-scope.ts'
import { scopeSchema, type JobScope, type Scope } from '../../app/scope/scope-record.ts'
import { useEdit, useJob } from '../state/job-state.tsx'

/** The open job's scope as it is worked on. */
export interface ScopeState {
  /** With what was just changed, before the desk has answered. */
  readonly scope: JobScope
  readonly built: BuiltScope
  readonly priced: PricedScope
  /** Saves parts of the scope as one step; answers whether the desk took them. */
  readonly save: (set: ScopePatch) => Promise<boolean>
}

/** The open job's scope, both bids worked out and priced, and the way to change it. */
export function useScope(): ScopeState {
  const { job, facets, findings, scope: kept } = useJob()
  const edit = useEdit()
  const [ahead, setAhead] = useState<Scope | null>(null)
  const latest = useRef<Scope | null>(null)
  const choices = ahead ?? kept.choices
  const scope = useMemo(() => ({ choices, book: kept.book }), [choices, kept.book])
  const built = useMemo(() => buildScope({ job, facets, findings }, choices), [job, facets, findings, choices])
  const priced = useMemo(() => priceScope(built, scope), [built, scope])
  async function save(set: ScopePatch): Promise<boolean> {
    const next = scopeSchema.safeParse({ ...(latest.current ?? kept.choices), ...set })
    // What the schema refuses the desk refuses too, with its words.
    if (next.success) {
      latest.current = next.data
      setAhead(next.data)
    }
    const isSaved = (await edit('scope.save', { set })) !== null
    if (next.success && latest.current === next.data) {
      latest.current = null
      setAhead(null)
    }
    return isSaved
  }
  return { scope, built, priced, save }
}
