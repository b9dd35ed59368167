/** A tiling 512 x 512 noise sheet: slopes in red and green, cloudy height in blue, speckle in alpha. */
import * as THREE from 'three'
import { stream } from './seed.mjs'

const SIZE = 512

/** @param {number} cells @param {() => number} random lattice noise that repeats after SIZE pixels */
function lattice(cells, random) {
  const values = Float32Array.from({ length: cells * cells }, random)
  return (/** @type {number} */ x, /** @type {number} */ y) => {
    const fx = (x / SIZE) * cells
    const fy = (y / SIZE) * cells
    const i = Math.floor(fx)
    const j = Math.floor(fy)
    const s = smooth(fx - i)
    const t = smooth(fy - j)
    const at = (/** @type {number} */ a, /** @type {number} */ b) => values[(b % cells) * cells + (a % cells)]
    return (at(i, j) * (1 - s) + at(i + 1, j) * s) * (1 - t) + (at(i, j + 1) * (1 - s) + at(i + 1, j + 1) * s) * t
  }
}

/** @param {number} t */
const smooth = (t) => t * t * (3 - 2 * t)

/** @param {number[]} octaves @param {number} fall @param {number} seed */
function layers(octaves, fall, seed) {
  const random = stream(seed)
  const nets = octaves.map((cells) => lattice(cells, random))
  const field = new Float32Array(SIZE * SIZE)
  nets.forEach((net, k) => {
    const weight = fall ** k
    for (let y = 0; y < SIZE; y++) for (let x = 0; x < SIZE; x++) field[y * SIZE + x] += (net(x, y) - 0.5) * weight
  })
  const spread = Math.sqrt(field.reduce((sum, v) => sum + v * v, 0) / field.length)
  return field.map((v) => Math.max(0, Math.min(1, 0.5 + (v / spread) * 0.17)))
}

/** @param {number} anisotropy */
export function noiseTexture(anisotropy) {
  const cloudy = layers([4, 8, 16, 32, 64, 128], 0.62, 11)
  const speckle = layers([48, 96, 192, 256], 0.9, 23)
  const relief = layers([16, 32, 64, 128, 256], 0.72, 37)
  const data = new Uint8Array(SIZE * SIZE * 4)
  const at = (/** @type {number} */ x, /** @type {number} */ y) =>
    relief[((y + SIZE) % SIZE) * SIZE + ((x + SIZE) % SIZE)]
  for (let y = 0; y < SIZE; y++) {
    for (let x = 0; x < SIZE; x++) {
      const k = y * SIZE + x
      data[k * 4] = clampByte(128 + (at(x + 1, y) - at(x - 1, y)) * 620)
      data[k * 4 + 1] = clampByte(128 + (at(x, y + 1) - at(x, y - 1)) * 620)
      data[k * 4 + 2] = clampByte(cloudy[k] * 255)
      data[k * 4 + 3] = clampByte(speckle[k] * 255)
    }
  }
  const texture = new THREE.DataTexture(data, SIZE, SIZE, THREE.RGBAFormat)
  texture.wrapS = texture.wrapT = THREE.RepeatWrapping
  texture.magFilter = THREE.LinearFilter
  texture.minFilter = THREE.LinearMipmapLinearFilter
  texture.generateMipmaps = true
  texture.anisotropy = anisotropy
  texture.needsUpdate = true
  return texture
}

/** @param {number} value */
const clampByte = (value) => Math.max(0, Math.min(255, Math.round(value)))
