import type { Photo } from '../../app/evidence/photo.ts'
import { photoClockWords } from '../../app/packet/format/times.ts'
import type { Facet } from '../../app/roof/facet.ts'
import { useFacetName } from '../state/roof-zones.ts'
import { countWords } from '../ui/quantity-words.ts'
import styles from './contact-sheet.module.css'
import type { PhotoGroup } from './photo-groups.ts'

/** The heading of a group on the contact sheet. */
export function GroupHeading({ group }: { group: PhotoGroup }) {
  const nameOf = useFacetName()
  return (
    <div role="gridcell" className={styles['heading']}>
      <strong>{titleOf(group, nameOf)}</strong> <span>{countWords(group.photos.length, 'photo')}</span>
    </div>
  )
}

function isTimed({ time }: Photo): boolean {
  return time.instantMs !== null
}

function titleOf({ about, photos }: PhotoGroup, nameOf: (facet: Facet) => string): string {
  switch (about.kind) {
    case 'all':
      return 'All photos'
    case 'facet':
      if (about.facet === null) return 'No facet yet'
      return `Facet ${about.facet.letter}, ${nameOf(about.facet)}`
    case 'stretch': {
      const first = photos.find(isTimed)
      const last = photos.findLast(isTimed)
      if (first === undefined || last === undefined) return 'Placed by hand'
      const from = photoClockWords(first.time)
      const to = photoClockWords(last.time)
      return from === to ? from : `${from.slice(0, 8)} to ${to}`
    }
    case 'no-time':
      return 'Time not known'
  }
}
