import { z } from 'zod'
import { read, write } from './procedure.ts'

const nothing = z.object({})

export const libraryProcedures = {
  /** What library is open and how much is in it. */
  'library.info': read(
    nothing,
    z.object({
      folder: z.string(),
      program: z.string(),
      jobs: z.number().int(),
      photos: z.number().int(),
      operator: z.string(),
      /** How files reach the library on this host: by path from the window, or uploaded by the browser. */
      drop: z.enum(['paths', 'upload']),
    }),
  ),
  /** Who works here; the name that goes into the evidence log. */
  'library.set-operator': write(z.object({ operator: z.string().trim().min(1, 'Type a name.').max(120) }), nothing),
  /** Reads every original again and replays every log. */
  'library.verify': read(
    nothing,
    z.object({
      filesChecked: z.number().int(),
      entriesChecked: z.number().int(),
      differences: z.array(z.object({ job: z.string(), what: z.string(), problem: z.string() })),
    }),
  ),
}
