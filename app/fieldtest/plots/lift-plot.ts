import { line, type PlanMark, type SheetPoint } from '../../roof/plan-sheet/marks.ts'
import { INK, PAPER } from '../../roof/plan-sheet/inks.ts'
import { readingLabel } from '../../evidence/reading-label.ts'
import { ruleWords, type Criterion } from '../criteria/criterion.ts'
import { judgeReading, type Judgement } from '../judge-reading.ts'
import { figure } from '../reading-words.ts'
import type { Reading } from '../reading.ts'
import { AXIS_PEN, GRID_PEN, LIMIT_PEN, scaleOf, tickStep, ticks, words, type Plot, type Scale } from './plot.ts'

const WIDTH_PT = 468
const HEIGHT_PT = 230
const LEFT_PT = 96
const RIGHT_PT = 12
const TOP_PT = 16
const BOTTOM_PT = 34
/** Middle of the column, left of the axis, for lifts without a force. */
const NO_FORCE_PT = 54
const DOT_PT = 3.2

type Lifted = Reading & { readonly liftIn: number }

/**
 * Lift against force, a dot for each reading that has a lift; those without a force stand in a column of their own, off
 * the scale. The criterion's limits are drawn where it has them. Null when no reading has a lift.
 */
export function liftPlot(readings: readonly Reading[], criterion: Criterion, listedLbf: number | null): Plot | null {
  const lifted = readings.filter((reading): reading is Lifted => reading.liftIn !== null)
  if (lifted.length === 0) return null
  const { rule } = criterion
  const limits = rule.kind === 'lift-limit' ? [rule.forceLbf, rule.liftIn] : [0, 0]
  const mostLbf = 1.15 * Math.max(10, limits[0] ?? 0, ...lifted.map(({ forceLbf }) => forceLbf ?? 0))
  const mostIn = 1.15 * Math.max(1, limits[1] ?? 0, ...lifted.map(({ liftIn }) => liftIn))
  const x = scaleOf({ from: 0, to: mostLbf }, { startPt: LEFT_PT, endPt: WIDTH_PT - RIGHT_PT })
  const y = scaleOf({ from: 0, to: mostIn }, { startPt: HEIGHT_PT - BOTTOM_PT, endPt: TOP_PT })
  const dots = lifted.map((reading) => ({ reading, judgement: judgeReading(reading, criterion, listedLbf) }))
  return {
    widthPt: WIDTH_PT,
    heightPt: HEIGHT_PT,
    marks: [...limitMarks(rule, x, y), ...axes(x, y), ...dots.flatMap((dot) => dotMarks(dot, x, y))],
    alt: altOf(dots, criterion),
  }
}

function axes(x: Scale, y: Scale): readonly PlanMark[] {
  const floor = y.at(0)
  const left = x.at(0)
  return [
    ...ticks(y.to, tickStep(y.to)).flatMap((value) => [
      line({ xPt: left, yPt: y.at(value) }, { xPt: x.at(x.to), yPt: y.at(value) }, GRID_PEN),
      words(figure(value), { xPt: left - 5, yPt: y.at(value) + 2.7 }, { align: 'end', quiet: true }),
    ]),
    ...ticks(x.to, tickStep(x.to)).flatMap((value) => [
      line({ xPt: x.at(value), yPt: floor }, { xPt: x.at(value), yPt: floor + 3 }, AXIS_PEN),
      words(figure(value), { xPt: x.at(value), yPt: floor + 12 }, { align: 'middle', quiet: true }),
    ]),
    line({ xPt: left, yPt: floor }, { xPt: x.at(x.to), yPt: floor }, AXIS_PEN),
    line({ xPt: left, yPt: floor }, { xPt: left, yPt: TOP_PT }, AXIS_PEN),
    words('Lift, in', { xPt: left, yPt: 9 }, { align: 'middle', strong: true }),
    words('Force, lbf', { xPt: x.at(x.to), yPt: HEIGHT_PT - 6 }, { align: 'end', strong: true }),
    words('no force read', { xPt: NO_FORCE_PT, yPt: floor + 12 }, { align: 'middle', quiet: true }),
  ]
}

function limitMarks(rule: Criterion['rule'], x: Scale, y: Scale): readonly PlanMark[] {
  if (rule.kind !== 'lift-limit') {
    if (rule.kind !== 'held-load') return []
    return [line({ xPt: x.at(rule.forceLbf), yPt: y.at(0) }, { xPt: x.at(rule.forceLbf), yPt: TOP_PT }, LIMIT_PEN)]
  }
  const corner: SheetPoint = { xPt: x.at(rule.forceLbf), yPt: y.at(rule.liftIn) }
  const outside = [
    { xPt: x.at(0), yPt: corner.yPt },
    corner,
    { xPt: corner.xPt, yPt: TOP_PT },
    { xPt: x.at(0), yPt: TOP_PT },
  ]
  return [
    { kind: 'path', points: outside, closed: true, pen: null, fill: '#FBE6D6' },
    line({ xPt: x.at(0), yPt: corner.yPt }, { xPt: x.at(x.to), yPt: corner.yPt }, LIMIT_PEN),
    line({ xPt: corner.xPt, yPt: y.at(0) }, { xPt: corner.xPt, yPt: TOP_PT }, LIMIT_PEN),
    words(`${rule.forceLbf} lbf`, { xPt: corner.xPt + 4, yPt: TOP_PT + 8 }, { align: 'start' }),
    words(`${rule.liftIn} in`, { xPt: x.at(x.to), yPt: corner.yPt - 4 }, { align: 'end' }),
  ]
}

interface Dot {
  readonly reading: Lifted
  readonly judgement: Judgement
}

/** Filled where the criterion is not met, open where it is, a square where no judgement is drawn: told apart without colour. */
function dotMarks({ reading, judgement }: Dot, x: Scale, y: Scale): readonly PlanMark[] {
  const at = { xPt: reading.forceLbf === null ? NO_FORCE_PT : x.at(reading.forceLbf), yPt: y.at(reading.liftIn) }
  const pen = { colour: INK, widthPt: 1, dashPt: [] }
  const round = { kind: 'pill', at, halfWidthPt: DOT_PT, halfHeightPt: DOT_PT, pen } as const
  const square: PlanMark = {
    kind: 'path',
    points: [
      { xPt: at.xPt - DOT_PT, yPt: at.yPt - DOT_PT },
      { xPt: at.xPt + DOT_PT, yPt: at.yPt - DOT_PT },
      { xPt: at.xPt + DOT_PT, yPt: at.yPt + DOT_PT },
      { xPt: at.xPt - DOT_PT, yPt: at.yPt + DOT_PT },
    ],
    closed: true,
    pen,
    fill: PAPER,
  }
  const mark: Readonly<Record<Judgement['kind'], PlanMark>> = {
    'does-not-meet': { ...round, fill: INK },
    meets: { ...round, fill: PAPER },
    'at-limit': { ...round, fill: '#CC79A7' },
    'cannot-judge': square,
  }
  const label = words(readingLabel(reading.number), { xPt: at.xPt + 6, yPt: at.yPt - 3 }, { align: 'start' })
  return [mark[judgement.kind], label]
}

/** What the shapes of the dots stand for. */
export const liftPlotLegend =
  'Filled dot: does not meet the criterion. Open dot: meets it. Shaded dot: at the limit. Square: not judged.'

function altOf(dots: readonly Dot[], criterion: Criterion): string {
  const each = dots.map(
    ({ reading }) =>
      `${readingLabel(reading.number)} ${figure(reading.liftIn)} in at ${reading.forceLbf === null ? 'no force read' : `${figure(reading.forceLbf)} lbf`}`,
  )
  return `Lift against force. ${ruleWords(criterion.rule)} ${each.join('; ')}.`
}
