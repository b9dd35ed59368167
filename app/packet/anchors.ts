import { photoLabel, type Photo } from '../evidence/photo.ts'
import type { Finding } from '../evidence/finding.ts'
import { readingLabel } from '../evidence/reading-label.ts'
import type { Reading } from '../fieldtest/reading.ts'
import type { Facet } from '../roof/facet.ts'
import { findingAnchor, pinAnchor, type Anchor } from './document.ts'

/** Anchor of a finding's own entry: "finding-F-12". */
export function anchorOfFinding({ number }: Pick<Finding, 'number'>): Anchor {
  return findingAnchor(String(number))
}

/** Anchor of the pin that marks a finding on the plan: "pin-F-12". */
export function anchorOfPin({ number }: Pick<Finding, 'number'>): Anchor {
  return pinAnchor(String(number))
}

/** Anchor of a photo's card: "photo-P-007". */
export function anchorOfPhoto({ number }: Pick<Photo, 'number'>): Anchor {
  return `photo-${photoLabel(number)}`
}

/** Anchor of a photo's line in custody, where its full digest stands: "file-P-007". */
export function anchorOfFile({ number }: Pick<Photo, 'number'>): Anchor {
  return `file-${photoLabel(number)}`
}

/** Anchor of a facet's line in the facet table: "facet-A". */
export function anchorOfFacet({ letter }: Pick<Facet, 'letter'>): Anchor {
  return `facet-${letter}`
}

/** Anchor of a reading's line: "reading-R-4". */
export function anchorOfReading({ number }: Pick<Reading, 'number'>): Anchor {
  return `reading-${readingLabel(number)}`
}

/** Anchor of an explanatory note: "note-hand-lift". */
export function anchorOfNote(key: string): Anchor {
  return `note-${key}`
}

/** Anchor of the cameras in custody, where the corrections of their clocks stand with the reasons. */
export const anchorOfCameras: Anchor = 'custody-cameras'
