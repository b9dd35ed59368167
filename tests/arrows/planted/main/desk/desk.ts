/** A desk that a fault points to; nothing is wrong with it. */
export const desk = 'desk'
