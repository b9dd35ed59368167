import { PicturePane, type PicturePaneProps } from '../picture-pane.tsx'
import { MarkBar } from './mark-bar.tsx'
import { MarkCanvas } from './mark-canvas.tsx'
import type { PictureSize } from './mark-edits.ts'
import { useMarkKeys } from './mark-keys.ts'
import styles from './marks.module.css'
import { useMarkEditor } from './use-mark-editor.ts'

interface MarkingPaneProps extends Omit<PicturePaneProps, 'over'> {
  readonly picture: PictureSize
  readonly onDone: () => void
}

/** One photo large, to be marked: the picture under its marks, and the bar of tools under both. */
export function MarkingPane({ picture, onDone, ...pane }: MarkingPaneProps) {
  const editor = useMarkEditor(pane.photo, picture)
  useMarkKeys(editor, onDone)
  return (
    <div className={styles['marking']}>
      <PicturePane {...pane} over={(scale) => <MarkCanvas editor={editor} scale={scale} />} />
      <MarkBar editor={editor} onDone={onDone} />
    </div>
  )
}
