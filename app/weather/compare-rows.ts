import type { Doubt, Observation } from './observation.ts'

/** Above this, knots, a wind near the ground is taken for a slip of unit or instrument. Common practice, no source. */
const PLAUSIBLE_KT = 225

/** Rows compared with each other: the same said twice counts once, contradictions and odd figures are marked. */
export interface ComparedRows {
  /** In order of time, stations together. */
  readonly observations: readonly Observation[]
  readonly merged: number
  readonly cautions: readonly string[]
}

/** Compares all rows of a file. */
export function compareRows(rows: readonly Observation[]): ComparedRows {
  const groups = new Map<string, Observation[]>()
  let merged = 0
  for (const row of rows) {
    const key = `${row.station} ${row.atMs}`
    const group = groups.get(key) ?? []
    if (group.some((other) => saysTheSame(other, row))) merged += 1
    else group.push(row)
    groups.set(key, group)
  }
  const observations = [...groups.values()].flatMap((group) => {
    const isContradicted = contradicts(group)
    return group.map((row) => withDoubts(row, isContradicted))
  })
  return {
    observations: observations.sort((a, b) => compareCodes(a.station, b.station) || a.atMs - b.atMs),
    merged,
    cautions: cautionsOf(observations),
  }
}

function saysTheSame(a: Observation, b: Observation): boolean {
  const said = ({ fromDeg, meanKt, gustKt, peak, isVariable }: Observation) =>
    JSON.stringify([fromDeg, meanKt, gustKt, peak, isVariable])
  return said(a) === said(b)
}

/** A row without a gust does not contradict one with it; two different mean winds or gusts do. */
function contradicts(group: readonly Observation[]): boolean {
  const differ = (pick: (row: Observation) => number | null) =>
    new Set(group.flatMap((row) => pick(row) ?? []).map((value) => value.toFixed(0))).size > 1
  return differ(({ meanKt }) => meanKt) || differ(({ gustKt }) => gustKt)
}

function withDoubts(row: Observation, isContradicted: boolean): Observation {
  const doubts = new Set<Doubt>(row.doubts)
  if (isContradicted) doubts.add('contradicted')
  if (row.gustKt !== null && row.meanKt !== null && row.gustKt < row.meanKt) doubts.add('gust-below-mean')
  if ([row.meanKt, row.gustKt, row.peak?.kt ?? null].some((kt) => kt !== null && kt > PLAUSIBLE_KT)) {
    doubts.add('implausible')
  }
  return { ...row, doubts: [...doubts] }
}

function compareCodes(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}

function cautionsOf(rows: readonly Observation[]): readonly string[] {
  const count = (doubt: Doubt) => rows.filter(({ doubts }) => doubts.includes(doubt)).length
  const sentence = (doubt: Doubt, words: string) => {
    const found = count(doubt)
    return found === 0 ? [] : [`${found} ${found === 1 ? 'report' : 'reports'} ${words}`]
  }
  return [
    ...sentence('no-unit', 'without a unit of speed: the direction is kept, the speeds are not used.'),
    ...sentence('gust-below-mean', 'with a gust below the mean wind: check that both columns have the same unit.'),
    ...sentence('implausible', `above ${PLAUSIBLE_KT} kt: check the unit.`),
    ...sentence('marked-suspect', 'marked as suspect by the archive.'),
    ...sentence('peak-long-before', 'with a peak wind dated more than two hours before the report.'),
    ...sentence('contradicted', 'contradicted by another report of the same station and minute.'),
    ...sentence('clock-change', 'in an hour that the change of clocks leaves uncertain.'),
    ...sentence('above-range', 'that say "more than" a speed.'),
  ]
}
