/** Shader texts of the darkroom: adding passes up, and developing the sum like a camera does. */

/** Film: exposure, white balance, tone curve, falling off to the corners, noise. */
export const DEVELOP = /* glsl */ `
precision highp float;
in vec2 vUv; out vec4 outColour;
uniform sampler2D uLight, uNoise; uniform float uExposure, uSeed, uGrain, uVignette, uSharp; uniform vec3 uBalance; uniform vec2 uPixel;
vec3 curve(vec3 x) { x = max(vec3(0.0), x - 0.003); return (x * (6.2 * x + 0.5)) / (x * (6.2 * x + 1.7) + 0.06); }
float hash(vec2 p) { vec3 q = fract(vec3(p.xyx) * 0.1031 + uSeed); q += dot(q, q.yzx + 33.33); return fract((q.x + q.y) * q.z); }
vec3 develop(vec2 uv) {
  vec2 d = uv - 0.5;
  float fall = 1.0 / pow(1.0 + dot(d, d) * uVignette, 2.0);
  vec3 c = texture(uLight, uv).rgb * uExposure * uBalance * fall;
  float grey = dot(c, vec3(0.25, 0.6, 0.15));
  return curve(max(vec3(0.0), mix(vec3(grey), c, 1.16))) * 1.07;
}
void main() {
  vec2 d = vUv - 0.5;
  vec3 c = develop(vUv);
  vec2 fringe = d * 0.00045;
  c.r = mix(c.r, develop(vUv + fringe).r, 0.8); c.b = mix(c.b, develop(vUv - fringe).b, 0.8);
  vec3 blur = (develop(vUv + uPixel * vec2(1.2, 0.0)) + develop(vUv - uPixel * vec2(1.2, 0.0)) + develop(vUv + uPixel * vec2(0.0, 1.2)) + develop(vUv - uPixel * vec2(0.0, 1.2))) / 4.0;
  c += (c - blur) * uSharp;
  vec2 px = floor(vUv / uPixel);
  float luma = hash(px) + hash(px + 71.0) - 1.0;
  vec3 chroma = vec3(hash(floor(px / 2.0) + 13.0), hash(floor(px / 2.0) + 29.0), hash(floor(px / 2.0) + 47.0)) - 0.5;
  float dark = 1.3 - dot(c, vec3(0.3, 0.55, 0.15));
  c += (luma * 1.0 + chroma * 0.7) * uGrain * dark;
  outColour = vec4(clamp(c, 0.0, 1.0), 1.0);
}`

/** Adds one pass, weighted. */
export const COPY =
  'precision highp float; in vec2 vUv; out vec4 outColour; uniform sampler2D uLight; uniform float uWeight; void main() { outColour = vec4(min(texture(uLight, vUv).rgb, 30.0) * uWeight, 1.0); }'
/** One triangle over the whole picture. */
export const SCREEN =
  'precision highp float; in vec3 position; out vec2 vUv; void main() { vUv = position.xy * 0.5 + 0.5; gl_Position = vec4(position.xy, 0.0, 1.0); }'
