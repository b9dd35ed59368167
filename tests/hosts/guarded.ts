import { expect } from 'vitest'
import type { Answer } from './browser-visit.ts'

/** What every answer of the loopback host carries, errors included, and what none of them does. */
export function expectGuarded({ headers }: Answer): void {
  expect(headers['content-security-policy']).toMatch(/^default-src 'none'; script-src 'self'; style-src 'self';/)
  expect(headers['content-security-policy']).not.toMatch(/unsafe|https?:|\*/)
  expect(headers['x-content-type-options']).toBe('nosniff')
  expect(headers['referrer-policy']).toBe('no-referrer')
  expect(headers['access-control-allow-origin']).toBeUndefined()
}
