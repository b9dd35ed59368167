import { useCallback } from 'react'
import type { Finding, Pin } from '../../app/evidence/finding.ts'
import type { Facet } from '../../app/roof/facet.ts'
import { type Edit, useEdit, useJob } from '../state/job-state.tsx'
import { facetUnderPin } from './facet-at.ts'
import type { Reshaped } from './outline-edit.ts'

/** Saves the new outlines of facets as one edit, so that corners they share come back together too. */
export function useSaveOutlines(): (changed: readonly Reshaped[]) => Promise<void> {
  const edit = useEdit()
  return useCallback(
    async (changed) => {
      if (changed.length === 0) return
      await edit('facets.reshape', {
        changed: changed.map(({ facet, outline }) => ({ id: facet.id, outline: [...outline] })),
      })
    },
    [edit],
  )
}

/** Saves a facet that is already on the plan; false when it was refused. */
export async function saveFacet(edit: Edit, { id, ...facet }: Facet): Promise<boolean> {
  return (await edit('facets.save', { id, facet })) !== null
}

/** Puts a finding's pin somewhere; a finding without a facet gets the one under the pin. */
export function useSavePin(): (finding: Finding, pin: Pin) => Promise<void> {
  const edit = useEdit()
  const { facets } = useJob()
  return useCallback(
    async ({ id, number: _number, ...finding }, pin) => {
      const facetId = finding.facetId ?? facetUnderPin(facets, pin)?.id ?? null
      await edit('findings.save', { id, finding: { ...finding, pin, facetId } })
    },
    [edit, facets],
  )
}
