import { desk } from '../../main/desk/desk.ts'

export const roofDesk = desk
