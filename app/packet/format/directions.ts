const POINTS = ['north', 'north-east', 'east', 'south-east', 'south', 'south-west', 'west', 'north-west'] as const

/** A direction as one of eight winds and its azimuth: "south-east (135°)". */
export function directionWords(azimuthDeg: number): string {
  return `${POINTS[Math.round(azimuthDeg / 45) % 8] ?? 'north'} (${Math.round(azimuthDeg) % 360}°)`
}

const SHORT_POINTS = ['N', 'NE', 'E', 'SE', 'S', 'SW', 'W', 'NW'] as const

/** The same for a narrow column: "SE 135°". */
export function shortDirection(azimuthDeg: number): string {
  return `${SHORT_POINTS[Math.round(azimuthDeg / 45) % 8] ?? 'N'} ${Math.round(azimuthDeg) % 360}°`
}
