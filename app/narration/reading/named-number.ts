import type { SpokenWord } from '../words/spoken-words.ts'

const NAMED_BY_NUMBER =
  /^(number|reading|photo|picture|facet|area|unit|lot|page|channel|version|section|test|point|house|street|address|in|figure|finding|tile|cap|pipe|course|row)$/

/** "Picked up one field tile" counts. */
const NAMES_PIECE = /^(field|ridg|hip|rak|eav|til|cap|pip|nail|fastener|screw|vent|skylight|pad)$/

/** True for a number that names or points at something rather than counting it: "photo five", "in two", "the one". */
export function isNamedNumber(words: readonly SpokenWord[], at: number): boolean {
  const before = words[at - 1]
  if (before === undefined || words[at]?.parted !== 'no') return false
  if (NAMED_BY_NUMBER.test(before.text) && before.text !== 'in') return true
  // "In two" tells how something broke; "in two tiles" counts.
  const next = words[at + 1]
  if (/^(in|into)$/.test(before.text) && (next?.parted !== 'no' || !next.text.endsWith('s'))) return true
  // "Between the two skylights" says where.
  if (words.slice(Math.max(0, at - 2), at).some(({ text }) => text === 'between')) return true
  if (words[at]?.text !== 'one') return false
  if (NAMES_PIECE.test(next?.stem ?? '') && next?.parted === 'no' && !/^(the|that|each|every|no)$/.test(before.text))
    return false
  if (before.text === 'the' && /^(just|only)$/.test(words[at - 2]?.text ?? '')) return false
  // "This one" points at one; "the one", "each one" and "no one" count nothing.
  return !/^(this|that|another|just|only|about|maybe|is|are|and|got|have|here|there|with|least|on|in|for|say|see|found|see|of|has)$/.test(
    before.text,
  )
}
