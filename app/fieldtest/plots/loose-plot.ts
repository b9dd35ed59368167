import { line, type PlanMark } from '../../roof/plan-sheet/marks.ts'
import { INK } from '../../roof/plan-sheet/inks.ts'
import { protocolSampling } from '../criteria/florida-field-protocol.ts'
import { looseWorking, type LooseShare } from '../loose-share.ts'
import { AXIS_PEN, GRID_PEN, LIMIT_PEN, scaleOf, tickStep, ticks, words, type Plot, type Scale } from './plot.ts'

const WIDTH_PT = 468
const LEFT_PT = 84
const RIGHT_PT = 66
const TOP_PT = 20
const ROW_PT = 24
const BOTTOM_PT = 30

/** A line of the plot: an area and what was found in it. */
interface LooseRow {
  readonly label: string
  readonly share: LooseShare
}

/** Share of loose tiles in each area with its exact and Wilson intervals, and the bound of 3 %. Null when no tile was checked. */
export function loosePlot(rows: readonly LooseRow[]): Plot | null {
  const shares = rows.flatMap(({ label, share }) => (share.kind === 'share' ? [{ label, share }] : []))
  if (shares.length === 0) return null
  const most = Math.min(1, Math.max(0.1, ...shares.map(({ share }) => Math.max(share.exact.high, share.wilson.high))))
  const x = scaleOf({ from: 0, to: most * 100 }, { startPt: LEFT_PT, endPt: WIDTH_PT - RIGHT_PT })
  const heightPt = TOP_PT + shares.length * ROW_PT + BOTTOM_PT
  const limit = x.at(protocolSampling.loosePercent)
  const floorPt = heightPt - BOTTOM_PT
  return {
    widthPt: WIDTH_PT,
    heightPt,
    marks: [
      ...axis(x, floorPt),
      line({ xPt: limit, yPt: floorPt }, { xPt: limit, yPt: TOP_PT - 6 }, LIMIT_PEN),
      words(`${protocolSampling.loosePercent} %`, { xPt: limit, yPt: TOP_PT - 9 }, { align: 'middle' }),
      ...shares.flatMap(({ label, share }, i) => rowMarks({ label, share }, { x, yPt: TOP_PT + (i + 0.5) * ROW_PT })),
      words('Loose of those checked, %', { xPt: x.at(x.to), yPt: heightPt - 5 }, { align: 'end', strong: true }),
    ],
    alt: `Share of loose tiles by area. ${shares.map(({ label, share }) => `${label}: ${looseWorking(share)}`).join(' ')}`,
  }
}

function axis(x: Scale, floorPt: number): readonly PlanMark[] {
  return [
    ...ticks(x.to, tickStep(x.to)).flatMap((value) => [
      line({ xPt: x.at(value), yPt: floorPt }, { xPt: x.at(value), yPt: TOP_PT }, GRID_PEN),
      words(
        String(Number(value.toFixed(2))),
        { xPt: x.at(value), yPt: floorPt + 12 },
        { align: 'middle', quiet: true },
      ),
    ]),
    line({ xPt: x.at(0), yPt: floorPt }, { xPt: x.at(x.to), yPt: floorPt }, AXIS_PEN),
  ]
}

type Shown = { readonly label: string; readonly share: Extract<LooseShare, { kind: 'share' }> }

/** A thin line for the exact interval, a thick one for Wilson's, a dot for the share itself. */
function rowMarks(
  { label, share }: Shown,
  { x, yPt }: { readonly x: Scale; readonly yPt: number },
): readonly PlanMark[] {
  const bar = (bounds: { low: number; high: number }, widthPt: number, colour: string) =>
    line({ xPt: x.at(bounds.low * 100), yPt }, { xPt: x.at(bounds.high * 100), yPt }, { colour, widthPt, dashPt: [] })
  const end = (bound: number) =>
    line(
      { xPt: x.at(bound * 100), yPt: yPt - 4 },
      { xPt: x.at(bound * 100), yPt: yPt + 4 },
      { colour: INK, widthPt: 1, dashPt: [] },
    )
  return [
    bar(share.wilson, 5, '#56B4E9'),
    bar(share.exact, 1, INK),
    end(share.exact.low),
    end(share.exact.high),
    { kind: 'pill', at: { xPt: x.at(share.share * 100), yPt }, halfWidthPt: 3, halfHeightPt: 3, pen: null, fill: INK },
    words(label, { xPt: LEFT_PT - 8, yPt: yPt + 2.7 }, { align: 'end', strong: true }),
    words(`${share.loose} of ${share.checked}`, { xPt: WIDTH_PT - RIGHT_PT + 8, yPt: yPt + 2.7 }, { align: 'start' }),
  ]
}

/** What lines and dots stand for. */
export const loosePlotLegend =
  'Dot: share found. Thick line: Wilson interval, 95 %. Thin line with ends: exact interval, 95 %.'
