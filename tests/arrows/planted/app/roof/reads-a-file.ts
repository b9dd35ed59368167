import { readFileSync } from 'node:fs'

export const outline = readFileSync('outline.txt', 'utf8')
