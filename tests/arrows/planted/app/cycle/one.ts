import { two } from './two.ts'

export const one = (): unknown => two
