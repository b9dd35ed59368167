/** Numbers that look random but are the same in every run (a linear congruential generator, Numerical Recipes). */
export function* scattered(seed: number): Generator<number, never> {
  let state = seed
  while (true) {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    yield state
  }
}
