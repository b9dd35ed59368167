import type { PacketOptions } from './options.ts'

/**
 * Room that a plan has at least on a page of its own, legend in it, points: the width inside the margins and four fifths
 * of the height. The publisher gives it no less.
 */
export const planRoom = {
  letter: { widthPt: 504, heightPt: 534, scales: 'us' },
  a4: { widthPt: 487, heightPt: 574, scales: 'metric' },
} as const satisfies Record<
  PacketOptions['paper'],
  { readonly widthPt: number; readonly heightPt: number; readonly scales: 'us' | 'metric' }
>
