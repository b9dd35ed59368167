import { Temporal } from 'temporal-polyfill'

/**
 * What a camera wrote and how it is read with a correction, both `2026-03-14 09:26:53`.
 *
 * @param local what the camera wrote, ISO 8601 without a zone
 */
export function correctedExample(
  local: string,
  correctionMs: number,
): { readonly before: string; readonly after: string } {
  const before = Temporal.PlainDateTime.from(local)
  return { before: words(before), after: words(before.add({ milliseconds: correctionMs })) }
}

function words(time: Temporal.PlainDateTime): string {
  return time.toString({ smallestUnit: 'second' }).replace('T', ' ')
}
