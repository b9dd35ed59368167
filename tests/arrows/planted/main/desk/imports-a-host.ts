import { host } from '../hosts/host.ts'

export const deskHost = host
