import { rows } from '../store/rows.ts'

export const hostRows = rows
