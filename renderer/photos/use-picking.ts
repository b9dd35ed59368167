import { useCallback, useEffect, useMemo, useRef } from 'react'
import type { PhotoId } from '../../app/job/ids.ts'
import { useSelection } from '../state/selection.tsx'
import { type Pick, picked, type SheetSelection } from './sheet-selection.ts'

export interface Picking {
  readonly pickedIds: ReadonlySet<PhotoId>
  pick(id: PhotoId, how: Pick): void
  pickAll(): void
  /** Picks these photos, the keyboard at the first. */
  pickThese(ids: readonly PhotoId[]): void
  /** Picks the photo after the last one picked, where there is one. */
  pickNext(): void
}

/** Picks photos in the order shown; what is picked is the selection of the whole desk. */
export function usePicking(order: readonly PhotoId[]): Picking {
  const { selection, select } = useSelection()
  const anchor = useRef<PhotoId | null>(null)
  const latest = useRef({ order, selection })
  useEffect(() => {
    latest.current = { order, selection }
  })
  const show = useCallback(
    (next: SheetSelection) => {
      anchor.current = next.anchor
      select({ kind: 'photos', ids: next.ids, lead: next.lead })
    },
    [select],
  )
  const pick = useCallback(
    (id: PhotoId, how: Pick) => {
      const now = latest.current.selection
      const before =
        now.kind === 'photos'
          ? { ids: now.ids, lead: now.lead, anchor: anchorIn(now.ids, anchor.current) ?? now.lead }
          : null
      show(picked(before, id, { how, order: latest.current.order }))
    },
    [show],
  )
  const pickedIds = useMemo(() => new Set(selection.kind === 'photos' ? selection.ids : []), [selection])
  return {
    pickedIds,
    pick,
    pickAll() {
      const [first] = order
      if (first !== undefined) show({ ids: order, lead: first, anchor: first })
    },
    pickThese(ids) {
      const [first] = ids
      if (first !== undefined) show({ ids, lead: first, anchor: first })
    },
    pickNext() {
      const last = order.findLastIndex((id) => pickedIds.has(id))
      const next = order[last + 1]
      if (next !== undefined) show({ ids: [next], lead: next, anchor: next })
    },
  }
}

/** A range runs from the anchor as long as the selection still holds it; another view may have selected since. */
function anchorIn(ids: readonly PhotoId[], anchor: PhotoId | null): PhotoId | null {
  return anchor !== null && ids.includes(anchor) ? anchor : null
}
