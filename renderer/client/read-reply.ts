import { z } from 'zod'
import { appError, appErrorSchema } from '../../app/contract/app-error.ts'
import { type CallOutput, contract, type ProcedureName } from '../../app/contract/contract.ts'
import type { Reply } from '../../app/contract/procedure.ts'

const envelopeSchema = z.discriminatedUnion('ok', [
  z.object({ ok: z.literal(true), value: z.unknown() }),
  z.object({ ok: z.literal(false), error: appErrorSchema }),
])

/** Checks what came back for a call against the contract; anything else becomes an error value. */
export function readReply<Name extends ProcedureName>(name: Name, raw: unknown): Reply<CallOutput<Name>> {
  const envelope = envelopeSchema.safeParse(raw)
  if (!envelope.success) return unexpected(name)
  if (!envelope.data.ok) return envelope.data
  const output: z.ZodType = contract[name].output
  const value = output.safeParse(envelope.data.value)
  if (!value.success) return unexpected(name)
  // The schema that just accepted the value is the one that `CallOutput` is taken from; the compiler can't follow that through `Name`.
  return { ok: true, value: value.data as CallOutput<Name> }
}

/** The answer when the desk can't be reached at all. */
export function unreachable(): Reply<never> {
  return {
    ok: false,
    error: appError('internal', 'The desk does not answer.', {
      help: 'Check that the program is still running, then try again. Nothing that was saved is lost.',
    }),
  }
}

function unexpected(name: ProcedureName): Reply<never> {
  return {
    ok: false,
    error: appError('internal', `The desk answered "${name}" in a way this screen does not understand.`, {
      help: 'Reload the screen. If it happens again, the program and its screens are of different versions: install it again.',
    }),
  }
}
