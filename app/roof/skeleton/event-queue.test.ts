import fc from 'fast-check'
import { expect, it } from 'vitest'
import { EventQueue } from './event-queue.ts'

it('gives events by height, those of one height in the order in which they came, whatever comes in between', () => {
  const steps = fc.array(
    fc.oneof({ weight: 2, arbitrary: fc.nat(20) }, { weight: 1, arbitrary: fc.constant('pop' as const) }),
  )
  fc.assert(
    fc.property(steps, (run) => {
      const queue = new EventQueue<{ readonly heightFt: number; readonly name: number }>()
      let plain: { readonly heightFt: number; readonly name: number }[] = []
      const popBoth = () => {
        plain = plain.toSorted((a, b) => a.heightFt - b.heightFt || a.name - b.name)
        expect(queue.pop()).toEqual(plain.shift())
      }
      run.forEach((step, name) => {
        if (step === 'pop') return popBoth()
        queue.push({ heightFt: step, name })
        plain.push({ heightFt: step, name })
      })
      for (let left = plain.length; left >= 0; left--) popBoth()
    }),
    { numRuns: 500 },
  )
})
