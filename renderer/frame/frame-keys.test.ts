import { describe, expect, it } from 'vitest'
import { keyClashes } from '../state/keys.ts'
import { frameKeys, walkKeys, workspaceKeys } from './frame-keys.ts'

describe('keys of the frame', () => {
  it('are each used once', () => {
    const all = [...Object.values(frameKeys), ...Object.values(walkKeys), ...workspaceKeys]
    expect(all.length).toBe(25)
    expect(keyClashes(all)).toEqual([])
  })
})
