import { desk } from '../desk/desk.ts'

export const publishDesk = desk
