import { describe, expect, it } from 'vitest'
import { keyClashes } from '../state/keys.ts'
import { packetKeys } from './packet-keys.ts'

describe('keys of the packet workspace', () => {
  it('are each used once', () => {
    expect(Object.values(packetKeys)).toHaveLength(7)
    expect(keyClashes(Object.values(packetKeys))).toEqual([])
  })
})
