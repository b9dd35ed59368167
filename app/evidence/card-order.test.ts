import { describe, expect, it } from 'vitest'
import { byCardName, isPassedOver } from './card-order.ts'

describe('the files of a card', () => {
  it('are listed as a person would, numbers by their size', () => {
    expect(['DSC_10.JPG', 'DSC_9.JPG', 'a.JPG', 'DSC_100.JPG'].toSorted(byCardName)).toEqual([
      'a.JPG',
      'DSC_9.JPG',
      'DSC_10.JPG',
      'DSC_100.JPG',
    ])
  })

  it('are passed over when they are hidden or left by an operating system', () => {
    for (const name of ['.DS_Store', '._DSC_1.JPG', 'Thumbs.db', 'System Volume Information'])
      expect(isPassedOver(name)).toBe(true)
    for (const name of ['DSC_1.JPG', 'thumbs.jpg', 'DCIM']) expect(isPassedOver(name)).toBe(false)
  })
})
