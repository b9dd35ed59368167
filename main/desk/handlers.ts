import type { CallOutput, ParsedInput, ProcedureName } from '../../app/contract/contract.ts'

/** What the desk does for each call it is responsible for. */
export type Handlers<Names extends ProcedureName = ProcedureName> = {
  readonly [Name in Names]: (input: ParsedInput<Name>) => CallOutput<Name> | Promise<CallOutput<Name>>
}

/** The calls of one area, by the words before the dot. */
export type Area<Prefix extends string> = Handlers<Extract<ProcedureName, `${Prefix}.${string}`>>
