import type { Extent } from '../../app/evidence/finding.ts'

/** An extent in the fewest words that keep its honesty, for a narrow column: "exactly 3", "about 12", "several". */
export function shortExtent(extent: Extent): string {
  switch (extent.kind) {
    case 'exactly':
      return `exactly ${extent.count}`
    case 'at-least':
      return `at least ${extent.count}`
    case 'about':
      return `about ${extent.count}`
    case 'several':
    case 'examples':
      return extent.kind
    case 'whole-facet':
      return 'whole facet'
    case 'length':
      return `${extent.lengthFt} ft`
    case 'area':
      return `${extent.areaSqFt} sq ft`
    case 'not-stated':
      return 'not stated'
  }
}
