/** A packet that a fault points to; nothing is wrong with it. */
export const packet = 'packet'
