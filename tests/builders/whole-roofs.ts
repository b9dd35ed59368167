import { facetSchema, type Facet } from '../../app/roof/facet.ts'

/** One face of a roof: its corners, its pitch, and where its water runs, degrees clockwise from the top of the sheet. */
export interface Face {
  readonly corners: readonly (readonly [number, number])[]
  readonly pitch: number
  readonly down: number
}

export const UP = 0
export const RIGHT = 90
export const DOWN = 180
export const LEFT = 270

/** Corners as text: "0,0 40,0 40,15". */
export function at(corners: string): Face['corners'] {
  return corners.split(' ').map((corner) => {
    const [x = NaN, y = NaN] = corner.split(',').map(Number)
    return [x, y]
  })
}

/** The faces as facets of a sheet whose up direction has this azimuth. */
export function facetsOf(faces: readonly Face[], upAzimuthDeg = 0): Facet[] {
  return faces.map(({ corners, pitch, down }, i) =>
    facetSchema.parse({
      id: `facet-${i}`,
      letter: `F${i}`,
      outline: corners.map(([xFt, yFt]) => ({ xFt, yFt })),
      pitchRise: pitch,
      downslopeAzimuthDeg: (down + upAzimuthDeg) % 360,
    }),
  )
}

/** Gable roof, its ridge along the length. */
export const gable = (l: number, w: number, pitch: number): Face[] => [
  { corners: at(`0,0 ${l},0 ${l},${w / 2} 0,${w / 2}`), pitch, down: DOWN },
  { corners: at(`0,${w / 2} ${l},${w / 2} ${l},${w} 0,${w}`), pitch, down: UP },
]
/** Hip roof of one pitch. */
export const hip = (l: number, w: number, pitch: number): Face[] => [
  { corners: at(`0,0 ${l},0 ${l - w / 2},${w / 2} ${w / 2},${w / 2}`), pitch, down: DOWN },
  { corners: at(`${l},0 ${l},${w} ${l - w / 2},${w / 2}`), pitch, down: RIGHT },
  { corners: at(`${l},${w} 0,${w} ${w / 2},${w / 2} ${l - w / 2},${w / 2}`), pitch, down: UP },
  { corners: at(`0,${w} 0,0 ${w / 2},${w / 2}`), pitch, down: LEFT },
]
/** Hip roof over an L: a wing of 40 by 24 and a leg 16 wide, one pitch, worked by hand from equal offsets of the eaves. */
export const ellHip = (pitch: number): Face[] => [
  { corners: at('0,0 40,0 28,12 12,12'), pitch, down: DOWN },
  { corners: at('40,0 40,24 28,12'), pitch, down: RIGHT },
  { corners: at('40,24 16,24 8,16 12,12 28,12'), pitch, down: UP },
  { corners: at('16,24 16,44 8,36 8,16'), pitch, down: RIGHT },
  { corners: at('16,44 0,44 8,36'), pitch, down: UP },
  { corners: at('0,44 0,0 12,12 8,16 8,36'), pitch, down: LEFT },
]
/** A gable wing 24 wide that runs 10 out from the eave of a main roof of the same pitch. */
export const gableWing = (pitch: number): Face[] => [
  { corners: at('-30,0 -12,0 0,12 12,0 30,0 30,30 -30,30'), pitch, down: DOWN },
  { corners: at('-30,30 30,30 30,60 -30,60'), pitch, down: UP },
  { corners: at('-12,-10 0,-10 0,12 -12,0'), pitch, down: LEFT },
  { corners: at('0,-10 12,-10 12,0 0,12'), pitch, down: RIGHT },
]
