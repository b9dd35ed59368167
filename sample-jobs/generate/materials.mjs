/** Surfaces of the scene: one lighting model (one sun ray, one sky ray per pass, soft bounce light), many surface recipes. */
import * as THREE from 'three'
import { SKY_GLSL } from './sky.mjs'
import { SURFACES } from './surfaces.mjs'

const VERTEX = /* glsl */ `
in vec2 aUv; in vec4 aOwn;
out vec3 vWorld; out vec3 vNormal; out vec2 vUv; out vec4 vOwn; out float vDepth;
invariant gl_Position;
void main() {
  vec4 world = modelMatrix * vec4(position, 1.0);
  vWorld = world.xyz; vNormal = mat3(modelMatrix) * normal; vUv = aUv; vOwn = aOwn;
  vec4 view = viewMatrix * world; vDepth = -view.z;
  gl_Position = projectionMatrix * view;
}`

const LIGHTING = /* glsl */ `
precision highp float; precision highp sampler2DShadow;
in vec3 vWorld; in vec3 vNormal; in vec2 vUv; in vec4 vOwn; in float vDepth;
out vec4 outColour;
uniform vec3 uSunDir, uSunColour, uSkyDir[3], uSkyColour[3], uEye;
uniform sampler2D uNoise, uPrint;
uniform sampler2DShadow uSunMapNear, uSunMapFar, uSkyMapA, uSkyMapB, uSkyMapC;
uniform mat4 uSunNear, uSunFar, uSkyMatrix[3];
uniform vec3 uTexelFt;
${SKY_GLSL}
struct Surface { vec3 albedo; vec3 normal; float gloss; float shine; vec3 glow; float through; };
float seen(sampler2DShadow map, mat4 m, vec3 p, out float inside) {
  vec4 c = m * vec4(p, 1.0);
  vec3 q = c.xyz * 0.5 + 0.5;
  vec2 edge = min(q.xy, 1.0 - q.xy);
  inside = step(0.003, min(edge.x, edge.y));
  return texture(map, vec3(q.xy, q.z - 0.00002));
}
vec3 lit(Surface s) {
  vec3 eye = normalize(uEye - vWorld);
  vec3 flat_ = normalize(vNormal);
  if (dot(flat_, eye) < 0.0) { flat_ = -flat_; }
  vec3 n = s.normal;
  float inNear, inFar;
  float near = seen(uSunMapNear, uSunNear, vWorld + flat_ * uTexelFt.x, inNear);
  float sunV = near;
  if (inNear < 0.5) {
    float far = seen(uSunMapFar, uSunFar, vWorld + flat_ * uTexelFt.y, inFar);
    sunV = mix(1.0, far, inFar);
  }
  vec3 q = vWorld + flat_ * uTexelFt.z, openSky, inSky;
  openSky.x = seen(uSkyMapA, uSkyMatrix[0], q, inSky.x);
  openSky.y = seen(uSkyMapB, uSkyMatrix[1], q, inSky.y);
  openSky.z = seen(uSkyMapC, uSkyMatrix[2], q, inSky.z);
  openSky = mix(vec3(0.72), openSky, inSky);
  float skyV = dot(openSky, vec3(1.0 / 3.0));
  vec3 sky = vec3(0.0);
  for (int i = 0; i < 3; i++) sky += uSkyColour[i] * mix(max(dot(n, uSkyDir[i]), 0.0), 0.55, s.through) * openSky[i] / 3.0;
  float nl = dot(n, uSunDir);
  float facing = step(0.0, dot(flat_, uSunDir));
  float sunN = mix(max(nl, 0.0) * facing, abs(nl) * 0.6 + 0.25, s.through);
  vec3 sun = uSunColour * sunN * sunV;
  vec3 bounce = (vec3(0.30, 0.27, 0.20) * (0.55 - 0.45 * n.y) + vec3(0.055, 0.06, 0.07)) * (0.22 + 0.78 * skyV) * 3.14159 * 0.62;
  vec3 c = s.albedo * (sun + sky + bounce) / 3.14159 + s.glow;
  vec3 h = normalize(uSunDir + eye);
  c += uSunColour * sunV * max(nl, 0.0) * facing * s.shine * pow(max(dot(n, h), 0.0), s.gloss) * (s.gloss + 8.0) / 60.0;
  if (s.shine > 0.05) {
    float fresnel = 0.03 + 0.5 * pow(1.0 - max(dot(n, eye), 0.0), 5.0);
    c += skyRadiance(normalize(reflect(-eye, n) + vec3(0.0, 0.25, 0.0))) * s.shine * fresnel * (0.3 + 0.7 * skyV);
  }
  if (vDepth < 30.0) return c;
  float mist = 1.0 - exp(-max(vDepth - 30.0, 0.0) / 2200.0);
  return mix(c, skyRadiance(normalize(vec3(-eye.x, 0.04, -eye.z))) * 0.9, mist);
}
vec3 bumped(vec3 n, vec2 slope, float strength) {
  vec3 t = normalize(cross(n, vec3(0.31, 0.22, 0.93)));
  vec3 b = cross(n, t);
  return normalize(n + (t * slope.x + b * slope.y) * strength);
}
vec3 towardEye() {
  vec3 n = normalize(vNormal);
  return dot(n, uEye - vWorld) < 0.0 ? -n : n;
}
`

/** @template T @param {() => T} make @returns {T[]} */
function three(make) {
  return [make(), make(), make()]
}

/** Values that every material shares; one object, so that a change reaches all. */
export function sharedUniforms() {
  const m = () => ({ value: new THREE.Matrix4() })
  const v = () => ({ value: new THREE.Vector3() })
  const map = () => ({ value: /** @type {THREE.Texture | null} */ (null) })
  return {
    uSunDir: v(),
    uSunColour: v(),
    uSkyDir: { value: three(() => new THREE.Vector3()) },
    uSkyColour: { value: three(() => new THREE.Vector3()) },
    uEye: v(),
    uTexelFt: v(),
    uTrueSun: v(),
    uNoise: map(),
    uPrint: map(),
    uSunMapNear: map(),
    uSunMapFar: map(),
    uSkyMapA: map(),
    uSkyMapB: map(),
    uSkyMapC: map(),
    uSunNear: m(),
    uSunFar: m(),
    uSkyMatrix: { value: three(() => new THREE.Matrix4()) },
  }
}

/** @param {keyof typeof SURFACES} name @param {Record<string, { value: unknown }>} uniforms */
export function surfaceMaterial(name, uniforms) {
  return new THREE.RawShaderMaterial({
    glslVersion: THREE.GLSL3,
    uniforms,
    vertexShader: `precision highp float; uniform mat4 modelMatrix, viewMatrix, projectionMatrix; in vec3 position; in vec3 normal; ${VERTEX}`,
    fragmentShader: `${LIGHTING}\n${SURFACES[name].replaceAll(/texture\(uNoise, ((?:[^()]|\((?:[^()]|\([^()]*\))*\))+)\)/g, 'texture(uNoise, $1, -0.8)')}\nvoid main() { outColour = vec4(lit(surface()), 1.0); }`,
    side: THREE.DoubleSide,
  })
}

/** The dome behind everything. @param {Record<string, { value: unknown }>} uniforms */
export function skyMaterial(uniforms) {
  return new THREE.RawShaderMaterial({
    glslVersion: THREE.GLSL3,
    uniforms,
    depthWrite: false,
    vertexShader: `precision highp float; uniform mat4 modelMatrix, viewMatrix, projectionMatrix; in vec3 position; out vec3 vDir;
      void main() { vDir = position; vec4 p = projectionMatrix * vec4(mat3(viewMatrix) * position, 1.0); gl_Position = p.xyww; }`,
    fragmentShader: `precision highp float; in vec3 vDir; out vec4 outColour; uniform sampler2D uNoise; ${SKY_GLSL}
      void main() { outColour = vec4(skyWithClouds(normalize(vDir)), 1.0); }`,
    side: THREE.BackSide,
  })
}
