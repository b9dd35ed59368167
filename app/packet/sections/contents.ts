import type { Section } from '../document.ts'
import { titledSection } from './section.ts'

/** The contents; the publisher fills in the page numbers. */
export function contentsSection(): Section {
  return titledSection('contents', 'Contents', [{ kind: 'contents' }])
}
