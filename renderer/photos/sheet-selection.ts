import type { PhotoId } from '../../app/job/ids.ts'

/** What is picked on the contact sheet. `anchor` is where a range starts, `lead` where the keyboard is. */
export interface SheetSelection {
  readonly ids: readonly PhotoId[]
  readonly lead: PhotoId
  readonly anchor: PhotoId
}

/** How a photo was reached: alone, adding or taking away one, or as the end of a range. */
export type Pick = 'alone' | 'toggle' | 'range'

/** The selection after picking a photo. A range runs from the anchor in the order shown; toggling the last one off keeps it. */
export function picked(
  current: SheetSelection | null,
  id: PhotoId,
  given: { readonly how: Pick; readonly order: readonly PhotoId[] },
): SheetSelection {
  if (current === null || given.how === 'alone') return { ids: [id], lead: id, anchor: id }
  if (given.how === 'range') return { ids: rangeOf(given.order, current.anchor, id), lead: id, anchor: current.anchor }
  if (!current.ids.includes(id)) return { ids: [...current.ids, id], lead: id, anchor: id }
  const left = current.ids.filter((other) => other !== id)
  const lead = left.at(-1)
  return lead === undefined ? current : { ids: left, lead, anchor: lead }
}

function rangeOf(order: readonly PhotoId[], anchor: PhotoId, end: PhotoId): readonly PhotoId[] {
  const from = order.indexOf(anchor)
  const to = order.indexOf(end)
  if (from === -1 || to === -1) return [end]
  return order.slice(Math.min(from, to), Math.max(from, to) + 1)
}
