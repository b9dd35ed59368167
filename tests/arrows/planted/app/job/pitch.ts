/** Inches of rise in 12 inches of run. */
export const pitchInTwelve = 5
