import { setTimeout as wait } from 'node:timers/promises'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { inOrder } from './in-order.ts'

const never = new AbortController().signal

/** Works on numbers, each for its own number of milliseconds. */
async function run(
  delaysMs: readonly number[],
  more: {
    width?: number
    ahead?: number
    signal?: AbortSignal
    failAt?: number
    failDelivery?: boolean
    onWork?: (at: number) => void
  },
) {
  const delivered: number[] = []
  const discarded: number[] = []
  let busy = 0
  let most = 0
  let mostAhead = 0
  const ended = inOrder([...delaysMs.entries()], {
    width: more.width ?? 3,
    ahead: more.ahead ?? 5,
    signal: more.signal ?? never,
    work: async ([at, delayMs]) => {
      most = Math.max(most, ++busy)
      mostAhead = Math.max(mostAhead, at + 1 - delivered.length)
      more.onWork?.(at)
      await wait(delayMs)
      busy -= 1
      if (at === more.failAt) throw new Error(`item ${at} failed`)
      return at
    },
    deliver: async (results) => {
      if (more.failDelivery === true) throw new Error('delivery failed')
      delivered.push(...results)
      await wait(1)
    },
    discard: async (result) => {
      discarded.push(result)
    },
  })
  const failure = await ended.then(
    () => null,
    (cause: unknown) => (cause instanceof Error ? cause.message : cause),
  )
  return { delivered, discarded, most, mostAhead, failure }
}

const upTo = (n: number) => Array.from({ length: n }, (_, i) => i)

describe('work in order', () => {
  it('delivers every result once, in the order of the items, whichever is finished first', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.integer({ min: 0, max: 4 }), { maxLength: 20 }),
        fc.integer({ min: 1, max: 4 }),
        fc.integer({ min: 1, max: 8 }),
        async (delaysMs, width, ahead) => {
          const { delivered, discarded, failure, most } = await run(delaysMs, { width, ahead })
          expect(delivered).toEqual(upTo(delaysMs.length))
          expect(discarded).toEqual([])
          expect(failure).toBeNull()
          expect(most).toBeLessThanOrEqual(width)
        },
      ),
      { numRuns: 40 },
    )
  })

  it('never runs further ahead of an unfinished item than it may', async () => {
    const { delivered, mostAhead } = await run([40, ...upTo(20).map(() => 0)], { ahead: 4 })
    expect(mostAhead).toBe(4)
    expect(delivered).toEqual(upTo(21))
  })

  it('begins nothing new after a stop, and delivers what was begun', async () => {
    const stop = new AbortController()
    const { delivered, failure } = await run(
      upTo(20).map(() => 2),
      {
        width: 2,
        signal: stop.signal,
        onWork: (at) => at === 5 && stop.abort(),
      },
    )
    expect(failure).toBeNull()
    expect(delivered.length).toBeGreaterThanOrEqual(5)
    expect(delivered).toEqual(upTo(delivered.length))
    expect(delivered.length).toBeLessThan(9)
  })

  it('stops at the first failure, hands back what it can no longer deliver, and throws it', async () => {
    const { delivered, discarded, failure } = await run([1, 1, 30, 1, 1, 1, 1, 1], { failAt: 2, width: 2, ahead: 4 })
    expect(failure).toBe('item 2 failed')
    expect(delivered).toEqual([0, 1])
    expect(discarded).toEqual([3, 4, 5])
  })

  it('stops when delivery fails', async () => {
    const { delivered, failure } = await run([0, 0, 0, 0], { failDelivery: true })
    expect(failure).toBe('delivery failed')
    expect(delivered).toEqual([])
  })
})
