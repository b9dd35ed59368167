import { components } from '../evidence/catalog/components.ts'
import { conditions } from '../evidence/catalog/conditions.ts'
import { extentWords } from '../evidence/catalog/extent-words.ts'
import type { Finding } from '../evidence/finding.ts'

/** "Field tile: slipped or displaced". A condition that begins with the part's own name does not say it twice. */
export function whatWords({ component, condition }: Pick<Finding, 'component' | 'condition'>): string {
  const part = components[component].label
  const { label } = conditions[condition]
  const rest = label.startsWith(`${part} `) ? label.slice(part.length + 1) : label
  return `${part}: ${rest.charAt(0).toLowerCase()}${rest.slice(1)}`
}

/** "exactly 3 field tiles". */
export function howMuchWords({ component, extent }: Pick<Finding, 'component' | 'extent'>): string {
  return extentWords(extent, components[component])
}
