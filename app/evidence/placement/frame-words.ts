import type { PlanPoint } from '../../job/places.ts'
import { azimuthOf } from '../../roof/plan-frame.ts'
import type { LearnedFrame } from './learn-frame.ts'

const FOOT_M = 0.3048
const WINDS = ['north', 'north-east', 'east', 'south-east', 'south', 'south-west', 'west', 'north-west'] as const
/** Shifts below this are within what any plan is drawn to. */
const NO_SHIFT_M = 0.5
/** Turns below this are not spoken of. */
const NO_TURN_DEG = 1

/** What was learned of a camera's positions, as a sentence with metres and a wind, for the person who confirmed the photos. */
export function frameSentence(
  { shift, turn, photoCount, typicalResidualFt }: Omit<LearnedFrame, 'residuals' | 'about' | 'cameraId'>,
  upAzimuthDeg: number,
): string {
  const metres = Math.hypot(shift.xFt, shift.yFt) * FOOT_M
  const shifted =
    metres < NO_SHIFT_M ? 'are not shifted' : `are shifted ${inMetres(metres)} to the ${wind(shift, upAzimuthDeg)}`
  const turned = turn.kind === 'fitted' && Math.abs(turn.deg) >= NO_TURN_DEG ? ` and turned ${turnWords(turn.deg)}` : ''
  return `Positions ${shifted}${turned}; learned from ${photoCount} confirmed photos, residual ${inMetres(typicalResidualFt * FOOT_M)}.`
}

function inMetres(metres: number): string {
  return `${metres < 2 ? metres.toFixed(1) : Math.round(metres)} m`
}

function wind({ xFt, yFt }: PlanPoint, upAzimuthDeg: number): string {
  return WINDS[Math.round(azimuthOf({ x: xFt, y: yFt }, upAzimuthDeg) / 45) % 8] ?? 'north'
}

function turnWords(deg: number): string {
  return `${Math.round(Math.abs(deg))}° ${deg > 0 ? 'counter-clockwise' : 'clockwise'}`
}
