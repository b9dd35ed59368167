const WORDS = ['north', 'north-east', 'east', 'south-east', 'south', 'south-west', 'west', 'north-west'] as const

/** The nearest of the eight compass words for an azimuth in degrees. */
export function compassWord(azimuthDeg: number): (typeof WORDS)[number] {
  const eighth = Math.round((((azimuthDeg % 360) + 360) % 360) / 45) % 8
  return WORDS[eighth] ?? 'north'
}

/** A direction as people read it: `south-east, 135°`. */
export function directionWords(azimuthDeg: number): string {
  return `${compassWord(azimuthDeg)}, ${Math.round(azimuthDeg * 10) / 10}°`
}
