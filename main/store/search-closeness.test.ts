import { describe, expect, it } from 'vitest'
import { closenessOf } from './search-closeness.ts'

describe('how well a text fits what was typed', () => {
  it('is better the shorter the text, and the more often it has the word', () => {
    expect(closenessOf(['ridge'], 'ridge')).toBeGreaterThan(closenessOf(['ridge'], 'ridge tile at the north eave'))
    expect(closenessOf(['ridge'], 'ridge and ridge')).toBeGreaterThan(closenessOf(['ridge'], 'ridge and valley'))
  })

  it('is better for the whole word than for one that only begins so', () => {
    expect(closenessOf(['tile'], 'tile slipped')).toBeGreaterThan(closenessOf(['tile'], 'tiles slipped'))
  })

  it('minds neither case nor accents', () => {
    expect(closenessOf(['CAFÉ'], 'cafe')).toBe(closenessOf(['cafe'], 'Café'))
    expect(closenessOf(['x'], '')).toBe(0)
  })
})
