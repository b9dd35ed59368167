import type { Facet, HandSet } from './facet.ts'

const FIELD_WORDS = {
  outline: 'corners',
  pitchRise: 'pitch',
  downslopeAzimuthDeg: 'direction',
} as const satisfies Record<HandSet, string>

/** "pitch and direction set by hand": what of a facet no longer follows its outline. Empty where all of it does, or where there is no outline to follow. */
export function handSetWords({ from, setByHand }: Pick<Facet, 'from' | 'setByHand'>): string {
  if (from === null || setByHand.length === 0) return ''
  return `${setByHand.map((field) => FIELD_WORDS[field]).join(' and ')} set by hand`
}
