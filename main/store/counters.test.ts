import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { anEmptyStore, aStoredJob } from '../../tests/builders/store.ts'
import { nextNumber, reserveNumber } from './counters.ts'
import { inTransaction } from './database.ts'

describe('numbers of findings, photos and readings', () => {
  it('count from 1 in each job and for each kind', () => {
    const db = anEmptyStore()
    const [one, two] = [aStoredJob(db), aStoredJob(db)]
    inTransaction(db, (write) => {
      expect([nextNumber(write, one.id, 'finding'), nextNumber(write, one.id, 'finding')]).toEqual([1, 2])
      expect(nextNumber(write, one.id, 'photo')).toBe(1)
      expect(nextNumber(write, two.id, 'finding')).toBe(1)
    })
  })

  it('are never given twice, in whatever order numbers are taken, reserved and steps fail', () => {
    const step = fc.oneof(
      fc.record({ kind: fc.constantFrom('next', 'fail') }),
      fc.record({ kind: fc.constant('reserve'), used: fc.integer({ min: 1, max: 40 }) }),
    )
    fc.assert(
      fc.property(fc.array(step, { maxLength: 30 }), (steps) => {
        const db = anEmptyStore()
        const { id } = aStoredJob(db)
        const used = new Set<number>()
        for (const one of steps) {
          if ('used' in one) {
            inTransaction(db, (write) => reserveNumber(write, id, { name: 'finding', used: one.used }))
            used.add(one.used)
          } else if (one.kind === 'fail') {
            const failing = () =>
              inTransaction(db, (write) => {
                nextNumber(write, id, 'finding')
                throw new Error('Not kept.')
              })
            expect(failing).toThrow('Not kept.')
          } else {
            const number = inTransaction(db, (write) => nextNumber(write, id, 'finding'))
            expect(used.has(number)).toBe(false)
            expect(number).toBeGreaterThan(Math.max(0, ...used))
            used.add(number)
          }
        }
        db.connection.close()
      }),
    )
  })
})
