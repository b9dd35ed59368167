import { describe, expect, it } from 'vitest'
import { testPhoto } from '../state/test-photo.ts'
import { leftOutReasons } from './left-out-reasons.ts'

const leftOut = (id: string, leftOutBecause: string) => {
  const photo = testPhoto(id, {})
  return { ...photo, tags: { ...photo.tags, leftOutBecause } }
}

describe('reasons for leaving photos out', () => {
  it('begin with those given in the job, the most used first, each once', () => {
    const photos = [
      leftOut('a', 'ladder in the way'),
      leftOut('b', 'taken by accident'),
      leftOut('c', 'taken by accident'),
      leftOut('d', 'near-double of P-001'),
    ]
    const reasons = leftOutReasons(photos)
    expect(reasons.slice(0, 3)).toEqual(['taken by accident', 'ladder in the way', 'blurred'])
    expect(new Set(reasons).size).toBe(reasons.length)
  })

  it('are never more than there are digits', () => {
    expect(leftOutReasons(Array.from({ length: 30 }, (_, k) => leftOut(`p${k}`, `reason ${k}`)))).toHaveLength(9)
  })
})
