// Roofs over random outlines against every law and against CGAL's straight skeleton, then how long a roof takes.
//   npm run bench:skeleton [-- --outlines 10000] [-- --seed 1]
// CGAL stands in as the npm package `straight-skeleton`, a tool of tests and benches that is never shipped (its straight
// skeleton is GPL-3). It knows one pitch and no gables, so that other roofs are held against the laws alone.
import { cpus } from 'node:os'
import { pathToFileURL } from 'node:url'
import { parseArgs } from 'node:util'
import fc from 'fast-check'
import { build } from 'vite'
import { houseOfWings, numbersFrom } from './house-of-wings.mjs'

const { values } = parseArgs({
  options: { outlines: { type: 'string', default: '10000' }, seed: { type: 'string', default: '1' } },
})
const seed = Number(values.seed)
const BUILT = 'dist/bench-skeleton'
const tools = await load({
  roof: 'app/roof/skeleton/build-roof.ts',
  check: 'app/roof/skeleton/check-outline.ts',
  laws: 'tests/builders/roof-laws.ts',
  families: 'tests/builders/outline-families.ts',
  outside: 'tests/builders/outside-skeleton.ts',
  outlines: 'tests/builders/outlines.ts',
})
const { anyPitch, brokenLaws, buildRoof, checkRoofOutline, eave, oneInFourGable, outlineFamilies, outlines } = tools
const EDGES = { 'one pitch': fc.constant(eave(12)), 'mixed pitches': anyPitch, gables: oneInFourGable }

console.log(`${cpus().length} x ${cpus()[0]?.model ?? 'unknown processor'}; Node ${process.version}; seed ${seed}`)
await tools.loadOutsideSkeleton()
const found = await lawsAndLibrary()
console.table(found.table)
console.log(`${found.sound} of ${found.all} sound`)
for (const fault of found.faults) console.log(fault)
if (found.sound !== found.all) process.exitCode = 1
console.table(times())

/** TypeScript files of the project as modules that Node runs, by name. */
async function load(files) {
  await build({
    configFile: false,
    publicDir: false,
    logLevel: 'warn',
    build: {
      ssr: true,
      outDir: BUILT,
      emptyOutDir: true,
      minify: false,
      rollupOptions: { input: files, output: { format: 'es', entryFileNames: '[name].mjs' } },
    },
  })
  const modules = {}
  for (const name of Object.keys(files))
    Object.assign(modules, await import(pathToFileURL(`${BUILT}/${name}.mjs`).href))
  return modules
}

async function lawsAndLibrary() {
  const table = []
  const faults = []
  let all = 0
  let sound = 0
  const kinds = Object.keys(EDGES)
  const parts = outlineFamilies.length * kinds.length
  const total = Number(values.outlines)
  for (const [familyAt, [name, family]] of outlineFamilies.entries()) {
    for (const [kindAt, kind] of kinds.entries()) {
      const part = familyAt * kinds.length + kindAt
      const count = Math.floor((total * (part + 1)) / parts) - Math.floor((total * part) / parts)
      const counts = { outlines: 0, 'laws kept': 0, 'gables all round': 0, 'as CGAL': 0, 'no answer': 0, faults: 0 }
      for (const drawn of fc.sample(outlines(family, EDGES[kind]), { numRuns: count, seed: seed + part })) {
        const verdict = await judge(drawn, kind === 'one pitch')
        counts.outlines++
        counts[verdict.law]++
        if (verdict.library !== null) counts[verdict.library]++
        if (verdict.fault !== null && faults.length < 20) faults.push(`${name}, ${kind}: ${verdict.fault}`)
        all++
        if (verdict.fault === null) sound++
      }
      console.error(`${name}, ${kind}: ${JSON.stringify(counts)}`)
      table.push({ family: name, edges: kind, ...counts })
    }
  }
  return { table, faults, all, sound }
}

/** One outline: does its roof obey the laws, and are its facets as large as the library has them? */
async function judge(outline, isOnePitch) {
  const wrong = (what) => ({ law: 'faults', library: null, fault: `${what} ${JSON.stringify(outline)}` })
  const result = buildRoof(outline)
  if (!result.ok) {
    const isGablesAlone = !isOnePitch && result.faults.every(({ kind }) => kind === 'no-slope')
    return isGablesAlone
      ? { law: 'gables all round', library: null, fault: null }
      : wrong(JSON.stringify(result.faults))
  }
  const broken = brokenLaws(outline, result.roof)
  if (broken.length > 0) return wrong(broken.join('; '))
  if (!isOnePitch) return { law: 'laws kept', library: null, fault: null }
  const rounded = inSinglePrecision(outline)
  if (checkRoofOutline(rounded).length > 0) return { law: 'laws kept', library: 'no answer', fault: null }
  const own = buildRoof(rounded)
  const theirs = await tools.outsideSkeleton([rounded.outer, ...rounded.courtyards].map((ring) => ring.corners))
  if (!theirs.ok) return { law: 'laws kept', library: 'no answer', fault: null }
  if (!own.ok) return wrong(`rounded: ${JSON.stringify(own.faults)}`)
  const differs = own.roof.facets.find((facet) => {
    const faces = facet.eaves.map(({ ring, edge }) => theirs.faceAt(ring, edge))
    const areaSqFt = faces.reduce((sum, face) => sum + (face?.areaSqFt ?? NaN), 0)
    const roundingSqFt = faces.reduce((sum, face) => sum + (face?.roundingSqFt ?? NaN), 0)
    return !(Math.abs(facet.planAreaSqFt - areaSqFt) <= 1e-3 * areaSqFt + roundingSqFt)
  })
  return differs === undefined
    ? { law: 'laws kept', library: 'as CGAL', fault: null }
    : wrong(`the facet of ${JSON.stringify(differs.eaves)} differs`)
}

/** Corners read to the 16,384th of a foot: on numbers next to zero the library may never come to an end. */
function inSinglePrecision(outline) {
  const read = (ft) => Math.round(ft * 2 ** 14) / 2 ** 14
  const drawn = [outline.outer, ...outline.courtyards].map((ring) =>
    ring.corners.map(({ xFt, yFt }) => ({ xFt: read(xFt), yFt: read(yFt) })),
  )
  const [outer, ...courtyards] = tools
    .inSinglePrecision(drawn)
    .map((corners) => ({ corners, edges: corners.map(() => outline.outer.edges[0]) }))
  return { outer, courtyards }
}

/** Median milliseconds of a roof by the number of edges, and by what power of it the time grows from the row before. */
function times() {
  const shapes = { 'house of wings': houseOfWings, 'random rectilinear': steps, star }
  return Object.entries(shapes).flatMap(([shape, make]) => {
    let before = null
    return [20, 50, 100, 200, 500, 1000].map((edges) => {
      const random = numbersFrom(edges + seed)
      const drawn = Array.from({ length: 5 }, () => soundOutline(() => make(edges, random), random))
      const runs = edges > 200 ? 1 : 5
      const ms = []
      let failed = 0
      for (let run = 0; run <= runs; run++) {
        for (const outline of drawn) {
          const start = performance.now()
          const result = buildRoof(outline)
          if (run > 0) ms.push(performance.now() - start)
          if (!result.ok && run === 0) failed++
        }
      }
      const median = ms.toSorted((a, b) => a - b)[ms.length >> 1]
      const power = before === null ? null : Math.log(median / before.median) / Math.log(edges / before.edges)
      before = { edges, median }
      const facts = { shape, edges, 'median, ms': Number(median.toFixed(2)) }
      return { ...facts, 'grows by power': power === null ? '' : power.toFixed(2), 'without a roof': failed }
    })
  })
}

/** Shapes until one is an outline; now and then two random corners fall on each other. */
function soundOutline(make, random) {
  for (;;) {
    const corners = make()
    const pitches = corners.map(() => 4 + Math.floor(random() * 5))
    const outline = { outer: tools.ringOf(corners, pitches), courtyards: [] }
    if (checkRoofOutline(outline).length === 0) return outline
  }
}

/** Stairs of random treads and risers round a middle: all corners square, every second one or so reflex. */
function steps(edges, random) {
  const heights = Array.from({ length: Math.floor(edges / 4) }, () => 10 + random() * 60)
  const depths = heights.map(() => 10 + random() * 60)
  const wide = heights.map(() => 3 + random() * 9)
  let x = 0
  const top = []
  const low = []
  heights.forEach((height, i) => {
    top.push({ xFt: x, yFt: height }, { xFt: x + wide[i], yFt: height })
    low.push({ xFt: x, yFt: -depths[i] }, { xFt: x + wide[i], yFt: -depths[i] })
    x += wide[i]
  })
  return [...low, ...top.toReversed()]
}

function star(edges, random) {
  return Array.from({ length: edges }, (_, i) => {
    const angle = ((i + 0.8 * random()) / edges) * 2 * Math.PI
    const reach = (0.5 + 0.5 * random()) * Math.max(50, edges)
    return { xFt: reach * Math.cos(angle), yFt: reach * Math.sin(angle) }
  })
}
