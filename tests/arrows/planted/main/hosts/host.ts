/** A host that a fault points to; nothing is wrong with it. */
export const host = 'host'
