import type { Photo } from '../../app/evidence/photo.ts'
import type { PhotoId } from '../../app/job/ids.ts'
import type { PhotoGroup } from './photo-groups.ts'

/** One row of the contact sheet: a group's heading or a line of photos. */
export type SheetRow =
  | { readonly kind: 'heading'; readonly group: PhotoGroup }
  | { readonly kind: 'photos'; readonly photos: readonly Photo[] }

/** Lays groups out in rows of `columns`; a lone group of everything needs no heading. */
export function sheetRows(groups: readonly PhotoGroup[], columns: number): readonly SheetRow[] {
  return groups.flatMap((group) => {
    const lines: SheetRow[] = []
    for (let start = 0; start < group.photos.length; start += columns) {
      lines.push({ kind: 'photos', photos: group.photos.slice(start, start + columns) })
    }
    return group.about.kind === 'all' ? lines : [{ kind: 'heading' as const, group }, ...lines]
  })
}

/** The row that a photo is in; -1 when it is not on the sheet. */
export function rowOfPhoto(rows: readonly SheetRow[], id: PhotoId): number {
  return rows.findIndex((row) => row.kind === 'photos' && row.photos.some((photo) => photo.id === id))
}

export type Step = 'left' | 'right' | 'up' | 'down' | 'first' | 'last'

/** The photo that a step on the sheet leads to, or the same one at an end. Up and down keep the column where they can. */
export function steppedPhoto(rows: readonly SheetRow[], from: PhotoId, step: Step): PhotoId {
  const lines = rows.flatMap((row) => (row.kind === 'photos' ? [row.photos] : []))
  const all = lines.flat()
  const line = lines.findIndex((photos) => photos.some((photo) => photo.id === from))
  const column = lines[line]?.findIndex((photo) => photo.id === from) ?? 0
  const place = all.findIndex((photo) => photo.id === from)
  const inLine = (at: number) => {
    const photos = lines[at]
    return photos?.[Math.min(column, photos.length - 1)]
  }
  const target: Record<Step, () => Photo | undefined> = {
    left: () => all[place - 1],
    right: () => all[place + 1],
    up: () => inLine(line - 1),
    down: () => inLine(line + 1),
    first: () => all[0],
    last: () => all.at(-1),
  }
  return target[step]()?.id ?? from
}
