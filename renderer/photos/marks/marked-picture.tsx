import { useState } from 'react'
import type { MarkupDrawing } from '../../../app/evidence/markup-drawing.ts'
import { obscurePixels } from '../../../app/evidence/markup/obscure-pixels.ts'
import { MarkShapes } from './mark-shapes.tsx'
import styles from './marks.module.css'

interface MarkedPictureProps {
  /** Address of the picture. */
  readonly src: string
  readonly alt: string
  readonly drawing: MarkupDrawing
}

/** A picture with its marks over it and its obscured areas hidden, fitted into the box it stands in. */
export function MarkedPicture({ src, alt, drawing }: MarkedPictureProps) {
  const { widthPx, heightPx, shapes, obscured } = drawing
  return (
    <span className={styles['marked']}>
      {obscured.length === 0 ? (
        <img className={styles['fitted']} src={src} alt={alt} decoding="async" draggable={false} />
      ) : (
        <ObscuredPicture src={src} alt={alt} drawing={drawing} />
      )}
      <svg className={styles['over']} viewBox={`0 0 ${widthPx} ${heightPx}`} aria-hidden="true">
        <MarkShapes shapes={shapes} />
      </svg>
    </span>
  )
}

/** A picture whose obscured areas are hidden in the same way as in the copies given out. */
export function ObscuredPicture({ src, alt, drawing }: MarkedPictureProps) {
  // Until the picture is there nothing is shown, so that what is hidden does not flash up.
  const [shown, setShown] = useState<HTMLImageElement | null>(null)
  return (
    <>
      <img
        className={styles['unseen']}
        src={src}
        alt=""
        draggable={false}
        onLoad={(event) => setShown(event.currentTarget)}
      />
      <canvas
        role="img"
        aria-label={alt}
        className={styles['fitted']}
        ref={(canvas) => {
          if (canvas !== null && shown !== null) paintObscured(canvas, shown, drawing)
        }}
      />
    </>
  )
}

function paintObscured(canvas: HTMLCanvasElement, picture: HTMLImageElement, drawing: MarkupDrawing): void {
  const [width, height] = [picture.naturalWidth, picture.naturalHeight]
  canvas.width = width
  canvas.height = height
  const context = canvas.getContext('2d', { willReadFrequently: true })
  if (context === null || width === 0 || height === 0) return
  context.drawImage(picture, 0, 0)
  const pixels = context.getImageData(0, 0, width, height)
  obscurePixels({ data: pixels.data, width, height, channels: 4 }, drawing)
  context.putImageData(pixels, 0, 0)
}
