import { useEffect, useRef, useState } from 'react'
import { useLibrary } from '../state/library.tsx'
import { useMessages } from '../ui/message.tsx'
import styles from './drop-area.module.css'
import { droppedFiles } from './dropped-files.ts'

interface DropAreaProps {
  /** What a drop will do, shown while files are held over the window. */
  readonly words: string
  readonly onFiles: (files: readonly File[]) => void
}

/** Takes files and folders that are dropped anywhere on the window. */
export function DropArea({ words, onFiles }: DropAreaProps) {
  const { info } = useLibrary()
  const { say } = useMessages()
  const [isOver, setOver] = useState(false)
  const take = useRef(onFiles)
  useEffect(() => {
    take.current = onFiles
  })
  const drop = info?.drop ?? 'upload'
  useEffect(() => {
    let depth = 0
    const holdsFiles = (event: DragEvent) => event.dataTransfer?.types.includes('Files') === true
    const on = {
      dragenter(event: DragEvent) {
        if (!holdsFiles(event)) return
        depth += 1
        setOver(true)
      },
      dragleave() {
        depth = Math.max(depth - 1, 0)
        if (depth === 0) setOver(false)
      },
      dragover(event: DragEvent) {
        if (holdsFiles(event)) event.preventDefault()
      },
      drop(event: DragEvent) {
        if (!holdsFiles(event) || event.dataTransfer === null) return
        event.preventDefault()
        depth = 0
        setOver(false)
        droppedFiles(event.dataTransfer, drop).then(
          (files) => take.current(files),
          () =>
            say({
              tone: 'error',
              text: 'What was dropped could not be read.',
              help: 'Copy it to a folder on this computer, then drop it again.',
            }),
        )
      },
    }
    return listenOnWindow(on)
  }, [drop, say])
  return isOver ? (
    <div className={styles['veil']}>
      <p className={styles['words']}>{words}</p>
    </div>
  ) : null
}

type DragListeners = Readonly<Record<'dragenter' | 'dragleave' | 'dragover' | 'drop', (event: DragEvent) => void>>

function listenOnWindow(on: DragListeners): () => void {
  const names = ['dragenter', 'dragleave', 'dragover', 'drop'] as const
  for (const name of names) window.addEventListener(name, on[name])
  return () => {
    for (const name of names) window.removeEventListener(name, on[name])
  }
}
