import { planImageKindSchema, planImageKindWords } from '../../../app/roof/plan-image.ts'

/** The kinds of image under the plan, for a list to choose from. */
export const kindOptions = planImageKindSchema.options.map((key) => ({ key, label: planImageKindWords[key] }))
