import { isCounted } from '../words/component-words.ts'
import { type Sign, signPhrases } from '../words/condition-words.ts'
import { type Found, phrases } from '../words/phrases.ts'
import type { SpokenWord } from '../words/spoken-words.ts'
import type { SpokenMeasure } from './quantities.ts'
import type { PartMark } from './said-part.ts'
import type { Stance } from './stance-words.ts'

/** People move and come down too; only of a part does that say that it has slipped. */
const MOVES = /^(mov|drop|work|travel|com|rid|walk|run|kick|shift)$/

/** What lies across a tile has not cracked it. */
const LIES = /^(lie|lay|lean|rest|fall|blow|drap|hang|walk|go|scat|spread|come)$/
const AMOUNT =
  /^(half|quarter|inch|foot|feet|\d+|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|.*teen|.*ty|dozen|hundred|handful|few|many|bit|deal|way|number|size|sized|example|stretch|chunk|portion|look|morning|afternoon|day|thing|news|idea|question|place|spot|time)$/

const CRACKS: ReadonlySet<Sign> = new Set<Sign>(['crack', 'break', 'across', 'lengthwise'])

/** Where a crack runs to, said anywhere after it. */
const TO_FASTENER = phrases([
  [
    true,
    `run|go|reach|start|lead|extend|end|begin|travel|come|head|follow|stop|and|up|straight|right|way **
    to|at|from|into|for|toward|through * nail|screw|fastener|fastening|hole; reach|hit|meet * nail|screw|fastener|hole`,
  ],
])

/** True when words say that what was cracked is cracked to its fastener: "it runs up to the nail". */
export function runsToFastener(words: readonly SpokenWord[]): boolean {
  return TO_FASTENER.all(words).length > 0
}

interface Heard {
  readonly words: readonly SpokenWord[]
  readonly parts: readonly PartMark[]
  readonly stances: readonly Found<Stance>[]
  readonly measures: readonly SpokenMeasure[]
}

/** What a sentence says is seen, without words that only sound like it where more words stand beside them. */
export function signsOf(heard: Heard): readonly Found<Sign>[] {
  const every = signPhrases.every(heard.words)
  const signs = every.filter((sign) => isMeant(sign, every, heard))
  return [...signs, ...crackToFastener(signs, heard), ...pulled(signs, heard)].toSorted((a, b) => a.at - b.at)
}

/** "One field tile, two inches at ten pounds": what was measured so was lifted, though nobody says the word. */
function pulled(signs: readonly Found<Sign>[], { parts, measures }: Heard): readonly Found<Sign>[] {
  const height = measures.find(({ unit }) => unit === 'in')
  const isPulled = height !== undefined && measures.some(({ unit, at }) => unit === 'lbf' && at > height.at)
  if (!isPulled || signs.length > 0 || !parts.some(({ said }) => isLifted(said))) return []
  return [{ value: 'lift', at: height.at, length: height.length }]
}

const isLifted = (said: PartMark['said']) => said.endsWith('-tile') || said === 'cap'

function isMeant(sign: Found<Sign>, every: readonly Found<Sign>[], { words, parts, stances }: Heard): boolean {
  if (isAnswer(words, sign.at) || isTest(words, sign) || isOfPeople(words, sign)) return false
  if (sign.value === 'slip') {
    // "Moves under a hand" is loose; only "moves" by itself says that something has slipped.
    if (MOVES.test(words[sign.at]?.stem ?? '') && !hasSubject(words, parts, sign.at)) return false
    return !every.some((other) => other.at === sign.at && other.length > sign.length)
  }
  // "Took the tiles off" tells of tiles; "took towels to dry this off" of nothing.
  if (sign.value === 'missing' && words[sign.at]?.stem === 'tak' && !parts.some(({ at }) => at < sign.at + sign.length))
    return false
  // "Dropped out of line" has slipped, and "come off its bed" is loose; neither is gone.
  if (sign.value === 'missing' || sign.value === 'off') return !every.some((other) => isLongerTale(other, sign))
  if (sign.value === 'corner') return !isAcross(sign, every, words) && !isPlaceOfPieces(sign, { words, parts })
  // "Goes up to the nail" tells a path.
  if (sign.value === 'lift' && sign.length > 1)
    return !/^(to|toward|into)$/.test(words[sign.at + sign.length]?.text ?? '')
  if (sign.value === 'across') return !LIES.test(words[sign.at - 1]?.stem ?? '')
  // "Alright, the garage" begins to speak.
  if (
    sign.value === 'weakly-sound' &&
    sign.at === 0 &&
    /^(al|ok|good|great|fin|perf)/.test(words[0]?.text ?? '') &&
    words.length > 3
  )
    return false
  // Who has a gun or a tube of it has mended nothing yet.
  if (sign.value === 'repair' && words[sign.at]?.text === 'patch' && words[sign.at + 1]?.text === 'of') return false
  // "Water break" breaks nothing.
  if (sign.value === 'break' && words[sign.at]?.text === 'break' && parts.length === 0) return false
  if (sign.value === 'repair' && /^(gun|tube|bucket|can)$/.test(words[sign.at + sign.length]?.text ?? '')) return false
  // "A good half inch" is a measure.
  if (sign.value === 'weakly-sound' && sign.length === 1) return !AMOUNT.test(words[sign.at + 1]?.text ?? '')
  // "Not going to count them" is no want of access.
  const taken = sign.value === 'no-access' ? 'no-negation' : 'retract'
  const length = sign.value === 'no-access' ? sign.length : 1
  return !stances.some(({ value, at }) => value === taken && at >= sign.at && at < sign.at + length)
}

const HAPPENS: ReadonlySet<Sign> = new Set<Sign>([
  'missing',
  'off',
  'slip',
  'break',
  'shatter',
  'crack',
  'tear',
  'loose',
  'release',
])

/** "I missed breakfast", "lost my tape", "move on": what people do and what happens to them. */
function isOfPeople(words: readonly SpokenWord[], { value, at, length }: Found<Sign>): boolean {
  if (!HAPPENS.has(value)) return false
  // "I can slide a card under it".
  if (
    value === 'slip' &&
    /^(can|could)$/.test(words[at - 1]?.text ?? '') &&
    /^(i|you|we)$/.test(words[at - 2]?.text ?? '')
  )
    return true
  const before = words[at - 1]?.text ?? ''
  const subject = /^(keep|kept|just|almost|nearly|really|already|even)$/.test(before)
    ? (words[at - 2]?.text ?? '')
    : before
  const after = words[at + 1]?.text ?? ''
  return (
    /^(i|we|you|he|she)$/.test(subject) ||
    (length <= 2 && /^(my|me|your|our|him|us)$/.test(after)) ||
    (words[at]?.stem === 'mov' && length === 1 && /^(on|along|to|up)$/.test(after))
  )
}

/** "Lift test", "pull check": what is about to be done. */
function isTest(words: readonly SpokenWord[], { at, length }: Found<Sign>): boolean {
  const next = words[at + length]
  return next?.parted === 'no' && /^(test|tests|testing|check|checks)$/.test(next.text)
}

/** A "no" that answers denies nothing of what follows. */
export function isAnswer(words: readonly SpokenWord[], at: number): boolean {
  const next = words[at + 1]
  if (words[at]?.text !== 'no' || next === undefined) return false
  return (
    next.parted !== 'no' ||
    /^(it|that|this|wait|hold|there|they|here|actually|the|no|sorry|you|i|make|oh|one|two|three|four|five|six|seven|eight|nine|ten|twelve|\d+)$/.test(
      next.text,
    )
  )
}

function isLongerTale(other: Found<Sign>, sign: Found<Sign>): boolean {
  if (other.value !== 'slip' && other.value !== 'loose') return false
  const end = sign.at + sign.length
  return other.length > 1 && other.at >= sign.at && other.at < end && other.at + other.length > end
}

/** "Corner to corner" is no broken corner. */
function isAcross(sign: Found<Sign>, every: readonly Found<Sign>[], words: readonly SpokenWord[]): boolean {
  return every.some(
    (across) =>
      across.value === 'across' &&
      across.at < sign.at + sign.length &&
      sign.at < across.at + across.length &&
      words[across.at]?.text === 'corner',
  )
}

/** "Four tiles gone off this corner": the corner is the roof's when what is gone are whole pieces. */
function isPlaceOfPieces({ at, length }: Found<Sign>, { words, parts }: Pick<Heard, 'words' | 'parts'>): boolean {
  const last = at + length - 1
  return (
    words[last]?.stem === 'corner' &&
    /^(off|at|in|on|by|from|near)$/.test(words[last - 2]?.text ?? '') &&
    parts.some((part) => part.at > at && part.at < last && isCounted(part.said))
  )
}

/** A part before the word, or a piece that is pointed at: "this one moved down". */
function hasSubject(words: readonly SpokenWord[], parts: readonly PartMark[], at: number): boolean {
  return (
    parts.some((part) => part.at < at) ||
    words.slice(0, at).some(({ text }) => /^(one|ones|two|three|four|several|few|they|some)$/.test(text))
  )
}

/** A crack whose end is told later in the sentence: "about eight inches long, and it goes up to the fastener". */
function crackToFastener(signs: readonly Found<Sign>[], { words }: Heard): readonly Found<Sign>[] {
  if (signs.some(({ value }) => value === 'crack-to-fastener')) return []
  const crack = signs.find(({ value }) => CRACKS.has(value))
  const end = TO_FASTENER.all(words).find(({ at }) => crack !== undefined && at > crack.at)
  if (crack === undefined || end === undefined) return []
  return [{ value: 'crack-to-fastener', at: crack.at, length: crack.length }]
}
