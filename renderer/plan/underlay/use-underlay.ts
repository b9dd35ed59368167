import { useMemo, useState } from 'react'
import { fileAddress } from '../../../app/contract/files.ts'
import type { Affine } from '../../../app/roof/image-scale.ts'
import { layPlanImage, type PlanImage } from '../../../app/roof/plan-image.ts'
import { useJob } from '../../state/job-state.tsx'

/** The image under the plan, where it lies, and whether its file can be shown. */
export interface Underlay {
  readonly image: PlanImage
  readonly affine: Affine
  readonly address: string
  readonly isMissing: boolean
  onMissing(): void
}

/**
 * The image that is shown under the plan; null when none is.
 *
 * @param instead the image as it is being laid now, in place of how it is kept
 */
export function useUnderlay(instead: PlanImage | undefined): Underlay | null {
  const { planImages, job } = useJob()
  const [missing, setMissing] = useState<string | null>(null)
  const image = instead ?? planImages.find(({ isShown }) => isShown)
  const { upAzimuthDeg } = job.frame
  return useMemo(() => {
    if (image === undefined) return null
    const laid = layPlanImage(image, upAzimuthDeg)
    if (laid.kind === 'refused') return null
    return {
      image,
      affine: laid.affine,
      address: fileAddress({ kind: 'underlay', id: image.id }),
      isMissing: missing === image.id,
      onMissing: () => setMissing(image.id),
    }
  }, [image, upAzimuthDeg, missing])
}
