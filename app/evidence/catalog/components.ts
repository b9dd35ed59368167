import { anyCoveringComponents } from './components/any-covering.ts'
import { metalComponents } from './components/metal.ts'
import { shingleComponents } from './components/shingle.ts'
import { tileComponents } from './components/tile.ts'
import type { ComponentEntry } from './entries.ts'
import type { ComponentKey } from './keys.ts'

/** Every part of a roof that a finding can be about, in the order in which lists offer them. */
export const components: Readonly<Record<ComponentKey, ComponentEntry>> = {
  ...tileComponents,
  ...shingleComponents,
  ...metalComponents,
  ...anyCoveringComponents,
} satisfies Record<ComponentKey, ComponentEntry>

/** The component's name for headings and tables; a reading may carry a word that is not in the catalog, which stays as it is. */
export function componentLabel(key: string): string {
  return isComponentKey(key) ? components[key].label : key
}

function isComponentKey(key: string): key is ComponentKey {
  return Object.hasOwn(components, key)
}
