import { toKnots, type SpeedUnit } from './speed.ts'
import type { Doubt } from './observation.ts'

/** The wind of one METAR or SPECI, read by its own groups. Times are UTC; a report has a day and no month. */
export interface MetarWind {
  readonly kind: 'report'
  readonly station: string
  readonly day: number
  readonly hour: number
  readonly minute: number
  readonly fromDeg: number | null
  readonly isVariable: boolean
  readonly between: { readonly fromDeg: number; readonly toDeg: number } | null
  readonly meanKt: number | null
  readonly gustKt: number | null
  /** Hour is null when the remark gives minutes past the hour only. */
  readonly peak: {
    readonly kt: number
    readonly fromDeg: number
    readonly hour: number | null
    readonly minute: number
  } | null
  readonly doubts: readonly Doubt[]
}

export interface NoReport {
  readonly kind: 'refused'
  readonly sentence: string
}

const WIND = /^(\d{3}|VRB|\/\/\/)(P?\d{2,3}|\/\/)(?:G(P?\d{2,3}))?(KT|MPS|KMH)?$/
const units = { KT: 'kt', MPS: 'm/s', KMH: 'km/h' } as const satisfies Record<string, SpeedUnit>

/**
 * Reads station, time and wind of one report. A forecast, a missing report and text that is none are refused with a
 * sentence. Form of the groups: FAA AIM, and WMO-style charts for MPS, KMH and P ("more than").
 */
export function readMetar(text: string): MetarWind | NoReport {
  const tokens = text.replace(/=\s*$/, '').trim().split(/\s+/)
  if (tokens[0] === 'TAF') return refused('This is a forecast (TAF), not an observation.')
  const start = tokens.findIndex((token) => !['METAR', 'SPECI', 'COR'].includes(token))
  const [station = '', time = '', ...rest] = tokens.slice(Math.max(start, 0))
  if (!/^[A-Z][A-Z0-9]{3}$/.test(station)) return refused(`"${short(station)}" is not a station's four letters.`)
  const at = /^(\d{2})(\d{2})(\d{2})Z$/.exec(time)
  const [day, hour, minute] = [Number(at?.[1]), Number(at?.[2]), Number(at?.[3])]
  if (at === null || day < 1 || day > 31 || hour > 23 || minute > 59) {
    return refused(`"${short(time)}" is not a day and time in UTC such as 081353Z.`)
  }
  if (rest.some((token) => /^\d{4}\/\d{4}$/.test(token)))
    return refused('This is a forecast (TAF), not an observation.')
  if (rest.includes('NIL')) return refused(`${station} sent no report for this time (NIL).`)
  const wind = windOf(rest)
  return wind === null
    ? refused(`The report of ${station} has no wind group.`)
    : { kind: 'report', station, day, hour, minute, ...wind, peak: peakOf(rest) }
}

type Wind = Pick<MetarWind, 'fromDeg' | 'isVariable' | 'between' | 'meanKt' | 'gustKt' | 'doubts'>

/** What stands before remarks and trends is the observation. */
function windOf(rest: readonly string[]): Wind | null {
  const end = rest.findIndex((token) => /^(RMK|TEMPO|BECMG|NOSIG|PROB\d\d)$/.test(token))
  const body = (end < 0 ? rest : rest.slice(0, end)).filter((token) => !['AUTO', 'COR', 'CORR'].includes(token))
  const at = body.findIndex((token, index) => {
    const group = WIND.exec(token)
    // Without a unit only the place right behind the time makes it a wind.
    return group !== null && (group[4] !== undefined || index === 0)
  })
  const group = WIND.exec(body[at] ?? '')
  if (group === null) return null
  const [, direction = '', speed = '', gust, written] = group
  const unit = written === 'KT' || written === 'MPS' || written === 'KMH' ? units[written] : null
  const meanKt = unit === null ? null : speedOf(speed, unit)
  const gustKt = unit === null || gust === undefined ? null : speedOf(gust, unit)
  const isCalm = direction === '000' && meanKt === 0
  const doubts: Doubt[] = []
  if (unit === null) doubts.push('no-unit')
  if (speed.startsWith('P') || gust?.startsWith('P') === true) doubts.push('above-range')
  const spread = /^(\d{3})V(\d{3})$/.exec(body[at + 1] ?? '')
  return {
    fromDeg: isCalm || !/^\d{3}$/.test(direction) || Number(direction) > 360 ? null : Number(direction),
    isVariable: direction === 'VRB',
    between: spread === null ? null : { fromDeg: Number(spread[1]), toDeg: Number(spread[2]) },
    meanKt,
    gustKt,
    doubts,
  }
}

function peakOf(rest: readonly string[]): MetarWind['peak'] {
  const remark = rest.findIndex((token, index) => token === 'PK' && rest[index + 1] === 'WND')
  const group = remark < 0 ? null : /^(\d{3})(\d{2,3})\/(\d{2})?(\d{2})$/.exec(rest[remark + 2] ?? '')
  if (group === null) return null
  const [, direction, speed, hour, minute] = group
  if (Number(direction) > 360 || Number(hour ?? 0) > 23 || Number(minute) > 59) return null
  return {
    kt: Number(speed),
    fromDeg: Number(direction),
    hour: hour === undefined ? null : Number(hour),
    minute: Number(minute),
  }
}

function speedOf(written: string, unit: SpeedUnit): number | null {
  const digits = written.replace('P', '')
  return /^\d+$/.test(digits) ? toKnots(Number(digits), unit) : null
}

function refused(sentence: string): NoReport {
  return { kind: 'refused', sentence }
}

function short(text: string): string {
  return text.length > 24 ? `${text.slice(0, 24)}…` : text
}
