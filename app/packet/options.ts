import { z } from 'zod'

/** How a packet is set out. */
export const packetOptionsSchema = z.object({
  paper: z.enum(['letter', 'a4']).default('letter'),
  /** Which videos go into the evidence bundle: those of moderate size, all, or none. */
  videosInBundle: z.enum(['small', 'all', 'none']).default('small'),
  photosPerPage: z.union([z.literal(2), z.literal(4), z.literal(6)]).default(4),
  /** Whether the bundle holds the originals of photos with obscured areas; their hashes are listed either way. */
  obscuredOriginals: z.enum(['keep-back', 'include']).default('keep-back'),
  /** Whether the recipient gets prices and totals of the scope. */
  cost: z.boolean().default(false),
  /** Whether custody lists documents received and handed over. Nothing else of the diary can go into a packet. */
  handovers: z.enum(['leave-out', 'include']).default('leave-out'),
})
export type PacketOptions = z.output<typeof packetOptionsSchema>
