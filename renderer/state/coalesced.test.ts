import { describe, expect, it } from 'vitest'
import { coalesced } from './coalesced.ts'

function gate() {
  let open: () => void = () => {}
  const opened = new Promise<void>((resolve) => {
    open = resolve
  })
  return { opened, open }
}

describe('coalesced', () => {
  it('answers any number of calls made during a run by one more run', async () => {
    const first = gate()
    let runs = 0
    const fetch = coalesced(async () => {
      runs += 1
      if (runs === 1) await first.opened
    })
    const calls = [fetch(), fetch(), fetch(), fetch()]
    first.open()
    await Promise.all(calls)
    expect(runs).toBe(2)
  })

  it('runs afresh when nothing is running', async () => {
    let runs = 0
    const fetch = coalesced(async () => {
      runs += 1
    })
    await fetch()
    await fetch()
    expect(runs).toBe(2)
  })

  it('goes on after a run that failed', async () => {
    let runs = 0
    const fetch = coalesced(async () => {
      runs += 1
      if (runs === 1) throw new Error('no')
    })
    const failing = fetch()
    const following = fetch()
    await expect(failing).rejects.toThrow('no')
    await following
    expect(runs).toBe(2)
  })
})
