export const first = (names: readonly string[]) => names[0]!.length
