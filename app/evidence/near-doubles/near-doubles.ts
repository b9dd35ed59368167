import type { PhotoId } from '../../job/ids.ts'
import { hashDistance } from './picture-hash.ts'
import type { PictureLook } from './picture-look.ts'

/** A photo as far as near-doubles are concerned. */
export interface LookedAt {
  readonly id: PhotoId
  readonly number: number
  /** When it was taken; null when not known. */
  readonly instantMs: number | null
  readonly look: PictureLook
}

/** Photos that show nearly the same, in order of time, and the one proposed to be kept. */
export interface NearDoubles {
  readonly photos: readonly LookedAt[]
  readonly best: PhotoId
  /** Why this one is proposed, in words. */
  readonly why: string
}

/** Photos taken within this time of each other may be a second try at the same picture. */
const NEAR_MS = 90_000
/** Most bits in which two photos taken near each other may differ, and two taken apart or without a time. */
export const NEAR_BITS = 12
export const APART_BITS = 8

/**
 * Finds photos that show nearly the same. All photos of a group are near each other, not only neighbours, so that a slow
 * walk along a roof does not become one group.
 */
export function nearDoubles(photos: readonly LookedAt[]): readonly NearDoubles[] {
  const inOrder = photos.toSorted(
    (a, b) => (a.instantMs ?? Infinity) - (b.instantMs ?? Infinity) || a.number - b.number,
  )
  const groups: LookedAt[][] = []
  for (const photo of inOrder) {
    const group = groups.find((members) => members.every((member) => isNear(member, photo)))
    if (group === undefined) groups.push([photo])
    else group.push(photo)
  }
  return groups.filter((members) => members.length > 1).map((members) => ({ photos: members, ...bestOf(members) }))
}

function isNear(a: LookedAt, b: LookedAt): boolean {
  const apartMs = a.instantMs === null || b.instantMs === null ? Infinity : Math.abs(a.instantMs - b.instantMs)
  return hashDistance(a.look.hash, b.look.hash) <= (apartMs <= NEAR_MS ? NEAR_BITS : APART_BITS)
}

/** More of the picture burnt out than in the best one by this share counts against a photo. */
const CLIPPED_SLACK = 0.02

/** The sharpest of those that are not more burnt out than the others. */
function bestOf(members: readonly LookedAt[]): { best: PhotoId; why: string } {
  const leastClipped = Math.min(...members.map(({ look }) => look.clippedShare))
  const sound = members.filter(({ look }) => look.clippedShare <= leastClipped + CLIPPED_SLACK)
  const [best, next] = sound.toSorted((a, b) => b.look.sharpness - a.look.sharpness)
  if (best === undefined) throw new RangeError('A group has members.')
  const sharpest = members.every(({ look }) => look.sharpness <= best.look.sharpness)
  const burnt = members.filter((member) => !sound.includes(member)).map(({ look }) => look.clippedShare)
  const sharpWords = next === undefined ? null : sharpnessWords(best.look.sharpness, next.look.sharpness)
  const burntWords =
    burnt.length === 0
      ? null
      : `${percent(best.look.clippedShare)} burnt out, others up to ${percent(Math.max(...burnt))}`
  const words = [sharpWords, burntWords].filter((part) => part !== null)
  return { best: best.id, why: words.length > 0 ? words.join('; ') : sharpest ? 'the sharpest' : 'the least burnt out' }
}

function sharpnessWords(best: number, next: number): string {
  const ratio = best / Math.max(next, 0.1)
  return ratio < 1.05
    ? 'about as sharp as the next'
    : `sharpest, ${ratio < 10 ? ratio.toFixed(1) : '10 or more'} times the next`
}

function percent(share: number): string {
  return `${Math.round(share * 100)} %`
}
