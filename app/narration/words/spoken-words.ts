import type { Cue } from '../cue.ts'
import { stem } from './stem.ts'

/** Characters of one cue, `from` included, `to` not. */
export interface SpokenRange {
  readonly cue: number
  readonly from: number
  readonly to: number
}

/** One word as it was said, or a sign that matters: a quotation mark after digits for inches, a per cent sign. */
export interface SpokenWord extends SpokenRange {
  /** Lower case. */
  readonly text: string
  /** The form in which words are compared. */
  readonly stem: string
  /** What parts it from the word before: nothing, a comma or the like, or the end of a sentence. */
  readonly parted: 'no' | 'soft' | 'strong'
}

/** A sentence, or what stands for one where nobody set full stops. */
export interface Sentence {
  readonly words: readonly SpokenWord[]
  readonly isQuestion: boolean
  readonly startMs: number
}

const TOKEN = /\d+\/\d+|\d+(?:\.\d+)?|[½¼¾⅛⅜⅝⅞]|\p{L}+(?:['’]\p{L}+)?|["″”%]|[.,;:!?…—–-]/gu
/** A silence after which a new sentence begins although no full stop was written; a shorter one does after enough words. */
const SILENCE_MS = 1500
const PAUSE_MS = 600
const ENOUGH_WORDS = 3
/** Speech without full stops is cut here, between cues. */
const LONG_SENTENCE_WORDS = 45

/** Parts narration into sentences of words, each word with its place in its cue. */
export function spokenSentences(cues: readonly Cue[]): readonly Sentence[] {
  const sentences: { words: SpokenWord[]; isQuestion: boolean; startMs: number }[] = []
  let current: { words: SpokenWord[]; isQuestion: boolean; startMs: number } | null = null
  let parted: SpokenWord['parted'] = 'strong'
  let lastEndMs = 0
  let lastSpeaker = ''
  for (const [at, cue] of cues.entries()) {
    if (current !== null && beginsAnew(cue, { words: current.words.length, lastEndMs, lastSpeaker, parted }))
      current = null
    if (parted === 'no') parted = 'soft'
    for (const sign of signsOf(cue.text)) {
      const mark = markOf(sign, cue.text)
      if (mark === 'strong') {
        if (current !== null && sign.text.startsWith('?')) current.isQuestion = true
        current = null
      }
      if (mark !== null) {
        if (mark === 'strong' || (mark === 'soft' && parted === 'no')) parted = mark
        continue
      }
      if (current === null) {
        current = { words: [], isQuestion: false, startMs: cue.startMs }
        sentences.push(current)
        parted = 'strong'
      }
      for (const word of wordsOf(sign, at, parted)) current.words.push(word)
      parted = 'no'
    }
    lastEndMs = cue.endMs
    lastSpeaker = cue.speaker
  }
  return sentences
}

interface Turn {
  readonly words: number
  readonly lastEndMs: number
  readonly lastSpeaker: string
  readonly parted: SpokenWord['parted']
}

/** Whether a cue begins a new sentence although the one before has no full stop. */
function beginsAnew(cue: Cue, { words, lastEndMs, lastSpeaker, parted }: Turn): boolean {
  const silenceMs = cue.startMs - lastEndMs
  if (silenceMs >= SILENCE_MS || cue.speaker !== lastSpeaker || words > LONG_SENTENCE_WORDS) return true
  if (silenceMs >= PAUSE_MS && words >= ENOUGH_WORDS && parted === 'no') return true
  return parted === 'no' && /^\p{Lu}/u.test(cue.text) && !/^I\b/.test(cue.text)
}

interface Sign {
  readonly text: string
  readonly from: number
}

function signsOf(text: string): readonly Sign[] {
  return [...text.matchAll(TOKEN)].map((match) => ({ text: match[0], from: match.index }))
}

/** How a sign parts the words beside it; null for words. */
function markOf({ text, from }: Sign, cueText: string): SpokenWord['parted'] | null {
  if (/^[.!?;…]$/.test(text)) return 'strong'
  if (text === ':' || text === ',' || text === '—' || text === '–') return 'soft'
  if (text === '-') return /\s/.test(cueText[from - 1] ?? ' ') ? 'soft' : 'no'
  if (/^["″”]$/.test(text)) return /\d|[½¼¾⅛⅜⅝⅞]/.test(cueText[from - 1] ?? '') ? null : 'soft'
  return null
}

const BARE_CONTRACTION =
  /^((could|would|should|did|does|do|is|are|was|were|has|have|had|ai)nt|cant|wont|(that|there|here|what)s|im|(i|we|you|they)ve|(you|they)re)$/

/** "isn't" says two things, and so becomes two words in one place. */
function wordsOf({ text, from }: Sign, cue: number, parted: SpokenWord['parted']): readonly SpokenWord[] {
  const written = text.toLowerCase().replace('’', "'")
  // Transcripts of machines often lack the apostrophe.
  const lower = BARE_CONTRACTION.test(written) ? written.replace(/(t|s|m|ve|re)$/, "'$1") : written
  const to = from + text.length
  const word = (said: string, how: SpokenWord['parted']): SpokenWord => ({
    cue,
    from,
    to,
    text: said,
    stem: stem(said),
    parted: how,
  })
  if (!/['c]/.test(lower)) return [word(lower, parted)]
  if (lower === 'cannot') return [word('can', parted), word('not', 'no')]
  const [base = lower, ending] = lower.split("'")
  if (ending === undefined) return [word(lower, parted)]
  if (lower === "can't" || lower === "won't")
    return [word(lower === "can't" ? 'can' : 'will', parted), word('not', 'no')]
  if (ending === 't') return [word(base.replace(/n$/, ''), parted), word('not', 'no')]
  const second = {
    s: base === 'that' || base === 'it' || base === 'there' || base === 'here' || base === 'what' ? 'is' : null,
    re: 'are',
    m: 'am',
    ll: 'will',
    d: 'would',
    ve: 'have',
  }[ending]
  return second == null ? [word(base, parted)] : [word(base, parted), word(second, 'no')]
}
