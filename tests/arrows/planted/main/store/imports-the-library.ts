import { originals } from '../library/originals.ts'

export const storeOriginals = originals
