const POINTS = ['north', 'north-east', 'east', 'south-east', 'south', 'south-west', 'west', 'north-west'] as const

/** A direction as one of eight winds and its azimuth: "south-east (135°)". */
export function directionWords(azimuthDeg: number): string {
  return `${POINTS[Math.round(azimuthDeg / 45) % 8] ?? 'north'} (${Math.round(azimuthDeg) % 360}°)`
}
