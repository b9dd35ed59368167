const POINTS = [
  'N',
  'NNE',
  'NE',
  'ENE',
  'E',
  'ESE',
  'SE',
  'SSE',
  'S',
  'SSW',
  'SW',
  'WSW',
  'W',
  'WNW',
  'NW',
  'NNW',
] as const

/** Number of sectors that directions are counted in. */
export const SECTORS = POINTS.length

/** Sector 0 to 15 of a direction in degrees; each is 22.5 degrees wide and centred on its name. */
export function sectorOf(fromDeg: number): number {
  return Math.round((((fromDeg % 360) + 360) % 360) / 22.5) % SECTORS
}

/** Name of a sector by compass point. */
export function sectorName(sector: number): string {
  return POINTS[sector] ?? ''
}

/** "200° (SSW)", "variable" or "not given": where a wind comes from. */
export function directionWords(wind: { readonly fromDeg: number | null; readonly isVariable: boolean }): string {
  if (wind.fromDeg !== null) return `${wind.fromDeg}° (${sectorName(sectorOf(wind.fromDeg))})`
  return wind.isVariable ? 'variable' : 'not given'
}
