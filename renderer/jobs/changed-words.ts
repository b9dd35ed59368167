const timeFormat = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit' })
const dayFormat = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short' })
const yearFormat = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric' })

/** When something changed, on this machine's clock: `today 14:03`, `12 Mar 09:20`, or `4 Nov 2025` in another year. */
export function changedWords(atMs: number, nowMs: number): string {
  const at = new Date(atMs)
  const now = new Date(nowMs)
  if (at.toDateString() === now.toDateString()) return `today ${timeFormat.format(at)}`
  if (at.getFullYear() === now.getFullYear()) return `${dayFormat.format(at)} ${timeFormat.format(at)}`
  return yearFormat.format(at)
}
