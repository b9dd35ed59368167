/** The whole walk in the order of time: where each picture was taken from, of what, and what is said of it. */
import { CAMERAS } from './cameras.mjs'
import { ANCHOR, UP_AZIMUTH_DEG, deckHeightFt, planAzimuthDeg } from './house-plan.mjs'
import { seedOf, stream } from './seed.mjs'
import { sunPosition } from './sun-position.mjs'
import { BACK_VIEWS } from './walk-back.mjs'
import { FRONT_VIEWS } from './walk-front.mjs'
import { GARAGE_VIEWS } from './walk-garage.mjs'
import { GROUND_VIEWS } from './walk-ground.mjs'
import { LEFT_VIEWS } from './walk-left.mjs'

/**
 * @typedef {{
 *   name: string, camera: 'phone' | 'compact', time: string, stand: [number, number], eye?: number, look: [number, number],
 *   lookUp?: number, ground?: boolean, offRoof?: boolean, zoom?: number, portrait?: boolean, shake?: number, level?: number,
 *   props?: import('./props.mjs').Prop[],
 *   tags: { facet?: string, component?: string, condition?: string, role: string, caption: string, leftOutBecause?: string },
 * }} View `time` is true local time; `eye` is feet above roof or ground under the feet; `look` the plan point looked at
 */

export const INSPECTION_DATE = '2026-11-12'
/** Eastern standard time. */
export const UTC_OFFSET_MINUTES = -300

/** @type {View[]} */
export const WALK = [...GROUND_VIEWS, ...GARAGE_VIEWS, ...FRONT_VIEWS, ...LEFT_VIEWS, ...BACK_VIEWS]

/** File name as the camera would give it. @param {View} view */
export function fileName(view) {
  const number = WALK.filter((v) => v.camera === view.camera).indexOf(view)
  return view.camera === 'phone' ? `P${20_260_211 + number}.jpg` : `OSTK${String(3406 + number)}.jpg`
}

/** The instant a picture was truly taken, milliseconds since 1970. @param {View} view */
export function instantMs(view) {
  return Date.parse(`${INSPECTION_DATE}T${view.time}Z`) - UTC_OFFSET_MINUTES * 60_000 + subSecond(view) * 10
}

/** Hundredths of a second, made up but fixed. @param {View} view */
export function subSecond(view) {
  return seedOf(view.name) % 100
}

/** What is needed to take the picture, all in world feet. @param {View} view @param {number} passes */
export function shotOf(view, passes) {
  const camera = CAMERAS[view.camera]
  const random = stream(seedOf(view.name))
  const [width, height] = view.portrait ? [camera.height, camera.width] : [camera.width, camera.height]
  const long = (camera.longFovDeg / (view.zoom ?? 1)) * (Math.PI / 180)
  const vertical = view.portrait ? long : 2 * Math.atan((Math.tan(long / 2) * height) / width)
  const floor = view.ground || view.offRoof ? 0 : deckHeightFt(view.stand) + 0.2
  const target = (view.ground ? 0 : deckHeightFt(view.look) + 0.2) + (view.lookUp ?? 0)
  const eye = [view.stand[0], floor + (view.eye ?? 5.3), -view.stand[1]]
  const look = [view.look[0], target, -view.look[1]]
  const distance = Math.hypot(eye[0] - look[0], eye[1] - look[1], eye[2] - look[2])
  const sun = sunPosition(instantMs(view), ANCHOR)
  return {
    width,
    height,
    passes,
    eye,
    look,
    sunDirection: sunDirection(sun),
    sunElevationDeg: sun.elevationDeg,
    verticalFovDeg: (vertical * 180) / Math.PI,
    onGround: view.ground === true,
    props: view.props ?? [],
    seed: seedOf(view.name),
    rollRad: view.level ?? (random() - 0.5) * 0.05,
    reachFt: view.ground ? (distance < 5 ? 4 : 46) : Math.max(4, Math.min(34, distance * 1.5)),
    apertureFt: view.shake ?? camera.apertureFt,
    focusFt: view.shake === undefined ? distance : distance * 3,
    exposure: 0.94 + random() * 0.14,
    grain: camera.grain,
    vignette: camera.vignette,
    sharpen: camera.sharpen,
    balance: camera.balance.map((b) => b * (0.988 + random() * 0.024)),
  }
}

/** Unit vector to the sun in world axes. @param {{ elevationDeg: number, azimuthDeg: number }} sun */
function sunDirection({ elevationDeg, azimuthDeg }) {
  const turn = ((azimuthDeg - UP_AZIMUTH_DEG) * Math.PI) / 180
  const e = (elevationDeg * Math.PI) / 180
  return [Math.sin(turn) * Math.cos(e), Math.sin(e), -Math.cos(turn) * Math.cos(e)]
}

/** True azimuth that the camera pointed to. @param {View} view */
export function viewAzimuthDeg(view) {
  return planAzimuthDeg([view.look[0] - view.stand[0], view.look[1] - view.stand[1]])
}
