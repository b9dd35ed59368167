import { describe, expect, it } from 'vitest'
import { runningAhead } from './running-ahead.ts'

const put = (word: string) => (words: readonly string[]) => [...words.filter((one) => one !== word), word]

describe('changes shown before the desk has answered', () => {
  it('stay on the screen while an answer about an earlier change comes in', () => {
    const ahead = runningAhead<readonly string[]>()
    const first = ahead.add(put('first'))
    first.answered()
    const back = ahead.beginFetch()
    ahead.add(put('second'))
    back()
    expect(ahead.over(['first'])).toEqual(['first', 'second'])
  })

  it('stay when they are answered during a fetch that began before, which may not hold them', () => {
    const ahead = runningAhead<readonly string[]>()
    const change = ahead.add(put('word'))
    const back = ahead.beginFetch()
    change.answered()
    back()
    expect(ahead.over([])).toEqual(['word'])
    ahead.beginFetch()()
    expect(ahead.isEmpty()).toBe(true)
  })

  it('give way to what was fetched after they were answered, even where that has undone them', () => {
    const ahead = runningAhead<readonly string[]>()
    ahead.add(put('word')).answered()
    ahead.beginFetch()()
    expect(ahead.over([])).toEqual([])
  })

  it('are gone at once when the desk refuses them', () => {
    const ahead = runningAhead<readonly string[]>()
    ahead.add(put('word')).refused()
    expect(ahead.over(['told'])).toEqual(['told'])
    expect(ahead.isEmpty()).toBe(true)
  })
})
