import { useState } from 'react'
import type { PlanImagePatch } from '../../../app/contract/edits.ts'
import { imageToPlan, planToImage, type Affine, type ImagePoint } from '../../../app/roof/image-scale.ts'
import { layPlanImage, type PlanImage } from '../../../app/roof/plan-image.ts'
import type { PlanPoint } from '../../../app/job/places.ts'
import { useEdit, useJob } from '../../state/job-state.tsx'
import { tidyPoint } from '../sheet-geometry.ts'

/** What clicks on the sheet do while an image is laid. */
export type LayingAct = 'none' | 'scale' | 'check' | 'fit'

/** An image being laid under the plan. */
export interface Laying {
  /** As it would lie now. */
  readonly image: PlanImage
  readonly affine: Affine | null
  readonly act: LayingAct
  /** Places on the image that were marked for the present act. */
  readonly marks: readonly ImagePoint[]
  begin(act: LayingAct): void
  mark(at: PlanPoint): void
  /** Shows a change without keeping it. */
  preview(set: PlanImagePatch): void
  /** Keeps what is shown, or the change given; answers whether it was taken. */
  keep(set?: PlanImagePatch): Promise<boolean>
  planPointOf(at: ImagePoint): PlanPoint
}

/** Lays an image: what is dragged is shown at once and kept when it is let go. */
export function useLaying(image: PlanImage): Laying {
  const { upAzimuthDeg } = useJob().job.frame
  const edit = useEdit()
  const [change, setChange] = useState<PlanImagePatch | null>(null)
  const [act, setAct] = useState<LayingAct>('none')
  const [marks, setMarks] = useState<readonly ImagePoint[]>([])
  const shown: PlanImage = { ...image, ...given(change) }
  const laid = layPlanImage(shown, upAzimuthDeg)
  const affine = laid.kind === 'placed' ? laid.affine : null
  function begin(next: LayingAct) {
    setAct(next)
    setMarks([])
  }
  async function keep(set = change) {
    if (set === null) return true
    const taken = (await edit('plan-images.save', { id: image.id, set })) !== null
    setChange(null)
    if (taken) begin('none')
    return taken
  }
  function mark(at: PlanPoint) {
    if (affine === null || act === 'none') return
    const [first] = marks
    if (act === 'fit' && first !== undefined) void keep({ held: { image: first, plan: tidyPoint(at) } })
    else setMarks(marks.length < 2 ? [...marks, planToImage(at, affine)] : [planToImage(at, affine)])
  }
  return {
    image: shown,
    affine,
    act,
    marks,
    begin,
    mark,
    preview: setChange,
    keep,
    planPointOf: (at) => (affine === null ? shown.held.plan : imageToPlan(at, affine)),
  }
}

function given(change: PlanImagePatch | null): Partial<PlanImage> {
  if (change === null) return {}
  const { held, imageUpAzimuthDeg } = change
  return {
    ...(held === undefined ? {} : { held }),
    ...(imageUpAzimuthDeg === undefined ? {} : { imageUpAzimuthDeg }),
  }
}
