import type { Rule } from './rule.ts'
import { floridaClocks } from './shipped-clocks-florida.ts'
import { shippedWorkShares } from './shipped-work-shares.ts'
import { otherStatesClocks } from './shipped-clocks-other-states.ts'

/** Rules that come with the program. Nobody changes them in place; own ones stand beside them, and they can be hidden. */
export const shippedRules: readonly Rule[] = [...floridaClocks, ...otherStatesClocks, ...shippedWorkShares]
