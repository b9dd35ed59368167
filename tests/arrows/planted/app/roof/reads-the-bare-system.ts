import { cpus } from 'os'

export const cores = cpus().length
