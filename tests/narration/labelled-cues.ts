import { readdirSync, readFileSync } from 'node:fs'
import type { Cue } from '../../app/narration/cue.ts'

/** What a careful listener would write down for a cue. */
export interface LabelledFinding {
  readonly component: string
  readonly condition: string
  /** As in README.md beside the cues; null where nothing is said of it. */
  readonly extent: string | null
  /** Letters of the facets meant; null where it doesn't matter. */
  readonly facets: readonly string[] | null
  readonly measures: readonly { readonly what: string; readonly value: number; readonly forceLbf: number | null }[]
}

/** One speaker's cues with their labels, in order. */
export interface LabelledRun {
  readonly name: string
  readonly cues: readonly Cue[]
  readonly findings: readonly (readonly LabelledFinding[])[]
}

const FOLDER = 'tests/narration/cues'
const CUE_MS = 5000
const GAP_MS = 900

/** Sets of cues by what they are for, as in README.md beside them; a set may have no files. */
export type CueSet = 'dev' | 'dev2' | 'dev3' | 'dev4' | 'fresh' | 'nothing'

/** The runs of all files of a set: `dev-terse.txt`, or `nothing.txt`. */
export function labelledRuns(set: CueSet): readonly LabelledRun[] {
  return readdirSync(FOLDER)
    .filter((name) => name === `${set}.txt` || (name.startsWith(`${set}-`) && name.endsWith('.txt')))
    .toSorted()
    .flatMap((name) => runsOf(readFileSync(`${FOLDER}/${name}`, 'utf8')))
}

function runsOf(text: string): readonly LabelledRun[] {
  const runs: { name: string; cues: Cue[]; findings: (readonly LabelledFinding[])[] }[] = []
  for (const line of text.split('\n').filter((one) => one.trim() !== '')) {
    if (line.startsWith('#')) {
      runs.push({ name: line.slice(1).trim(), cues: [], findings: [] })
      continue
    }
    const run = runs.at(-1)
    const [said = '', labels = '', ...rest] = line.split(' | ')
    if (run === undefined || labels === '' || rest.length > 0) throw new Error(`Not a labelled cue: ${line}`)
    const startMs = run.cues.length * (CUE_MS + GAP_MS)
    run.cues.push({ startMs, endMs: startMs + CUE_MS, text: said.trim(), speaker: '' })
    run.findings.push(labels.trim() === '-' ? [] : labels.split(';').map((label) => findingOf(label.trim())))
  }
  return runs
}

function findingOf(label: string): LabelledFinding {
  const [component = '', condition = '', ...rest] = label.split(/\s+/)
  const place = rest.find((part) => part.startsWith('@'))
  const measures = rest
    .filter((part) => part.includes(':'))
    .map((part) => {
      const [what = '', amount = ''] = part.split(':')
      const [value, force] = amount.split('/')
      return { what, value: Number(value), forceLbf: force === undefined ? null : Number(force) }
    })
  return {
    component,
    condition,
    extent: rest.find((part) => !part.startsWith('@') && !part.includes(':')) ?? null,
    facets: place === undefined ? null : place === '@-' ? [] : place.slice(1).split(','),
    measures,
  }
}
