export function rank(kind: number): number {
  let rank = 0
  switch (kind) {
    case 1:
      rank += 1
    case 2:
      rank += 2
      break
    default:
      rank = 9
  }
  return rank
}
