import styles from './icon.module.css'

/** Small line drawings, 16 by 16; always beside a word or named by their button. */
const drawings = {
  plus: 'M8 3v10M3 8h10',
  minus: 'M3 8h10',
  close: 'M4 4l8 8M12 4l-8 8',
  search: 'M7 2.5a4.5 4.5 0 1 0 0 9 4.5 4.5 0 0 0 0-9zM10.5 10.5 14 14',
  back: 'M10 3 5 8l5 5',
  forward: 'M6 3l5 5-5 5',
  down: 'M3 6l5 5 5-5',
  up: 'M3 10l5-5 5 5',
  undo: 'M6 3 2.5 6.5 6 10M3 6.5h6a4 4 0 0 1 0 8H6',
  redo: 'M10 3l3.5 3.5L10 10M13 6.5H7a4 4 0 0 0 0 8h3',
  check: 'M3 8.5 6.5 12 13 4.5',
  folder: 'M2 4h4l1.5 2H14v7H2z',
  download: 'M8 2v8M4.5 7 8 10.5 11.5 7M3 13.5h10',
  light:
    'M8 5a3 3 0 1 0 0 6 3 3 0 0 0 0-6zM8 1.5V3M8 13v1.5M1.5 8H3M13 8h1.5M3.5 3.5l1 1M11.5 11.5l1 1M12.5 3.5l-1 1M4.5 11.5l-1 1',
  dark: 'M13 10A5.5 5.5 0 0 1 6 3a5.5 5.5 0 1 0 7 7z',
  system: 'M2 3h12v8H2zM5 14h6M8 11v3',
  trash: 'M3 4.5h10M6.5 4V2.5h3V4M4.5 4.5l.6 9h5.8l.6-9M7 7v4M9 7v4',
  pencil: 'M3 13l.7-3L11 2.8l2.2 2.2L6 12.3z',
  pin: 'M8 14s4.5-4.3 4.5-7.7a4.5 4.5 0 0 0-9 0C3.5 9.7 8 14 8 14zM8 4.8v3M6.5 6.3h3',
  rotate: 'M12.5 8A4.5 4.5 0 1 1 11 4.6M11.5 2v3h-3',
  compare: 'M2 3h5v10H2zM9 3h5v10H9z',
  fit: 'M2.5 6V2.5H6M10 2.5h3.5V6M13.5 10v3.5H10M6 13.5H2.5V10',
  list: 'M5.5 4h8M5.5 8h8M5.5 12h8M2.5 4h.5M2.5 8h.5M2.5 12h.5',
  play: 'M4.5 2.5v11l9-5.5z',
  pause: 'M5 3v10M11 3v10',
  more: 'M3.5 8h.5M7.8 8h.5M12 8h.5',
} as const

export type IconName = keyof typeof drawings

/** A small drawing that repeats what the words beside it say; hidden from screen readers. */
export function Icon({ name }: { name: IconName }) {
  return (
    <svg className={styles['icon']} viewBox="0 0 16 16" aria-hidden="true" focusable="false">
      <path d={drawings[name]} />
    </svg>
  )
}
