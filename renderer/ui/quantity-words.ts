/** A size as people say it: `820 kB`, `4.6 MB`, `1.20 GB` (decimal units, as on a card's label). */
export function bytesWords(bytes: number): string {
  if (bytes < 1000) return `${bytes} B`
  if (bytes < 1e6) return `${Math.round(bytes / 1000)} kB`
  if (bytes < 1e9) return `${(bytes / 1e6).toFixed(1)} MB`
  return `${(bytes / 1e9).toFixed(2)} GB`
}

/** A length of time in its two largest units: `45 s`, `2 min 10 s`, `3 h 5 min`, `2 d 4 h`. */
export function durationWords(ms: number): string {
  const seconds = Math.round(ms / 1000)
  if (seconds < 60) return `${seconds} s`
  const minutes = Math.floor(seconds / 60)
  if (minutes < 60) return twoUnits([minutes, 'min'], [seconds % 60, 's'])
  const hours = Math.floor(minutes / 60)
  if (hours < 24) return twoUnits([hours, 'h'], [minutes % 60, 'min'])
  return twoUnits([Math.floor(hours / 24), 'd'], [hours % 24, 'h'])
}

/** `1 photo`, `2 photos`, `0 photos`. */
export function countWords(count: number, one: string, many = `${one}s`): string {
  return `${count.toLocaleString('en-US')} ${count === 1 ? one : many}`
}

type Amount = readonly [count: number, unit: string]

function twoUnits(large: Amount, small: Amount): string {
  return small[0] === 0 ? large.join(' ') : `${large.join(' ')} ${small.join(' ')}`
}
