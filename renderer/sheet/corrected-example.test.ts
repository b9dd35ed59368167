import { describe, expect, it } from 'vitest'
import { correctedExample } from './corrected-example.ts'

describe('correctedExample', () => {
  it('adds the correction to what the camera wrote, over midnight too', () => {
    expect(correctedExample('2026-03-14T23:57:30', 7 * 60_000)).toEqual({
      before: '2026-03-14 23:57:30',
      after: '2026-03-15 00:04:30',
    })
    expect(correctedExample('2026-03-14T09:26:53.5', -3_600_000).after).toBe('2026-03-14 08:26:53')
  })
})
