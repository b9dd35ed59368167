/** The parts of a keyboard event that decide whether keys fit. */
export interface PressedKey {
  readonly key: string
  readonly ctrlKey: boolean
  readonly metaKey: boolean
  readonly shiftKey: boolean
  readonly altKey: boolean
  /** The key by its place on the keyboard, such as "Digit1". */
  readonly code?: string
}

/** Keys written as alternatives: `['J', 'ArrowDown']` for `J or ArrowDown`. */
export function alternatives(keys: string): readonly string[] {
  return keys.split(' or ')
}

/** True when what was pressed is one of the alternatives in `keys`. `Ctrl` also means the command key. */
export function keysFit(keys: string, pressed: PressedKey): boolean {
  return alternatives(keys).some((one) => chordFits(one, pressed))
}

/** Names of one chord's keys: `Ctrl+Shift+Z` gives `Ctrl`, `Shift`, `Z`; `Ctrl++` gives `Ctrl`, `+`. */
export function chordParts(chord: string): readonly string[] {
  if (chord === '+') return ['+']
  if (chord.endsWith('++')) return [...chord.slice(0, -2).split('+'), '+']
  return chord.split('+')
}

function chordFits(chord: string, pressed: PressedKey): boolean {
  const parts = chordParts(chord)
  const key = parts.at(-1) ?? ''
  const wants = (name: string) => parts.slice(0, -1).includes(name)
  if (wants('Ctrl') !== (pressed.ctrlKey || pressed.metaKey)) return false
  if (wants('Alt') !== pressed.altKey) return false
  // A sign such as "?" needs Shift on some keyboards and not on others; only letters and named keys care.
  const caresForShift = key.length > 1 || /^\p{L}$/u.test(key)
  if (caresForShift && wants('Shift') !== pressed.shiftKey) return false
  // With Shift a digit key says another sign on most keyboards, so its place decides.
  if (wants('Shift') && /^\d$/.test(key)) return pressed.shiftKey && pressed.code === `Digit${key}`
  const name = key === 'Space' ? ' ' : key
  return pressed.key.toLowerCase() === name.toLowerCase()
}

/** Pairs of commands of one scope that want the same keys, in words; empty when all is well. */
export function keyClashes(commands: readonly { readonly id: string; readonly keys: string }[]): readonly string[] {
  const holder = new Map<string, string>()
  const clashes: string[] = []
  for (const { id, keys } of commands) {
    const scope = id.split('.')[0] ?? ''
    for (const chord of alternatives(keys)) {
      const place = `${scope} ${chord.toLowerCase()}`
      const other = holder.get(place)
      if (other !== undefined) clashes.push(`${other} and ${id} both want ${chord}`)
      holder.set(place, id)
    }
  }
  return clashes
}
