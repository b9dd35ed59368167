import type { CaseFile } from '../evidence/case-file.ts'
import type { Facet } from '../roof/facet.ts'
import { directionWords } from '../weather/direction-words.ts'
import { jobWind } from '../weather/job-wind.ts'
import { peakWords } from '../weather/wind-words.ts'

/** How a facet lies to the wind; flat ones face nowhere. */
export const windSides = ['windward', 'side', 'leeward'] as const
export type WindSide = (typeof windSides)[number]

export const windSideLabels = {
  windward: 'Windward',
  side: 'Side',
  leeward: 'Leeward',
} as const satisfies Record<WindSide, string>

/** The wind that sides are named by, with where it comes from in a sentence; or what is missing. */
export type WindForSides =
  | { readonly kind: 'known'; readonly by: 'station' | 'person'; readonly fromDeg: number; readonly sentence: string }
  | { readonly kind: 'unknown'; readonly sentence: string }

/**
 * The wind of a job: direction of the highest gust, or where there is none of the highest mean, at the nearest station
 * that gives a direction. Only without one, what a person stated together with a source.
 */
export function windForSides(file: Pick<CaseFile, 'job' | 'weather' | 'assessment'>, zone: string): WindForSides {
  for (const { wind } of jobWind(file, zone)?.stations ?? []) {
    const peak = [wind.peakGust, wind.peakMean].find((one) => one !== null && one.fromDeg !== null)
    if (peak?.fromDeg !== undefined && peak.fromDeg !== null) {
      const sentence = `Wind by station ${wind.station.code}, the highest around the day of loss: ${peakWords(peak)}.`
      return { kind: 'known', by: 'station', fromDeg: peak.fromDeg, sentence }
    }
  }
  const { fromDeg, source } = file.assessment.wind
  if (fromDeg === null) {
    return {
      kind: 'unknown',
      sentence:
        'To tell windward from leeward, bring in station data on the weather screen, or state the wind direction with its source.',
    }
  }
  if (source.trim() === '') return { kind: 'unknown', sentence: 'Say where the stated wind direction comes from.' }
  const direction = directionWords({ fromDeg, isVariable: false })
  return {
    kind: 'known',
    by: 'person',
    fromDeg,
    sentence: `Wind as stated by a person: from ${direction}. Source: ${source.trim()}`,
  }
}

/**
 * The side of a facet: windward within 45 degrees of facing the wind, leeward within 45 degrees of facing away, side
 * between (common practice, no source). Null for a flat facet.
 */
export function windSide(facet: Pick<Facet, 'pitchRise' | 'downslopeAzimuthDeg'>, fromDeg: number): WindSide | null {
  if (facet.pitchRise === 0) return null
  const turn = (((facet.downslopeAzimuthDeg - fromDeg) % 360) + 360) % 360
  const offDeg = Math.min(turn, 360 - turn)
  if (offDeg <= 45) return 'windward'
  return offDeg >= 135 ? 'leeward' : 'side'
}
