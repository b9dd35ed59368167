/** "V-001": how people name a video. */
export function videoLabel(number: number): string {
  return `V-${String(number).padStart(3, '0')}`
}

/** "00:12.400", with hours in front where there are any: how far into a video a frame is. */
export function frameTimeWords(offsetMs: number): string {
  const two = (value: number) => String(value).padStart(2, '0')
  const ms = Math.round(offsetMs)
  const hours = Math.floor(ms / 3_600_000)
  const rest = `${two(Math.floor(ms / 60_000) % 60)}:${two(Math.floor(ms / 1000) % 60)}.${String(ms % 1000).padStart(3, '0')}`
  return hours === 0 ? rest : `${two(hours)}:${rest}`
}
