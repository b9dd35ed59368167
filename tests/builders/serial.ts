let last = 0

/** A number that no other builder was given in this run. */
export function serial(): number {
  last += 1
  return last
}

/** 64 hex digits that look like a SHA-256 and are unique for `n`. */
export function fakeDigest(n: number): string {
  return n.toString(16).padStart(8, '0').repeat(8)
}
