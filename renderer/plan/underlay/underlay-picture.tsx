import { toScreen, type PlanView } from '../plan-view.ts'
import type { Underlay } from './use-underlay.ts'
import styles from './underlay.module.css'

/** The image under everything else of the drawing. */
export function UnderlayPicture({ underlay, view }: { readonly underlay: Underlay | null; readonly view: PlanView }) {
  if (underlay === null || underlay.isMissing) return null
  const { image, affine, address, onMissing } = underlay
  const { a, b, c, d, e, f } = affine
  const origin = toScreen(view, { xFt: e, yFt: f })
  const { scale } = view
  return (
    <image
      href={address}
      width={image.widthPx}
      height={image.heightPx}
      preserveAspectRatio="none"
      opacity={image.opacityPercent / 100}
      transform={`matrix(${a * scale} ${-b * scale} ${c * scale} ${-d * scale} ${origin.x} ${origin.y})`}
      onError={onMissing}
    />
  )
}

/** What the image under the plan is, since nobody should take it for evidence; or that its file is gone. */
export function UnderlayCaption({ underlay }: { readonly underlay: Underlay | null }) {
  if (underlay === null) return null
  const { image, isMissing } = underlay
  if (isMissing) {
    return (
      <p className={styles['missing']} role="status">
        The file of the image “{image.label}” is missing or can't be shown. The plan stays as it is. Put the file back
        from a backup, or take the image off the plan and add it again.
      </p>
    )
  }
  return (
    <p className={styles['caption']}>
      {underlayWords[image.kind]}: {image.label}
      {image.source === '' ? '' : `, ${image.source}`}
      {image.knownLine === null ? '. Not to scale yet.' : ''}
    </p>
  )
}

const underlayWords = { aerial: 'Aerial', rendered: 'Rendered', sketch: 'Sketch' } as const
