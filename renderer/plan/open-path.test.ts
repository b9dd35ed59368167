import { describe, expect, it } from 'vitest'
import { cornerRefusal } from './open-path.ts'

const at = (xFt: number, yFt: number) => ({ xFt, yFt })
const path = [at(0, 0), at(20, 0), at(20, 10), at(10, 10)]

describe('the next corner of a drawing', () => {
  it('is taken where no side is crossed', () => {
    expect(cornerRefusal([], at(3, 3))).toBeNull()
    expect(cornerRefusal(path, at(0, 10))).toBeNull()
  })

  it('may close the outline', () => {
    expect(cornerRefusal(path, at(0, 0))).toBeNull()
  })

  it('is refused with the names of both sides when they would cross', () => {
    expect(cornerRefusal(path, at(10, -5))).toBe('Side 4 would cross side 1. Put its corner elsewhere.')
  })

  it('is refused on a corner that is already there', () => {
    expect(cornerRefusal(path, at(10, 10))).toMatch(/same place/)
    expect(cornerRefusal(path, at(20, 0))).toBe('Corner 2 is already there. Put this one elsewhere.')
  })
})
