/** Saturation and length weight of Okapi BM25, with the values that are usual for it. */
const K1 = 1.2
const B = 0.75
/** Words of an ordinary caption. */
const USUAL_LENGTH = 8
/** What a word that only begins with what was typed counts for. */
const UNFINISHED = 0.5

/**
 * How well a text fits the words of a search: the more often it has them and the shorter it is, the better, as in Okapi
 * BM25. How rare a word is plays no part, since every text that is compared has all of them.
 *
 * @param words as typed; the last may be unfinished
 */
export function closenessOf(words: readonly string[], text: string): number {
  const inText = (text.match(/[\p{L}\p{N}\p{M}]+/gu) ?? []).map(plain)
  const length = K1 * (1 - B + (B * inText.length) / USUAL_LENGTH)
  return words.map(plain).reduce((sum, word) => {
    const times = inText.reduce((count, one) => count + (one === word ? 1 : one.startsWith(word) ? UNFINISHED : 0), 0)
    return sum + (times * (K1 + 1)) / (times + length)
  }, 0)
}

function plain(word: string): string {
  return word.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase()
}
