import type { SpokenWord } from '../words/spoken-words.ts'

export type SideWord = 'front' | 'back' | 'left' | 'right' | 'north' | 'south' | 'east' | 'west'

/** A place on a house as it was said. Left and right are those of a person who looks at the front from the street. */
export interface SaidPlace {
  /** Sides named, in the order in which they were said: "the left half of the back" is left, then back. */
  readonly sides: readonly SideWord[]
  /** Set where the last side is the slope and the first only a part of it: "left half of the back", "back, left end". */
  readonly isPartOf: boolean
  /** A part of the house by the word that names it on the plan: "garage", "porch"; or "door". */
  readonly landmark: string | null
  /** How the landmark is meant: on or over it, or to a side of it. */
  readonly relation: 'on' | 'left-of' | 'right-of' | null
  /** The letter of a facet. */
  readonly letter: string | null
  /** True when the speaker looks out from the house, so that left and right change places. */
  readonly isFromInside: boolean
  readonly at: number
  readonly length: number
}

const SIDES: Readonly<Record<string, SideWord>> = {
  front: 'front',
  back: 'back',
  rear: 'back',
  left: 'left',
  right: 'right',
  north: 'north',
  south: 'south',
  east: 'east',
  west: 'west',
  northern: 'north',
  southern: 'south',
  eastern: 'east',
  western: 'west',
  lefthand: 'left',
  righthand: 'right',
  backside: 'back',
}
const NOUN =
  /^(side|sides|slope|slopes|face|roof|plane|section|elevation|pitch|field|facet|hand|part|half|end|portion|third|quarter|wing|corner|area|edge|one)$/
const MIDDLE = /^(main|big|small|upper|lower|long|short|whole)$/
const PART_NOUN = /^(half|part|end|portion|third|quarter|corner|area|edge)$/
/** Nouns that pieces have as well as slopes: "the lower left corner" is a tile's. */
const PIECE_NOUN = /^(corner|edge|end)$/
const BEFORE =
  /^(the|on|to|our|your|my|in|at|onto|of|over|around|round|in|lower|upper|far|whole|entire|now|house|this|toward|towards|from|then|up)$/
const LEAD =
  /^(on|to|at|over|above|in|around|onto|up|near|by|along|the|of|from|down|out|here|back|toward|towards|coming|moving|going|heading|right|just|round|side|next|beside|inside|under|below|across|lower|upper|far|all)$/
const OVER = /^(on|over|above|onto|at|up|across|along|from|atop|around|of|to|behind)$/
const NEAR = /^(by|near|beside|next|against|past|below|under|toward|towards)$/

/**
 * Places named in a sentence, from left to right. Words such as "right here", "came back" or "what is left" name none.
 *
 * @param landmarks words that name parts of this house on its plan, in lower case
 */
export function saidPlaces(words: readonly SpokenWord[], landmarks: ReadonlySet<string>): readonly SaidPlace[] {
  const isFromInside = looksOut(words)
  const found: SaidPlace[] = []
  for (let at = 0; at < words.length;) {
    const place = placeAt(words, at, landmarks)
    if (place === null) {
      at += 1
      continue
    }
    const from = leadFrom(words, place.at, found.at(-1))
    found.push({ ...place, isFromInside, at: from, length: place.at + place.length - from })
    at = place.at + place.length
  }
  return joined(found, words)
}

type Bare = Omit<SaidPlace, 'isFromInside'>

function placeAt(words: readonly SpokenWord[], at: number, landmarks: ReadonlySet<string>): Bare | null {
  return letterAt(words, at) ?? landmarkAt(words, at, landmarks) ?? sidesAt(words, at, landmarks)
}

function bare(at: number, length: number, said: Partial<Bare>): Bare {
  return { sides: [], isPartOf: false, landmark: null, relation: null, letter: null, at, length, ...said }
}

/** "Facet B", "slope C", or the letter as a whole sentence in terse notes: "C." */
function letterAt(words: readonly SpokenWord[], at: number): Bare | null {
  const alone = words[0]?.text ?? ''
  if (words.length === 1 && /^[b-hj-z]$/.test(alone)) return bare(0, 1, { letter: alone.toUpperCase() })
  const letter = words[at + 1]
  if (!/^(facet|slope|plane|section|area)$/.test(words[at]?.text ?? '') || letter?.parted !== 'no') return null
  return /^[b-hj-z]$/.test(letter.text) || (letter.text === 'a' && words[at + 2]?.parted !== 'no')
    ? bare(at, 2, { letter: letter.text.toUpperCase() })
    : null
}

function landmarkAt(words: readonly SpokenWord[], at: number, landmarks: ReadonlySet<string>): Bare | null {
  const word = words[at]
  if (word === undefined) return null
  if (word.text === 'door' || (landmarks.has(word.stem) && !(word.stem in SIDES))) {
    const landmark = word.text === 'door' ? 'door' : word.stem
    if (landmark === 'door' && isOtherDoor(words, at, landmarks)) return null
    const toSide = sideOf(words, at)
    if (toSide !== null) {
      const { at: from, relation } = toSide
      // "The left side of the garage" is a slope of it; "left of the garage" is beside it.
      const isOwn = landmark !== 'door' && /^(side|slope|face|half)$/.test(words[from + 1]?.text ?? '')
      const sides: readonly SideWord[] = isOwn ? [relation === 'left-of' ? 'left' : 'right'] : []
      return bare(from, at + 1 - from, { landmark, relation: isOwn ? 'on' : relation, sides })
    }
    const before = prepositionBefore(words, at)
    if (before !== null && NEAR.test(before)) return null
    const isHeading =
      (at === 0 && (words.length <= 2 || words[1]?.parted !== 'no' || /^(now|next|here)$/.test(words[1].text))) ||
      (isOpening(words, at) && (words.length <= at + 2 || words[at + 1]?.parted !== 'no'))
    const isNamed =
      /^(roof|slope|side|wing|part|section|ridge|hip|eave|field)$/.test(words[at + 1]?.text ?? '') &&
      landmark !== 'door'
    if ((before !== null && OVER.test(before)) || isHeading || isNamed) {
      return bare(at, isNamed && !/^(ridge|hip|eave|field)$/.test(words[at + 1]?.text ?? '') ? 2 : 1, {
        landmark,
        relation: 'on',
      })
    }
  }
  return null
}

/** "Sorry, left." */
const isSorry = (words: readonly SpokenWord[], at: number): boolean =>
  words.length === at + 1 && /^(sorry|no|correction|mean|meant)$/.test(words[at - 1]?.text ?? '')

/** "Okay, now the back": nothing but words that begin to speak stands before a place. */
function isOpening(words: readonly SpokenWord[], at: number): boolean {
  return (
    at > 0 &&
    at <= 4 &&
    words
      .slice(0, at)
      .every(({ text }) =>
        /^(okay|ok|so|now|alright|alrighty|all|right|and|then|next|well|onto|the|up|sorry|no|correction|i|mean|meant)$/.test(
          text,
        ),
      ) &&
    !(words[at]?.text === 'right' && words[at - 1]?.text === 'all')
  )
}

/** The garage's door, named as such or with the garage just before it. */
function isOtherDoor(words: readonly SpokenWord[], at: number, landmarks: ReadonlySet<string>): boolean {
  if (/^(front|entry|main|entrance)$/.test(words[at - 1]?.text ?? '')) return false
  return words.slice(0, at).some(({ stem }) => landmarks.has(stem))
}

/** "To the left of the front door", "right of the garage". */
function sideOf(words: readonly SpokenWord[], at: number): { relation: 'left-of' | 'right-of'; at: number } | null {
  for (let i = at - 1; i >= Math.max(0, at - 5); i -= 1) {
    const text = words[i]?.text ?? ''
    if (text === 'of' || text === 'from') {
      for (let k = i - 1; k >= Math.max(0, i - 3); k -= 1) {
        const side = words[k]?.text
        if (side === 'left' || side === 'right') return { relation: `${side}-of`, at: k }
      }
      return null
    }
    if (!/^(the|front|entry|our|your|that|main|this)$/.test(text)) return null
  }
  return null
}

function prepositionBefore(words: readonly SpokenWord[], at: number): string | null {
  for (let i = at - 1; i >= Math.max(0, at - 3); i -= 1) {
    const text = words[i]?.text ?? ''
    if (OVER.test(text) || NEAR.test(text)) return text
    if (!/^(the|front|our|your|that|this|main|to|whole)$/.test(text)) return null
  }
  return null
}

function sidesAt(words: readonly SpokenWord[], at: number, landmarks: ReadonlySet<string>): Bare | null {
  const side = SIDES[words[at]?.stem ?? ''] ?? SIDES[words[at]?.text ?? '']
  if (side === undefined) return null
  const sides = [side]
  let end = at + 1
  const second = SIDES[words[end]?.text ?? '']
  if (second !== undefined && second !== side && words[end]?.parted === 'no') {
    sides.push(second)
    end += 1
  }
  // "The front main slope": a word of size or place between the side and what it is a side of.
  if (MIDDLE.test(words[end]?.text ?? '') && [end, end + 1].every((i) => words[i]?.parted === 'no')) {
    if (/^(slope|roof|face|plane|section|side)$/.test(words[end + 1]?.text ?? '')) end += 1
  }
  const after = words[end]?.parted === 'no' ? (words[end]?.text ?? '') : ''
  if (after === 'door' || (landmarks.has(words[end]?.stem ?? '') && words[end]?.parted === 'no')) return null
  if (words.slice(Math.max(0, at - 3), at).some(({ stem }) => stem === 'fac')) return null
  const before = words[at - 1]?.text ?? ''
  const isOnPiece =
    PIECE_NOUN.test(after === 'hand' ? (words[end + 1]?.text ?? '') : after) &&
    sides.length === 1 &&
    !/^(of the|of this|of that)? ?(slope|roof|house|side|front|back|left|right|whole)/.test(
      words
        .slice(end + 1, end + 5)
        .map(({ text }) => text)
        .join(' ')
        .replace(/^of (the|this|that) (?!slope|roof|house|side|front|back|left|right|whole)/, 'x '),
    )
  if (isOnPiece) return null
  const hasNoun = NOUN.test(after) && !(side === 'right' && after === 'one')
  const isHeading =
    (at === 0 || isOpening(words, at)) &&
    (after === '' || hasNoun) &&
    (hasNoun || (side !== 'left' && side !== 'right') || isSorry(words, at))
  const isAfterThe = BEFORE.test(before) && words[at]?.parted === 'no'
  const stands =
    hasNoun ||
    /^(of|as|where|is|was|has|now|if|we|there|i|you|here|when|with|today|are|two|three|four|five|six|one|and|it|slopes)$/.test(
      after,
    ) ||
    after === ''
  const isSide =
    isHeading ||
    (isAfterThe && hasNoun) ||
    (isAfterThe && /^(the|our|your|my|house|lower|upper|far)$/.test(before) && stands) ||
    sides.length > 1 ||
    (side in { left: 1, right: 1 } && hasNoun)
  if (!isSide || (before === 'all' && side === 'right')) return null
  if (after === 'of' && isOfPiece(words, end + 1)) return null
  if (side === 'back' && !hasNoun && /^(came|come|go|get|be|right|put|pull|pulled|slide|slid)$/.test(before))
    return null
  let isPartOf = sides.length > 1
  if (hasNoun) end += after === 'hand' && NOUN.test(words[end + 1]?.text ?? '') ? 2 : 1
  if (PART_NOUN.test(after)) isPartOf = sides.length > 1 || isPartOf
  return bare(at, end - at, { sides, isPartOf })
}

/** "The back of this tile" is no side of the house. */
function isOfPiece(words: readonly SpokenWord[], at: number): boolean {
  return words
    .slice(at, at + 3)
    .some(({ stem }) => /^(til|cap|it|my|his|their|one|them|shingl|panel|pip|chimney|ladder|truck)$/.test(stem))
}

/** "The left half of the back", "the back slope, right end": two sides close together are one place. */
function joined(found: readonly SaidPlace[], words: readonly SpokenWord[]): readonly SaidPlace[] {
  const out: SaidPlace[] = []
  for (const place of found) {
    const last = out.at(-1)
    const end = last === undefined ? 0 : last.at + last.length
    const between = words
      .slice(end, place.at)
      .map(({ text }) => text)
      .join(' ')
    const isPair =
      last !== undefined &&
      last.sides.length === 1 &&
      place.sides.length === 1 &&
      differs(last.sides[0], place.sides[0])
    if (last !== undefined && isPair && /^((of|on) (the|our)( house| roof)?( the)?|of|the|)$/.test(between)) {
      out[out.length - 1] = {
        ...last,
        sides: [...last.sides, ...place.sides],
        isPartOf: true,
        length: place.at + place.length - last.at,
      }
    } else if (
      last !== undefined &&
      last.landmark !== null &&
      place.landmark === null &&
      place.sides.length === 1 &&
      end === place.at &&
      words[place.at]?.parted === 'no'
    ) {
      out[out.length - 1] = { ...last, sides: place.sides, length: place.at + place.length - last.at }
    } else out.push(place)
  }
  return out
}

function differs(a: SideWord | undefined, b: SideWord | undefined): boolean {
  const across = (side: SideWord | undefined) =>
    side === 'left' || side === 'right' || side === 'east' || side === 'west'
  return across(a) !== across(b)
}

/** Prepositions before a place belong to its words. */
function leadFrom(words: readonly SpokenWord[], at: number, last: SaidPlace | undefined): number {
  let from = at
  const least = last === undefined ? 0 : last.at + last.length
  while (from > least && from > at - 4 && LEAD.test(words[from - 1]?.text ?? '') && words[from]?.parted === 'no')
    from -= 1
  return from
}

/** "Looking out to the street", "with my back to the house": left and right change places. */
function looksOut(words: readonly SpokenWord[]): boolean {
  const text = words.map((word) => word.text).join(' ')
  return /\b(look|looking|facing|face|faces) (out|away)\b|\b(facing|face|look|looking) (to|toward|towards|at|onto)? ?the street\b|back to the house|from up here looking (out|down)/.test(
    text,
  )
}
