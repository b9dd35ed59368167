import { describe, expect, it } from 'vitest'
import { emptyJobSheet } from '../../app/job/sheet.ts'
import { sameSection, sectionErrors } from './section-draft.ts'

describe('sectionErrors', () => {
  it('names the field and says how to write it', () => {
    const errors = sectionErrors('loss', { ...emptyJobSheet().loss, date: '2026-02-30' })
    expect([...errors.keys()]).toEqual(['loss.date'])
    expect(errors.get('loss.date')).toContain('2026-03-14')
  })

  it('names entries of lists by their place', () => {
    const permit = { date: '14 March', reference: '', description: '' }
    expect([...sectionErrors('permits', [permit]).keys()]).toEqual(['permits.0.date'])
  })

  it('finds nothing wrong with an empty sheet', () => {
    const sheet = emptyJobSheet()
    expect(sectionErrors('property', sheet.property).size).toBe(0)
    expect(sectionErrors('covering', sheet.covering).size).toBe(0)
    expect(sectionErrors('notes', sheet.notes).size).toBe(0)
  })
})

describe('sameSection', () => {
  it('sees a change deep inside', () => {
    const { inspection } = emptyJobSheet()
    expect(sameSection<'inspection'>(inspection, { ...inspection })).toBe(true)
    expect(sameSection<'inspection'>(inspection, { ...inspection, dates: ['2026-03-14'] })).toBe(false)
  })
})
