import { remembered } from './remembered.ts'

/** Letters that speech recognition takes for each other share a sign; vowels fall away except at the start. */
const SIGNS: readonly (readonly [RegExp, string])[] = [
  [/^kn/, 'n'],
  [/^wr/, 'r'],
  [/mb$/, 'm'],
  [/[^a-z]/g, ''],
  [/(?<=[a-z])(tion|sion|cian|shun)/g, 'jn'],
  [/tch|dge|ch|sh|j|g(?=[eiy])/g, 'j'],
  [/ph|gh(?=t)?|v/g, 'f'],
  [/c(?=[eiy])|z|x/g, 's'],
  [/[ckqg]/g, 'k'],
  [/[dt]/g, 't'],
  [/[wh]/g, ''],
]

/** How a word sounds, roughly: "mortar" and "moarter" have the same. */
export const soundOf = remembered((word) => {
  let sound = word.toLowerCase()
  for (const [letters, sign] of SIGNS) sound = sound.replace(letters, sign)
  const first = /^[aeiouy]/.test(sound) ? 'a' : ''
  return first + sound.replace(/[aeiouy]/g, '').replace(/(.)\1+/g, '$1')
})

/** Letters to change, add, drop or swap with their neighbour to make one word of the other; stops counting above `most`. */
export function lettersApart(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) > most) return most + 1
  let before: number[] = []
  let row = Array.from({ length: b.length + 1 }, (_, at) => at)
  for (let i = 1; i <= a.length; i += 1) {
    const next = [i]
    for (let j = 1; j <= b.length; j += 1) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1
      let least = Math.min((row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1, (row[j - 1] ?? 0) + same)
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, (before[j - 2] ?? 0) + 1)
      next.push(least)
    }
    if (Math.min(...next) > most) return most + 1
    before = row
    row = next
  }
  return row[b.length] ?? most + 1
}
