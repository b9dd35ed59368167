import { anyCoveringConditions } from './conditions/any-covering.ts'
import { metalConditions } from './conditions/metal.ts'
import { shingleConditions } from './conditions/shingle.ts'
import { tileAttachmentConditions } from './conditions/tile-attachment.ts'
import { tileBreakageConditions } from './conditions/tile-breakage.ts'
import type { ConditionEntry } from './entries.ts'
import type { ConditionKey } from './keys.ts'

/** Every condition that a finding can name, in the order in which lists offer them. */
export const conditions: Readonly<Record<ConditionKey, ConditionEntry>> = {
  ...tileAttachmentConditions,
  ...tileBreakageConditions,
  ...shingleConditions,
  ...metalConditions,
  ...anyCoveringConditions,
} satisfies Record<ConditionKey, ConditionEntry>
