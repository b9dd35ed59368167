/** Runs in the browser: builds the scene once, takes the pictures it is asked for and sends the pixels back. */
import * as THREE from 'three'
import { MeshBuilder } from './mesh-builder.mjs'
import { Lens } from './lens.mjs'
import { sharedUniforms, skyMaterial, surfaceMaterial } from './materials.mjs'
import { noiseTexture } from './noise-texture.mjs'
import { printedSheet } from './printed-sheet.mjs'
import { drawChalk, placeProp } from './props.mjs'
import { layRidgeCaps } from './ridge-caps.mjs'
import { hangDownspouts, hangEaves, layDeck, layValleys, setPipes, setVents } from './roof-metal.mjs'
import { growGrass, layGround, plantGarden } from './surroundings.mjs'
import { layTileField } from './tile-field.mjs'
import { raiseWalls } from './walls.mjs'

/** @param {MeshBuilder} builder */
function geometryOf(builder) {
  const data = new Float32Array(builder.data)
  const buffer = new THREE.InterleavedBuffer(data, 12)
  const geometry = new THREE.BufferGeometry()
  geometry.setAttribute('position', new THREE.InterleavedBufferAttribute(buffer, 3, 0))
  geometry.setAttribute('normal', new THREE.InterleavedBufferAttribute(buffer, 3, 3))
  geometry.setAttribute('aUv', new THREE.InterleavedBufferAttribute(buffer, 2, 6))
  geometry.setAttribute('aOwn', new THREE.InterleavedBufferAttribute(buffer, 4, 8))
  geometry.setIndex(new THREE.BufferAttribute(new Uint32Array(builder.index), 1))
  return geometry
}

/** @param {{ words: any, grassPatches: number[][] }} given */
function buildStage({ words, grassPatches }) {
  const renderer = new THREE.WebGLRenderer({ antialias: false, preserveDrawingBuffer: false })
  renderer.outputColorSpace = THREE.LinearSRGBColorSpace
  renderer.setSize(16, 16)
  const uniforms = sharedUniforms()
  uniforms.uNoise.value = noiseTexture(1)
  uniforms.uPrint.value = printedSheet(words, 8)
  const scene = new THREE.Scene()
  /** @type {Record<string, MeshBuilder>} */
  const b = {}
  for (const name of ['tile', 'mortar', 'felt', 'wood', 'metal', 'stucco', 'white', 'glass', 'ground', 'leaf', 'chalk'])
    b[name] = new MeshBuilder()
  const field = layTileField()
  layRidgeCaps(b.tile, b.mortar)
  layDeck(b.felt, b.wood)
  layValleys(b.metal)
  setPipes(b.metal, b.mortar)
  setVents(b.metal)
  hangEaves(b.white, b.metal)
  hangDownspouts(b.metal)
  raiseWalls({ stucco: b.stucco, white: b.white, glass: b.glass })
  layGround(b.ground)
  plantGarden(b.leaf, b.white)
  drawChalk(b.chalk)
  const add = (/** @type {string} */ surface, /** @type {MeshBuilder} */ builder) => {
    const mesh = new THREE.Mesh(geometryOf(builder), surfaceMaterial(/** @type {any} */ (surface), uniforms))
    mesh.userData.castsNot = surface === 'chalk' || surface === 'ground'
    mesh.userData.holed = surface === 'chalk'
    scene.add(mesh)
    return mesh
  }
  for (const cell of field) add('tile', cell)
  for (const [name, builder] of Object.entries(b)) add(name, builder)
  const grassBuilder = new MeshBuilder()
  growGrass(grassBuilder, grassPatches)
  const grass = add('leaf', grassBuilder)
  grass.userData.castsNot = true
  const dome = new THREE.Mesh(new THREE.SphereGeometry(10, 48, 24), skyMaterial(uniforms))
  dome.frustumCulled = false
  dome.renderOrder = 10
  dome.userData.castsNot = true
  dome.userData.holed = true
  scene.add(dome)
  const lens = new Lens(renderer, scene, uniforms)
  return { lens, scene, grass, add }
}

/** @type {ReturnType<typeof buildStage> | null} */
let stage = null
Object.assign(window, {
  /** @param {any} given */
  setUp(given) {
    stage = buildStage(given)
  },
  /** @param {any} shot */
  async take(shot) {
    if (stage === null) throw new Error('The stage is not set up.')
    stage.grass.visible = shot.onGround
    const props = new MeshBuilder()
    for (const prop of shot.props) placeProp(props, prop)
    const mesh = shot.props.length > 0 ? stage.add('print', props) : null
    const pixels = stage.lens.take(shot)
    if (mesh !== null) {
      stage.scene.remove(mesh)
      mesh.geometry.dispose()
    }
    await fetch('/pixels', { method: 'POST', body: /** @type {BodyInit} */ (/** @type {unknown} */ (pixels)) })
  },
})
