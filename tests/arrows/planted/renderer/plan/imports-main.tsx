import { desk } from '../../main/desk/desk.ts'

export const PlanDesk = () => <p>{desk}</p>
