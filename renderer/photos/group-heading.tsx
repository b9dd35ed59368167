import { photoClockWords } from '../../app/packet/format/times.ts'
import { countWords } from '../ui/quantity-words.ts'
import styles from './contact-sheet.module.css'
import type { PhotoGroup } from './photo-groups.ts'

/** The heading of a group on the contact sheet. */
export function GroupHeading({ group }: { group: PhotoGroup }) {
  return (
    <div role="gridcell" className={styles['heading']}>
      <strong>{titleOf(group)}</strong> <span>{countWords(group.photos.length, 'photo')}</span>
    </div>
  )
}

function titleOf({ about, photos }: PhotoGroup): string {
  switch (about.kind) {
    case 'all':
      return 'All photos'
    case 'facet':
      if (about.facet === null) return 'No facet yet'
      return about.facet.name === ''
        ? `Facet ${about.facet.letter}`
        : `Facet ${about.facet.letter}, ${about.facet.name}`
    case 'stretch': {
      const first = photos[0]
      const last = photos.at(-1)
      if (first === undefined || last === undefined) return ''
      const from = photoClockWords(first.time)
      const to = photoClockWords(last.time)
      return from === to ? from : `${from.slice(0, 8)} to ${to}`
    }
    case 'no-time':
      return 'Time not known'
  }
}
