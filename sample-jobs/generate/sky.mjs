/** A clear sky after a front has passed: the same formula for the picture (GLSL) and for the light that it gives (JS). */

const SUN_RADIANCE = 2.75

export const SKY_GLSL = /* glsl */ `
uniform vec3 uTrueSun;
vec3 skyRadiance(vec3 d) {
  float up = max(d.y, 0.0);
  vec3 zenith = vec3(0.105, 0.225, 0.52), horizon = vec3(0.56, 0.68, 0.80);
  vec3 c = mix(horizon, zenith, pow(up, 0.48));
  float g = max(dot(d, uTrueSun), 0.0);
  c += vec3(1.0, 0.86, 0.66) * (0.20 * pow(g, 8.0) + 0.6 * pow(g, 90.0));
  return d.y < 0.0 ? mix(c, vec3(0.22, 0.21, 0.16), smoothstep(0.0, -0.08, d.y)) : c;
}
vec3 skyWithClouds(vec3 d) {
  vec3 c = skyRadiance(d);
  if (d.y > 0.01) {
    vec2 p = d.xz / (d.y + 0.16);
    float n = texture(uNoise, p * 0.11 + 0.31).b * 0.55 + texture(uNoise, p * 0.27 + vec2(0.1, 0.6)).b * 0.3 + texture(uNoise, p * 0.8).b * 0.15;
    float veil = texture(uNoise, vec2(p.x * 0.05, p.y * 0.16) + 0.7).b;
    float cover = smoothstep(0.53, 0.72, n) * smoothstep(0.01, 0.14, d.y);
    float thin = smoothstep(0.45, 0.8, veil) * 0.22;
    float body = smoothstep(0.53, 0.85, n);
    vec3 cloud = mix(vec3(1.5, 1.48, 1.44), vec3(0.86, 0.90, 0.97), body * 0.7);
    c = mix(c, vec3(1.1, 1.12, 1.15), thin);
    c = mix(c, cloud, cover * 0.82);
  }
  return c;
}
`

/** @param {number[]} d unit direction @param {number[]} sun unit direction @returns {number[]} radiance */
export function skyRadiance(d, sun) {
  const up = Math.max(d[1], 0) ** 0.48
  const g = Math.max(0, d[0] * sun[0] + d[1] * sun[1] + d[2] * sun[2])
  const glow = 0.2 * g ** 8 + 0.6 * g ** 90
  const zenith = [0.17, 0.262, 0.43]
  const horizon = [0.56, 0.68, 0.8]
  const tint = [1, 0.86, 0.66]
  return [0, 1, 2].map((k) => horizon[k] + (zenith[k] - horizon[k]) * up + tint[k] * glow)
}

/** Sunlight on a face square to it, redder when low. @param {number} elevationDeg @returns {number[]} */
export function sunIrradiance(elevationDeg) {
  const air = 1 / Math.max(0.08, Math.sin((elevationDeg * Math.PI) / 180))
  return [0.055, 0.085, 0.155].map((k) => Math.PI * SUN_RADIANCE * 1.12 * Math.exp(-k * air))
}
