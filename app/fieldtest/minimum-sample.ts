import { protocolSampling } from './criteria/florida-field-protocol.ts'
import type { RoofArea } from './roof-area.ts'

/** How many tiles of so many the Florida field protocol has checked at least: one in ten in the field, one in five elsewhere, up to whole ones. */
export function minimumSample(tiles: number, area: RoofArea): number {
  return Math.ceil(tiles / protocolSampling.oneIn[area])
}

/** What was checked against the minimum: "105 of 1,043 (1 in 10); 120 checked". */
export function minimumWorking(sample: {
  readonly tiles: number
  readonly area: RoofArea
  readonly checked: number
}): string {
  const { tiles, area, checked } = sample
  const least = minimumSample(tiles, area)
  const oneIn = protocolSampling.oneIn[area]
  const met = checked >= least ? 'reached' : `${least - checked} short`
  return `${tiles} tiles on the plan / ${oneIn} = ${least} at least; ${checked} checked: ${met}.`
}
