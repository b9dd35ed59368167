import { desk } from '../desk/desk.ts'

export const storeDesk = desk
