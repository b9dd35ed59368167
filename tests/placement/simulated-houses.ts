import { facetIdSchema } from '../../app/job/ids.ts'
import type { PlanFrame, PlanPoint } from '../../app/job/places.ts'
import { facetSchema, type Facet } from '../../app/roof/facet.ts'
import { azimuthOf } from '../../app/roof/plan-frame.ts'
import type { Chance } from './chance.ts'

/** An invented house of ten facets, drawn square to the sheet and lying on the earth at any angle. */
export interface SimulatedHouse {
  readonly kind: HouseKind
  readonly facets: readonly Facet[]
  readonly frame: PlanFrame
}

export type HouseKind = keyof typeof KINDS

type WingKind = 'hip' | 'gable' | 'porch'
type SideName = 'front' | 'back' | 'left' | 'right'
interface WingPlan {
  readonly kind: WingKind
  readonly side: SideName
}

/** Facets: 4 of a hipped main roof or 2 of a gabled one, 3 of a hipped wing, 2 of a gabled wing, 1 of a porch. */
const KINDS = {
  'two wings in front': { main: 'hip', wings: wings('hip front', 'hip front') },
  'wing front and back': { main: 'hip', wings: wings('hip front', 'hip back') },
  'wing front and side': { main: 'hip', wings: wings('hip front', 'hip right') },
  'gabled with three wings': { main: 'gable', wings: wings('hip front', 'hip back', 'gable back') },
  'wings and a porch': { main: 'hip', wings: wings('hip back', 'gable front', 'porch front') },
  'three gables': { main: 'hip', wings: wings('gable front', 'gable front', 'gable left') },
} as const satisfies Record<string, { main: 'hip' | 'gable'; wings: readonly WingPlan[] }>

function wings(...names: readonly `${WingKind} ${SideName}`[]): readonly WingPlan[] {
  return names.map((name) => {
    const [kind, side] = name.split(' ')
    return { kind: kind === 'hip' || kind === 'gable' ? kind : 'porch', side: sideNamed(side) }
  })
}

function sideNamed(name: string | undefined): SideName {
  return name === 'back' || name === 'left' || name === 'right' ? name : 'front'
}

/** A wing on a side of the main roof: from `fromFt` to `toFt` along the side, reaching `outFt` beyond it. */
interface Wing {
  readonly kind: WingKind
  readonly fromFt: number
  readonly toFt: number
  readonly outFt: number
}

/** A place beside a side of the main roof: along it, and outwards from its eave. */
type Local = readonly [alongFt: number, outFt: number]

interface SideLine {
  readonly name: SideName
  readonly lengthFt: number
  readonly start: PlanPoint
  readonly along: { readonly x: number; readonly y: number }
  readonly out: { readonly x: number; readonly y: number }
}

/** Makes a house of a kind with sizes by chance. */
export function simulatedHouse(kind: HouseKind, chance: Chance): SimulatedHouse {
  const widthFt = chance.between(48, 76)
  const depthFt = chance.between(30, 46)
  const frame: PlanFrame = {
    upAzimuthDeg: chance.between(0, 359),
    anchor: { latDeg: 27.95 + chance.between(-0.5, 0.5), lonDeg: -82.45 + chance.between(-0.5, 0.5) },
  }
  const { main, wings: plans } = KINDS[kind]
  const facets: Facet[] = []
  const add = (outline: readonly PlanPoint[], downhill: { x: number; y: number }, pitchRise: number) => {
    const letter = String.fromCharCode(65 + facets.length)
    facets.push(
      facetSchema.parse({
        id: facetIdSchema.parse(`facet-${letter}`),
        letter,
        outline,
        pitchRise,
        downslopeAzimuthDeg: azimuthOf(downhill, frame.upAzimuthDeg),
      }),
    )
  }
  for (const side of sideLines(widthFt, depthFt)) {
    const onSide = wingsOn(side, plans, chance)
    const isGableEnd = main === 'gable' && (side.name === 'left' || side.name === 'right')
    if (!isGableEnd) add(mainOutline(side, { main, depthFt }, onSide), side.out, 5)
    for (const wing of onSide) {
      for (const part of wingParts(wing)) {
        const { along, out } = side
        const downhill =
          part.downhill === 'out' ? out : part.downhill === 'along' ? along : { x: -along.x, y: -along.y }
        add(
          part.outline.map((at) => onPlan(side, at)),
          downhill,
          wing.kind === 'porch' ? 3 : 5,
        )
      }
    }
  }
  return { kind, facets, frame }
}

function sideLines(widthFt: number, depthFt: number): readonly SideLine[] {
  const at = (xFt: number, yFt: number) => ({ xFt, yFt })
  const to = (x: number, y: number) => ({ x, y })
  return [
    { name: 'front', lengthFt: widthFt, start: at(0, 0), along: to(1, 0), out: to(0, -1) },
    { name: 'right', lengthFt: depthFt, start: at(widthFt, 0), along: to(0, 1), out: to(1, 0) },
    { name: 'back', lengthFt: widthFt, start: at(widthFt, depthFt), along: to(-1, 0), out: to(0, 1) },
    { name: 'left', lengthFt: depthFt, start: at(0, depthFt), along: to(0, -1), out: to(-1, 0) },
  ]
}

/** Wings share a side in equal stretches and keep 2 ft clear of the ends of theirs. */
function wingsOn(side: SideLine, plans: readonly WingPlan[], chance: Chance): readonly Wing[] {
  const here = plans.filter((plan) => plan.side === side.name)
  const roomFt = side.lengthFt / Math.max(1, here.length)
  return here.map(({ kind }, index): Wing => {
    const wideFt = Math.min(roomFt - 6, chance.between(15, 26))
    const fromFt = index * roomFt + chance.between(2, roomFt - wideFt - 2)
    const outFt = kind === 'porch' ? chance.between(7, 10) : chance.between(9, 24)
    return { kind, fromFt, toFt: fromFt + wideFt, outFt }
  })
}

function onPlan({ start, along, out }: SideLine, [alongFt, outFt]: Local): PlanPoint {
  return {
    xFt: start.xFt + along.x * alongFt + out.x * outFt,
    yFt: start.yFt + along.y * alongFt + out.y * outFt,
  }
}

/** The main roof's facet above a side: its eave is cut by the valleys of the wings. All pitches are alike: 45 degrees in plan. */
function mainOutline(
  side: SideLine,
  { main, depthFt }: { main: 'hip' | 'gable'; depthFt: number },
  onSide: readonly Wing[],
): readonly PlanPoint[] {
  const long = side.name === 'front' || side.name === 'back'
  const runFt = long ? depthFt / 2 : side.lengthFt / 2
  const insetFt = main === 'hip' ? runFt : 0
  const eave = onSide
    .filter(({ kind }) => kind !== 'porch')
    .flatMap(({ fromFt, toFt }): readonly Local[] => {
      const halfFt = (toFt - fromFt) / 2
      return [
        [fromFt, 0],
        [fromFt + halfFt, -halfFt],
        [toFt, 0],
      ]
    })
  const top: readonly Local[] = long
    ? [
        [side.lengthFt - insetFt, -runFt],
        [insetFt, -runFt],
      ]
    : [[runFt, -runFt]]
  const corners: readonly Local[] = [[0, 0], ...eave, [side.lengthFt, 0], ...top]
  return corners.map((at) => onPlan(side, at))
}

interface WingPart {
  readonly outline: readonly Local[]
  readonly downhill: 'along' | 'against' | 'out'
}

function wingParts({ kind, fromFt, toFt, outFt }: Wing): readonly WingPart[] {
  if (kind === 'porch') {
    return [{ outline: [[fromFt, 0], [toFt, 0], [toFt, outFt], [fromFt, outFt]], downhill: 'out' }] // prettier-ignore
  }
  const halfFt = (toFt - fromFt) / 2
  const middleFt = fromFt + halfFt
  const ridgeEndFt = kind === 'hip' ? outFt - halfFt : outFt
  const slopes: readonly WingPart[] = [
    { outline: [[fromFt, 0], [middleFt, -halfFt], [middleFt, ridgeEndFt], [fromFt, outFt]], downhill: 'against' }, // prettier-ignore
    { outline: [[toFt, 0], [middleFt, -halfFt], [middleFt, ridgeEndFt], [toFt, outFt]], downhill: 'along' }, // prettier-ignore
  ]
  return kind === 'gable'
    ? slopes
    : [
        ...slopes,
        {
          outline: [
            [fromFt, outFt],
            [toFt, outFt],
            [middleFt, ridgeEndFt],
          ],
          downhill: 'out',
        },
      ]
}
