import { useMemo } from 'react'
import { drawMarkup, type MarkupDrawing } from '../../../app/evidence/markup-drawing.ts'
import type { Mark, Markup } from '../../../app/evidence/markup.ts'
import type { Photo } from '../../../app/evidence/photo.ts'
import { useJob } from '../../state/job-state.tsx'

const known = new WeakMap<readonly Markup[], ReadonlyMap<string, Markup>>()
const none: readonly Mark[] = []

function byPhoto(markups: readonly Markup[]): ReadonlyMap<string, Markup> {
  const before = known.get(markups)
  if (before !== undefined) return before
  const made = new Map<string, Markup>(markups.map((markup) => [markup.photoId, markup]))
  known.set(markups, made)
  return made
}

/** The marks over a photo of the open job. */
export function useMarks(photo: Photo): readonly Mark[] {
  return byPhoto(useJob().markups).get(photo.id)?.marks ?? none
}

/** A photo's marks as things to draw; null where there are none or the picture's size is not known. */
export function useMarkupDrawing(photo: Photo): MarkupDrawing | null {
  const marks = useMarks(photo)
  const { widthPx, heightPx } = photo.file
  return useMemo(
    () =>
      marks.length === 0 || widthPx === null || heightPx === null ? null : drawMarkup(marks, { widthPx, heightPx }),
    [marks, widthPx, heightPx],
  )
}
