import type { z } from 'zod'
import { diaryProcedures } from './diary.ts'
import { editProcedures } from './edits.ts'
import { fieldTestProcedures } from './field-tests.ts'
import { intakeProcedures } from './intake.ts'
import { jobProcedures } from './jobs.ts'
import { libraryProcedures } from './library.ts'
import { logProcedures } from './log.ts'
import { nearDoubleProcedures } from './near-doubles.ts'
import { packetProcedures } from './packet.ts'
import { placementProcedures } from './placement.ts'
import type { Reply } from './procedure.ts'
import { scopeProcedures } from './scope.ts'
import { ruleProcedures } from './rules.ts'
import { searchProcedures } from './search.ts'
import { videoProcedures } from './videos.ts'
import { weatherProcedures } from './weather.ts'

/** Every call there is: the one door between screens, terminals and the desk. */
export const contract = {
  ...libraryProcedures,
  ...jobProcedures,
  ...editProcedures,
  ...placementProcedures,
  ...nearDoubleProcedures,
  ...fieldTestProcedures,
  ...intakeProcedures,
  ...videoProcedures,
  ...logProcedures,
  ...searchProcedures,
  ...packetProcedures,
  ...weatherProcedures,
  ...scopeProcedures,
  ...ruleProcedures,
  ...diaryProcedures,
}
type Contract = typeof contract

export type ProcedureName = keyof Contract
/** What a caller passes: defaults may be left out. */
export type CallInput<Name extends ProcedureName> = z.input<Contract[Name]['input']>
/** What the desk works on: parsed, defaults filled in. */
export type ParsedInput<Name extends ProcedureName> = z.output<Contract[Name]['input']>
export type CallOutput<Name extends ProcedureName> = z.output<Contract[Name]['output']>

/** A client of the desk, whichever host stands between. */
export type Call = <Name extends ProcedureName>(name: Name, input: CallInput<Name>) => Promise<Reply<CallOutput<Name>>>

/** True when `name` is a call of the contract. */
export function isProcedureName(name: string): name is ProcedureName {
  return Object.hasOwn(contract, name)
}
