import { readFileSync } from 'node:fs'

export const plan = readFileSync('plan.txt', 'utf8')
