/**
 * The camera: many passes, each with its own point in the pixel, on the lens, on the sun's disc and on the sky, added up
 * to a picture with soft shadows, sky light, focus and clean edges; then developed like a camera develops.
 */
import * as THREE from 'three'
import { COPY, DEVELOP, SCREEN } from './film.mjs'
import { skyRadiance, sunIrradiance } from './sky.mjs'
import { stream } from './seed.mjs'

const SUN_MAP_PX = 2048
const SKY_MAP_PX = 1280
/** Rays of sky in each pass. */
const SKY_RAYS = 3
const SUN_SPREAD = 0.0075

const HOUSE_MIDDLE = new THREE.Vector3(30, 8, -14)

/** Where shadows are wanted finest. @param {any} shot */
function middleOf(shot) {
  return new THREE.Vector3(...shot.look).lerp(new THREE.Vector3(...shot.eye), 0.15)
}

export class Lens {
  /** @param {THREE.WebGLRenderer} renderer @param {THREE.Scene} scene @param {any} uniforms */
  constructor(renderer, scene, uniforms) {
    this.renderer = renderer
    this.scene = scene
    this.uniforms = uniforms
    this.shadowMaterial = new THREE.RawShaderMaterial({
      glslVersion: THREE.GLSL3,
      vertexShader:
        'precision highp float; uniform mat4 modelMatrix, viewMatrix, projectionMatrix; in vec3 position; invariant gl_Position; void main() { vec4 world = modelMatrix * vec4(position, 1.0); vec4 view = viewMatrix * world; gl_Position = projectionMatrix * view; }',
      fragmentShader: 'precision highp float; out vec4 c; void main() { c = vec4(1.0); }',
      side: THREE.DoubleSide,
      polygonOffset: true,
      polygonOffsetFactor: 1.6,
      polygonOffsetUnits: 2,
    })
    this.depthMaterial = this.shadowMaterial.clone()
    this.depthMaterial.polygonOffset = false
    this.depthMaterial.colorWrite = false
    this.maps = ['uSunMapNear', 'uSunMapFar', 'uSkyMapA', 'uSkyMapB', 'uSkyMapC'].map((name) => {
      const size = name.startsWith('uSun') ? SUN_MAP_PX : SKY_MAP_PX
      const target = new THREE.WebGLRenderTarget(size, size, { depthBuffer: true })
      target.depthTexture = new THREE.DepthTexture(size, size, THREE.FloatType)
      target.depthTexture.compareFunction = THREE.LessEqualCompare
      target.depthTexture.minFilter = target.depthTexture.magFilter = THREE.LinearFilter
      uniforms[name].value = target.depthTexture
      return target
    })
    this.quad = new THREE.Mesh(
      new THREE.BufferGeometry().setAttribute(
        'position',
        new THREE.BufferAttribute(new Float32Array([-1, -1, 0, 3, -1, 0, -1, 3, 0]), 3),
      ),
    )
    this.quad.frustumCulled = false
    this.flat = new THREE.Scene()
    this.flat.add(this.quad)
    this.flatCamera = new THREE.Camera()
    const screen = (/** @type {string} */ fragmentShader, /** @type {any} */ u, extra = {}) =>
      new THREE.RawShaderMaterial({
        glslVersion: THREE.GLSL3,
        vertexShader: SCREEN,
        fragmentShader,
        uniforms: u,
        depthTest: false,
        depthWrite: false,
        ...extra,
      })
    this.copy = screen(
      COPY,
      { uLight: { value: null }, uWeight: { value: 1 } },
      {
        transparent: true,
        blending: THREE.CustomBlending,
        blendEquation: THREE.AddEquation,
        blendSrc: THREE.OneFactor,
        blendDst: THREE.OneFactor,
      },
    )
    this.develop = screen(DEVELOP, {
      uLight: { value: null },
      uNoise: uniforms.uNoise,
      uExposure: { value: 1 },
      uSeed: { value: 0 },
      uGrain: { value: 0.02 },
      uVignette: { value: 0.3 },
      uSharp: { value: 0.25 },
      uBalance: { value: new THREE.Vector3(1, 1, 1) },
      uPixel: { value: new THREE.Vector2() },
    })
  }

  /** Takes one picture. @param {any} shot @returns {Uint8Array} RGBA rows from the bottom up */
  take(shot) {
    const { width, height, passes } = shot
    const random = stream(shot.seed)
    const once = new THREE.WebGLRenderTarget(width, height, { type: THREE.HalfFloatType, depthBuffer: true })
    const sum = new THREE.WebGLRenderTarget(width, height, { type: THREE.FloatType, depthBuffer: false })
    const camera = new THREE.PerspectiveCamera(shot.verticalFovDeg, width / height, 0.06, 2400)
    const sun = new THREE.Vector3(...shot.sunDirection)
    const start = random() * 6.28
    this.renderer.setRenderTarget(sum)
    this.renderer.setClearColor(0x000000, 0)
    this.renderer.clear()
    for (let i = 0; i < passes; i++) {
      this.aim(camera, shot, random)
      this.sunUp({ shot, sun, random, far: i % 4 === 0 })
      for (let k = 0; k < SKY_RAYS; k++) {
        const ray = k * passes + i
        this.skyUp({ shot, sun, random, k, share: (ray + 0.5) / (passes * SKY_RAYS), turn: start + ray * 2.399963 })
      }
      this.renderer.setRenderTarget(once)
      this.renderer.autoClear = true
      this.exposeOnce(camera)
      this.screenPass(this.copy, sum, { uLight: once.texture, uWeight: 1 / passes })
    }
    const pixels = this.print(shot, sum)
    once.dispose()
    sum.dispose()
    return pixels
  }

  /** Depth first, so that only what is seen is shaded. @param {THREE.Camera} camera */
  exposeOnce(camera) {
    const held = this.scene.children.filter((c) => c.visible && c.userData.holed === true)
    for (const h of held) h.visible = false
    this.scene.overrideMaterial = this.depthMaterial
    this.renderer.render(this.scene, camera)
    this.scene.overrideMaterial = null
    for (const h of held) h.visible = true
    this.renderer.autoClear = false
    this.renderer.render(this.scene, camera)
  }

  /** Puts the camera at a point of its lens and shifts the picture by part of a pixel. @param {THREE.PerspectiveCamera} camera @param {any} shot @param {() => number} random */
  aim(camera, shot, random) {
    const eye = new THREE.Vector3(...shot.eye)
    const look = new THREE.Vector3(...shot.look)
    camera.up.set(Math.sin(shot.rollRad), Math.cos(shot.rollRad), 0)
    camera.position.copy(eye)
    camera.lookAt(look)
    camera.updateMatrixWorld()
    camera.updateProjectionMatrix()
    const focus = shot.focusFt ?? eye.distanceTo(look)
    const r = shot.apertureFt * Math.sqrt(random())
    const a = random() * 2 * Math.PI
    const [dx, dy] = [r * Math.cos(a), r * Math.sin(a)]
    camera.translateX(dx)
    camera.translateY(dy)
    camera.updateMatrixWorld()
    const m = camera.projectionMatrix.elements
    m[8] += (-m[0] * dx) / focus + ((random() + random() - 1) * 1.5) / shot.width
    m[9] += (-m[5] * dy) / focus + ((random() + random() - 1) * 1.5) / shot.height
    camera.projectionMatrixInverse.copy(camera.projectionMatrix).invert()
    this.uniforms.uEye.value.copy(camera.position)
  }

  /** Chooses this pass's ray of sun within its disc and draws its shadows. @param {any} job */
  sunUp({ shot, sun, random, far }) {
    const u = this.uniforms
    const disc = SUN_SPREAD * Math.sqrt(random())
    const a = random() * 2 * Math.PI
    const side = new THREE.Vector3(0, 1, 0).cross(sun).normalize()
    const rise = new THREE.Vector3().crossVectors(sun, side)
    const ray = sun
      .clone()
      .addScaledVector(side, disc * Math.cos(a))
      .addScaledVector(rise, disc * Math.sin(a))
      .normalize()
    u.uSunDir.value.copy(ray)
    u.uTrueSun.value.copy(sun)
    u.uSunColour.value.set(...sunIrradiance(shot.sunElevationDeg))
    const wide = Math.max(70, shot.reachFt * 1.6)
    this.drawShadow({
      map: 0,
      matrix: u.uSunNear.value,
      ray,
      centre: middleOf(shot),
      radius: shot.reachFt,
      roll: random() * 6.28,
    })
    if (far)
      this.drawShadow({
        map: 1,
        matrix: u.uSunFar.value,
        ray,
        centre: HOUSE_MIDDLE,
        radius: wide,
        roll: random() * 6.28,
      })
    u.uTexelFt.value
      .set(shot.reachFt / SUN_MAP_PX, wide / SUN_MAP_PX, (shot.reachFt * 1.15) / SKY_MAP_PX)
      .multiplyScalar(2.2)
  }

  /** Chooses a ray of sky, evenly over the dome, and draws its shadow. @param {any} job */
  skyUp({ shot, sun, random, k, share, turn }) {
    const u = this.uniforms
    const y = 0.04 + 0.96 * share
    const flat = Math.sqrt(1 - y * y)
    const ray = new THREE.Vector3(flat * Math.cos(turn), y, flat * Math.sin(turn))
    const light = skyRadiance(ray.toArray(), sun.toArray()).map((v) => v * 2 * Math.PI)
    u.uSkyDir.value[k].copy(ray)
    u.uSkyColour.value[k].set(...light)
    this.drawShadow({
      map: 2 + k,
      matrix: u.uSkyMatrix.value[k],
      ray,
      centre: middleOf(shot),
      radius: shot.reachFt * 1.15,
      roll: random() * 6.28,
    })
  }

  /** @param {any} job */
  drawShadow({ map, matrix, ray, centre, radius, roll }) {
    const camera = new THREE.OrthographicCamera(-radius, radius, radius, -radius, 1, 420)
    camera.up.set(Math.cos(roll), 0.01, Math.sin(roll))
    camera.position.copy(centre).addScaledVector(ray, 210)
    camera.lookAt(centre)
    camera.updateMatrixWorld()
    matrix.multiplyMatrices(camera.projectionMatrix, camera.matrixWorldInverse)
    const hidden = this.scene.children.filter((c) => c.visible && c.userData.castsNot === true)
    for (const h of hidden) h.visible = false
    this.scene.overrideMaterial = this.shadowMaterial
    this.renderer.setRenderTarget(this.maps[map])
    this.renderer.autoClear = true
    this.renderer.render(this.scene, camera)
    this.scene.overrideMaterial = null
    for (const h of hidden) h.visible = true
  }

  /** @param {any} material @param {any} target @param {Record<string, unknown>} values */
  screenPass(material, target, values) {
    for (const [name, value] of Object.entries(values)) material.uniforms[name].value = value
    this.quad.material = material
    this.renderer.setRenderTarget(target)
    this.renderer.render(this.flat, this.flatCamera)
  }

  /** Meters the light like a camera does and develops the picture. @param {any} shot @param {any} sum */
  print(shot, sum) {
    const small = new THREE.WebGLRenderTarget(40, 30, { type: THREE.FloatType, depthBuffer: false })
    this.renderer.setRenderTarget(small)
    this.renderer.clear()
    this.screenPass(this.copy, small, { uLight: sum.texture, uWeight: 1 })
    const sample = new Float32Array(40 * 30 * 4)
    this.renderer.readRenderTargetPixels(small, 0, 0, 40, 30, sample)
    let log = 0
    for (let i = 0; i < sample.length; i += 4)
      log += Math.log(0.02 + Math.min(1.2, 0.25 * sample[i] + 0.6 * sample[i + 1] + 0.15 * sample[i + 2]))
    const mean = Math.exp(log / 1200)
    const exposure = (0.385 / mean ** 0.8) * shot.exposure
    const out = new THREE.WebGLRenderTarget(shot.width, shot.height, { depthBuffer: false })
    this.screenPass(this.develop, out, {
      uLight: sum.texture,
      uExposure: exposure,
      uSeed: (shot.seed % 1000) / 1000,
      uGrain: shot.grain,
      uVignette: shot.vignette,
      uSharp: shot.sharpen,
      uBalance: new THREE.Vector3(...shot.balance),
      uPixel: new THREE.Vector2(1 / shot.width, 1 / shot.height),
    })
    const pixels = new Uint8Array(shot.width * shot.height * 4)
    this.renderer.readRenderTargetPixels(out, 0, 0, shot.width, shot.height, pixels)
    small.dispose()
    out.dispose()
    return pixels
  }
}
