/** What is drawn under the pointer. */
export interface PlanHit {
  readonly kind: 'facet' | 'finding' | 'photo'
  readonly id: string
}

/** The attribute by which a drawn shape says what it stands for. */
export function hitAttribute(hit: PlanHit): { readonly 'data-plan-hit': string } {
  return { 'data-plan-hit': `${hit.kind} ${hit.id}` }
}

/** What an element of the plan stands for; null for the empty sheet. */
export function readHit(target: EventTarget | null): PlanHit | null {
  if (!(target instanceof Element)) return null
  const text = target.closest('[data-plan-hit]')?.getAttribute('data-plan-hit') ?? ''
  const [kind, id = ''] = text.split(' ')
  if (kind !== 'facet' && kind !== 'finding' && kind !== 'photo') return null
  return { kind, id }
}
