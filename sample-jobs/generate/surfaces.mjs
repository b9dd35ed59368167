/** GLSL recipes: what each kind of surface is made of. Each defines `Surface surface()`. Albedos are linear. */

const tile = /* glsl */ `
Surface surface() {
  float seed = vOwn.x, shade = vOwn.y, kind = vOwn.w;
  bool unscrewed = vOwn.z > 1.5;
  float dirt = unscrewed ? vOwn.z - 2.0 : vOwn.z;
  vec2 off = vec2(seed * 7.13, seed * 3.71);
  vec4 coarse = texture(uNoise, vUv / 31.0 + off);
  vec4 grain = texture(uNoise, vUv / 6.5 + off.yx * 3.0);
  vec4 fine = texture(uNoise, vUv / 1.9 + off);
  vec4 broad = texture(uNoise, vWorld.xz / 23.0 + vWorld.y * 0.031);
  vec4 streak = texture(uNoise, vec2(vUv.x / 7.0 + seed * 11.0, vUv.y / 60.0 + seed));
  bool fresh = shade > 0.9;
  vec3 base = mix(vec3(0.305, 0.178, 0.122), vec3(0.225, 0.148, 0.115), smoothstep(0.2, 0.8, seed));
  base = mix(base, vec3(0.35, 0.235, 0.165), smoothstep(0.55, 0.95, fract(seed * 5.7)) * 0.7);
  base *= 1.0 + (fresh ? 0.0 : shade) * 0.32;
  if (fresh) base = mix(vec3(0.375, 0.205, 0.135), vec3(0.335, 0.19, 0.135), seed);
  base *= 0.72 + 0.56 * coarse.b;
  base *= 0.80 + 0.40 * grain.a;
  base = mix(base, base * vec3(1.25, 1.2, 1.14), smoothstep(0.62, 0.78, fine.a) * 0.5);
  base = mix(base, base * 0.62, smoothstep(0.62, 0.8, fine.b) * 0.5);
  float wave = 0.5 - 0.5 * cos(6.28318 * (vUv.x + 1.5) / 6.0);
  float bare = 1.0 - smoothstep(13.2, 13.6, vUv.y);
  float algae = smoothstep(0.50, 0.78, broad.b * 0.55 + streak.b * 0.45) * dirt;
  algae += smoothstep(0.52, 0.75, coarse.b * 0.5 + streak.b * 0.5) * (1.0 - wave) * 0.75 * dirt;
  algae += (1.0 - smoothstep(0.0, 0.32, wave)) * 0.34 * dirt;
  algae *= bare * (fresh ? 0.25 : 1.0);
  base = mix(base, vec3(0.052, 0.047, 0.042), clamp(algae, 0.0, 0.82));
  float lichen = smoothstep(0.665, 0.735, grain.b * 0.45 + coarse.a * 0.55) * bare * dirt;
  base = mix(base, vec3(0.40, 0.40, 0.33), lichen * (fresh ? 0.0 : 0.42));
  float worn = (1.0 - smoothstep(0.1, 0.75, vUv.y + (grain.b - 0.5) * 0.9));
  base = mix(base, base * 1.28 + 0.022, worn * 0.8);
  base = mix(base * 1.12 + vec3(0.03, 0.02, 0.012), base, bare);
  if (vUv.y > 14.0 && kind < 0.2) {
    float hole = min(length(vUv - vec2(3.0, 15.4)), length(vUv - vec2(9.0, 15.4)));
    float rust = 1.0 - smoothstep(0.12, 0.75, hole + (grain.b - 0.5) * 0.3);
    base = mix(base, vec3(0.16, 0.075, 0.035), rust * 0.6);
    base = mix(vec3(0.012), base, smoothstep(0.11, 0.15, hole));
    if (!unscrewed) base = mix(vec3(0.15, 0.085, 0.05) * (0.6 + 0.8 * fine.a), base, smoothstep(0.2, 0.23, length(vUv - vec2(9.0, 15.4))));
  }
  vec3 raw = mix(vec3(0.40, 0.30, 0.235), vec3(0.50, 0.42, 0.35), fine.a) * (0.75 + 0.5 * grain.a);
  if (kind > 0.9) base = raw;
  else if (kind > 0.4) base = raw * 0.5;
  else if (kind > 0.2) base *= 0.85;
  vec3 n = bumped(towardEye(), (coarse.rg - 0.5) * 0.5 + (grain.rg - 0.5) * 0.9 + (fine.rg - 0.5) * 0.8, 0.55);
  return Surface(base, n, 12.0, 0.035, vec3(0.0), 0.0);
}`

const mortar = /* glsl */ `
Surface surface() {
  float dirt = vOwn.z;
  vec4 a = texture(uNoise, vUv / 13.0 + vWorld.y * 0.7);
  vec4 b = texture(uNoise, vUv / 3.1);
  vec3 base = mix(vec3(0.25, 0.21, 0.17), vec3(0.345, 0.295, 0.24), a.b) * (0.7 + 0.6 * b.a);
  base = mix(base, vec3(0.075, 0.07, 0.062), smoothstep(0.42, 0.72, a.b * 0.6 + b.b * 0.4) * dirt);
  if (vOwn.w > 0.5) base *= 0.25;
  return Surface(base, bumped(towardEye(), (a.rg - 0.5) + (b.rg - 0.5) * 1.6, 0.8), 8.0, 0.01, vec3(0.0), 0.0);
}`

const felt = /* glsl */ `
Surface surface() {
  vec4 a = texture(uNoise, vUv / 2.3);
  vec4 b = texture(uNoise, vUv / 0.31);
  vec3 base = mix(vec3(0.045, 0.044, 0.043), vec3(0.105, 0.10, 0.095), b.a) * (0.6 + 0.8 * a.b);
  base = mix(base, vec3(0.17, 0.13, 0.10), smoothstep(0.5, 0.8, a.a) * 0.5);
  float lap = fract(vUv.y / 2.75);
  base *= 0.55 + 0.45 * smoothstep(0.0, 0.03, lap);
  return Surface(base, bumped(towardEye(), (b.rg - 0.5) * 1.4, 0.6), 10.0, 0.03, vec3(0.0), 0.0);
}`

const wood = /* glsl */ `
Surface surface() {
  vec4 a = texture(uNoise, vec2(vUv.x / 3.0, vUv.y * 4.0));
  vec3 base = mix(vec3(0.23, 0.17, 0.115), vec3(0.34, 0.27, 0.19), a.b) * (0.8 + 0.4 * a.a);
  return Surface(base, bumped(towardEye(), a.rg - 0.5, 0.4), 8.0, 0.01, vec3(0.0), 0.0);
}`

/** own: grime strength in z, sort in w (1 valley, 2 lead pipe, 3 painted vent, 4 white trim). */
const metal = /* glsl */ `
Surface surface() {
  vec4 a = texture(uNoise, vUv / 19.0 + vWorld.y * 0.3);
  vec4 b = texture(uNoise, vUv / 3.0);
  vec3 base = vec3(0.40, 0.41, 0.42);
  float shine = 0.16, gloss = 18.0;
  if (vOwn.w > 3.5) { base = vec3(0.72, 0.71, 0.67); shine = 0.12; }
  else if (vOwn.w > 2.5) { base = vec3(0.26, 0.20, 0.165); shine = 0.12; gloss = 14.0; }
  else if (vOwn.w > 1.5) { base = vec3(0.33, 0.335, 0.34); shine = 0.2; gloss = 12.0; }
  base *= 0.75 + 0.5 * a.b;
  float grime = smoothstep(0.45, 0.75, a.b * 0.5 + b.b * 0.5);
  base = mix(base, vec3(0.10, 0.085, 0.07), grime * vOwn.z);
  if (vOwn.w < 1.5) { base = mix(base, vec3(0.20, 0.165, 0.125), 0.8); base = mix(base, vec3(0.13, 0.105, 0.08), (1.0 - smoothstep(0.0, 2.6, abs(vUv.x) + a.b * 2.0 - 0.6)) * 0.8); shine *= 0.5; }
  return Surface(base, bumped(towardEye(), (a.rg - 0.5) * 0.5 + (b.rg - 0.5) * 0.3, 0.5), gloss, shine * (1.0 - grime * 0.7), vec3(0.0), 0.0);
}`

const stucco = /* glsl */ `
Surface surface() {
  vec4 a = texture(uNoise, vUv / 9.0);
  vec4 b = texture(uNoise, vUv / 1.1);
  vec4 c = texture(uNoise, vec2(vUv.x / 3.7, vUv.y / 14.0));
  vec3 base = vOwn.w > 0.5 ? vec3(0.63, 0.60, 0.54) : vec3(0.52, 0.445, 0.345);
  base *= 0.90 + 0.20 * a.b;
  base = mix(base, base * vec3(0.66, 0.64, 0.60), smoothstep(0.55, 0.85, c.b * 0.6 + a.b * 0.4) * smoothstep(4.5, 9.0, vUv.y) * 0.45);
  base = mix(base, vec3(0.25, 0.22, 0.17), (1.0 - smoothstep(0.0, 1.1 + a.b, vUv.y)) * 0.4);
  return Surface(base, bumped(towardEye(), (b.rg - 0.5) * 1.3 + (a.rg - 0.5) * 0.3, 0.55), 8.0, 0.01, vec3(0.0), 0.0);
}`

const white = /* glsl */ `
Surface surface() {
  vec4 a = texture(uNoise, vUv / 5.0);
  vec3 base = vec3(0.70, 0.685, 0.64) * (0.88 + 0.22 * a.b);
  if (vOwn.w > 2.5) base = vec3(0.055, 0.11, 0.125) * (0.85 + 0.3 * a.b);
  else if (vOwn.w > 1.5) base = vec3(0.30, 0.28, 0.25) * (0.85 + 0.3 * a.b);
  return Surface(base, bumped(towardEye(), a.rg - 0.5, 0.15), 20.0, 0.08, vec3(0.0), 0.0);
}`

const glass = /* glsl */ `
Surface surface() {
  vec3 n = bumped(towardEye(), texture(uNoise, vUv / 11.0).rg - 0.5, 0.025);
  vec3 eye = normalize(uEye - vWorld);
  vec3 r = reflect(-eye, n);
  float f = 0.06 + 0.94 * pow(1.0 - max(dot(n, eye), 0.0), 5.0);
  float trees = smoothstep(0.16, 0.10, r.y + texture(uNoise, r.xz * 0.9).b * 0.12);
  vec3 mirror = mix(skyWithClouds(r), vec3(0.045, 0.06, 0.03), r.y < 0.0 ? 0.5 : trees);
  float blind = step(0.35, fract(vUv.y * 5.0)) * 0.5 + 0.5;
  vec3 inside = mix(vec3(0.012, 0.012, 0.014), vec3(0.13, 0.125, 0.11) * blind, step(vOwn.x, vUv.y));
  return Surface(vec3(0.0), n, 200.0, 0.0, mix(inside, mirror, clamp(f + 0.10, 0.0, 1.0)), 0.0);
}`

/** own.w: 0 lawn, 1 concrete drive, 2 street, 3 mulch. */
const ground = /* glsl */ `
Surface surface() {
  vec4 a = texture(uNoise, vUv / 37.0);
  vec4 b = texture(uNoise, vUv / 5.3);
  vec4 c = texture(uNoise, vUv / 0.9);
  vec3 base; float k = 1.0;
  if (vOwn.w < 0.5) {
    base = mix(vec3(0.082, 0.093, 0.034), vec3(0.145, 0.138, 0.062), smoothstep(0.3, 0.75, a.b * 0.6 + b.b * 0.4));
    base = mix(base, vec3(0.22, 0.18, 0.095), smoothstep(0.56, 0.8, b.b * 0.35 + c.b * 0.65) * 0.5);
    base *= (0.55 + 0.5 * c.a) * (0.55 + 0.9 * texture(uNoise, vUv / 2.1).a); k = 2.2;
  } else if (vOwn.w < 1.5) {
    base = vec3(0.37, 0.345, 0.305) * (0.8 + 0.35 * a.b) * (0.86 + 0.28 * c.a);
    vec2 j = abs(fract(vUv / 8.0) - 0.5);
    base *= 0.45 + 0.55 * smoothstep(0.0, 0.006, 0.5 - max(j.x, j.y));
    base = mix(base, vec3(0.12, 0.11, 0.09), smoothstep(0.5, 0.85, texture(uNoise, vUv / 23.0 + 0.4).b) * 0.3); k = 0.3;
  } else if (vOwn.w < 2.5) { base = vec3(0.115, 0.112, 0.108) * (0.86 + 0.24 * a.b) * (0.6 + 0.8 * c.a) * (0.8 + 0.4 * b.a); k = 1.0; }
  else { base = mix(vec3(0.075, 0.048, 0.03), vec3(0.17, 0.11, 0.07), c.a) * (0.7 + 0.6 * b.b); k = 2.5; }
  return Surface(base, bumped(towardEye(), (c.rg - 0.5) * k + (b.rg - 0.5) * 0.5, 0.6), 8.0, 0.01, vec3(0.0), 0.0);
}`

/** own: seed, dryness, how deep inside the crown, sort (0 leaf, 1 bark, 2 grass). */
const leaf = /* glsl */ `
Surface surface() {
  vec3 green = mix(vec3(0.045, 0.075, 0.022), vec3(0.115, 0.14, 0.05), vOwn.x);
  vec3 base = mix(green, vec3(0.26, 0.20, 0.10), vOwn.y);
  float through = 0.55;
  if (vOwn.w > 1.5) { base = mix(mix(vec3(0.085, 0.112, 0.034), vec3(0.165, 0.168, 0.066), vOwn.x), vec3(0.28, 0.23, 0.12), vOwn.y); base *= 0.5 + 0.7 * vUv.y; through = 0.6; }
  else if (vOwn.w > 0.5) { vec4 a = texture(uNoise, vec2(vUv.x / 5.0, vUv.y / 3.0)); vec4 e = texture(uNoise, vec2(vUv.x / 1.7, vUv.y / 0.9)); base = vec3(0.23, 0.20, 0.165) * (0.45 + a.b * 0.6 + e.b * 0.5) * (0.88 + 0.12 * sin(vUv.y * 7.0 + a.a * 6.0)); through = 0.0; }
  base *= 1.0 - 0.55 * vOwn.z;
  return Surface(base, towardEye(), 10.0, 0.012, vec3(0.0), through);
}`

/** Scale, clock face and dial: uv into the printed sheet; own.w 1 makes it a lit screen, 2 plain dark plastic, 3 bright steel. */
const print = /* glsl */ `
Surface surface() {
  vec3 base = texture(uPrint, vUv).rgb;
  vec3 glow = vec3(0.0); float shine = 0.12;
  if (vOwn.w > 2.5) { base = vec3(0.42, 0.42, 0.43); shine = 0.6; }
  else if (vOwn.w > 1.5) { base = vec3(0.022, 0.023, 0.026); shine = 0.3; }
  else if (vOwn.w > 0.5) { glow = base * 0.85; base = vec3(0.01); shine = 0.25; }
  return Surface(base, towardEye(), 40.0, shine, glow, 0.0);
}`

/** Chalk rubbed on a rough tile: holes where the grain is low. */
const chalk = /* glsl */ `
Surface surface() {
  vec4 a = texture(uNoise, vUv / 1.3);
  vec4 b = texture(uNoise, vUv / 5.1);
  float edge = abs(vOwn.x * 2.0 - 1.0);
  if (a.a * 0.6 + b.b * 0.5 < 0.36 + edge * edge * 0.28) discard;
  return Surface(vec3(0.62, 0.66, 0.74), bumped(towardEye(), a.rg - 0.5, 0.6), 8.0, 0.0, vec3(0.0), 0.0);
}`

export const SURFACES = { tile, mortar, felt, wood, metal, stucco, white, glass, ground, leaf, print, chalk }
