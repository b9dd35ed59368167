/** Names that operating systems leave on cards and that nobody means to hand over. */
const LEFT_BY_SYSTEMS: ReadonlySet<string> = new Set([
  'Thumbs.db',
  'desktop.ini',
  '__MACOSX',
  'System Volume Information',
])

const collator = new Intl.Collator('en', { numeric: true })

/** Orders the names of a folder as a person would list them: `DSC_9` before `DSC_10`. */
export function byCardName(a: string, b: string): number {
  return collator.compare(a, b)
}

/** True for a file or folder of a card that is passed over: hidden, or left there by an operating system. */
export function isPassedOver(name: string): boolean {
  return name.startsWith('.') || LEFT_BY_SYSTEMS.has(name)
}
