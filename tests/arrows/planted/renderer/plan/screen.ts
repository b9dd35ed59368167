/** A screen that a fault points to; nothing is wrong with it. */
export const screen = 'plan'
