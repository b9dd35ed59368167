/**
 * A value as it is after a trip through JSON, which every way in makes it take, so that all of them give the same answers.
 * What JSON can't hold becomes undefined.
 */
export function throughJson(value: unknown): unknown {
  try {
    const text: string | undefined = JSON.stringify(value)
    return text === undefined ? undefined : JSON.parse(text)
  } catch {
    return undefined
  }
}
