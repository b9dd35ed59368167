import { describe, expect, it } from 'vitest'
import { keyClashes, keysFit, type PressedKey } from './keys.ts'

const press = (key: string, held: Partial<PressedKey> = {}): PressedKey => ({
  key,
  ctrlKey: false,
  metaKey: false,
  shiftKey: false,
  altKey: false,
  ...held,
})

describe('keysFit', () => {
  it('tells undo from redo', () => {
    expect(keysFit('Ctrl+Z', press('z', { ctrlKey: true }))).toBe(true)
    expect(keysFit('Ctrl+Z', press('Z', { ctrlKey: true, shiftKey: true }))).toBe(false)
    expect(keysFit('Ctrl+Shift+Z', press('Z', { ctrlKey: true, shiftKey: true }))).toBe(true)
  })

  it('takes the command key for Ctrl', () => {
    expect(keysFit('Ctrl+K', press('k', { metaKey: true }))).toBe(true)
  })

  it('finds signs wherever the keyboard has them', () => {
    expect(keysFit('?', press('?', { shiftKey: true }))).toBe(true)
    expect(keysFit('+', press('+', { shiftKey: true }))).toBe(true)
    expect(keysFit('+', press('+'))).toBe(true)
  })

  it('finds a digit with Shift by its place, whatever sign the keyboard writes there', () => {
    const held = { altKey: true, shiftKey: true, code: 'Digit2' }
    expect(keysFit('Alt+Shift+2', press('@', held))).toBe(true)
    expect(keysFit('Alt+Shift+2', press('"', held))).toBe(true)
    expect(keysFit('Alt+Shift+1', press('@', held))).toBe(false)
    expect(keysFit('Alt+Shift+2', press('2', { altKey: true, code: 'Digit2' }))).toBe(false)
  })

  it('takes any of the alternatives', () => {
    expect(keysFit('J or ArrowDown', press('ArrowDown'))).toBe(true)
    expect(keysFit('J or ArrowDown', press('j'))).toBe(true)
    expect(keysFit('J or ArrowDown', press('k'))).toBe(false)
  })

  it('does not take a plain letter for one with Ctrl or Alt held', () => {
    expect(keysFit('J', press('j', { ctrlKey: true }))).toBe(false)
    expect(keysFit('J', press('j', { altKey: true }))).toBe(false)
  })
})

describe('keyClashes', () => {
  it('names commands of one scope that want the same keys', () => {
    const clashes = keyClashes([
      { id: 'photos.next', keys: 'J or ArrowRight' },
      { id: 'photos.judge', keys: 'j' },
      { id: 'plan.join', keys: 'J' },
    ])
    expect(clashes).toEqual(['photos.next and photos.judge both want j'])
  })
})
