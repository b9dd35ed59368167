import { describe, expect, it } from 'vitest'
import { keyClashes } from '../state/keys.ts'
import { frameKeys, workspaceKeys } from './frame-keys.ts'

describe('keys of the frame', () => {
  it('are each used once', () => {
    const all = [...Object.values(frameKeys), ...workspaceKeys]
    expect(all.length).toBe(13)
    expect(keyClashes(all)).toEqual([])
  })
})
