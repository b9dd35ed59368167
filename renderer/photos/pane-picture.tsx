import type { ReactNode, SyntheticEvent } from 'react'
import { fileAddress } from '../../app/contract/files.ts'
import { photoLabel, type Photo } from '../../app/evidence/photo.ts'
import { photoSubject } from '../../app/packet/photo-words.ts'
import { MarkShapes } from './marks/mark-shapes.tsx'
import markStyles from './marks/marks.module.css'
import { ObscuredPicture } from './marks/marked-picture.tsx'
import { useMarkupDrawing } from './marks/use-markup.ts'
import styles from './photo-viewer.module.css'

interface PanePictureProps {
  readonly photo: Photo
  /** Whether the preview's pixels are too few for this size on the screen. */
  readonly wantsOriginal: boolean
  /** Lies over the picture in place of its marks, to work on them; the picture is then shown as it is. */
  readonly over: ReactNode
  readonly onNatural: (size: { width: number; height: number }) => void
}

/** The picture of a pane with its marks: the preview, and the original over it where the preview is too coarse. */
export function PanePicture({ photo, wantsOriginal, over, onNatural }: PanePictureProps) {
  const drawing = useMarkupDrawing(photo)
  const src = fileAddress({ kind: 'preview', id: photo.id })
  const alt = `${photoLabel(photo.number)}: ${photoSubject(photo)}`
  if (drawing !== null && drawing.obscured.length > 0 && over === null) {
    return (
      <>
        <ObscuredPicture src={src} alt={alt} drawing={drawing} />
        <Marks drawing={drawing} />
      </>
    )
  }
  const tell = ({ currentTarget }: SyntheticEvent<HTMLImageElement>) =>
    onNatural({ width: currentTarget.naturalWidth, height: currentTarget.naturalHeight })
  return (
    <>
      <img className={styles['picture']} src={src} alt={alt} draggable={false} onLoad={tell} />
      {wantsOriginal ? (
        <img
          className={styles['original']}
          src={fileAddress({ kind: 'full', id: photo.id })}
          alt=""
          draggable={false}
        />
      ) : null}
      {over ?? (drawing === null ? null : <Marks drawing={drawing} />)}
    </>
  )
}

function Marks({ drawing }: { drawing: NonNullable<ReturnType<typeof useMarkupDrawing>> }) {
  const { widthPx, heightPx, shapes } = drawing
  return (
    <svg
      className={markStyles['over']}
      viewBox={`0 0 ${widthPx} ${heightPx}`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      <MarkShapes shapes={shapes} />
    </svg>
  )
}
