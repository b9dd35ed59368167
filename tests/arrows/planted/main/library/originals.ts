/** Originals that a fault points to; nothing is wrong with them. */
export const originals = 'originals'
