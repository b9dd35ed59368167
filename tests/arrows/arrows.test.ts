import { spawnSync } from 'node:child_process'
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { z } from 'zod'
import { projectFiles } from '../builders/project-files.ts'

const PLANTED = 'tests/arrows/planted'
const imports = 'eslint(no-restricted-imports)'

/** Every planted file with a fault: the rule that has to report it and, where the config has words of its own, those. */
const faults: Readonly<Record<string, { rule: string; says?: string }>> = {
  'app/roof/reads-a-file.ts': { rule: imports, says: 'app is pure' },
  'app/roof/reads-a-file-later.ts': { rule: imports, says: 'app is pure' },
  'app/roof/passes-node-on.ts': { rule: imports, says: 'app is pure' },
  'app/packet/draws-a-pdf.ts': { rule: imports, says: 'app is pure' },
  'app/packet/shows-a-screen.ts': { rule: imports, says: 'app is pure' },
  'app/roof/imports-main.ts': { rule: imports, says: 'app imports nothing outside app' },
  'app/roof/imports-a-screen.ts': { rule: imports, says: 'app imports nothing outside app' },
  'app/roof/asks-the-clock.ts': { rule: 'eslint(no-restricted-globals)' },
  'app/roof/reads-the-environment.ts': { rule: 'eslint(no-restricted-globals)' },
  'app/roof/touches-the-page.ts': { rule: 'eslint(no-restricted-globals)' },
  'app/roof/reads-the-bare-system.ts': { rule: imports, says: 'app is pure' },
  'app/roof/asks-the-globe.ts': { rule: 'eslint(no-restricted-globals)' },
  'app/roof/rolls-dice.ts': { rule: 'eslint(no-restricted-properties)', says: 'app has no chance in it' },
  'app/cycle/one.ts': { rule: 'import(no-cycle)' },
  'app/cycle/two.ts': { rule: 'import(no-cycle)' },
  'app/evidence/forgets-a-promise.ts': { rule: 'typescript(no-floating-promises)' },
  'app/evidence/forgets-a-case.ts': { rule: 'typescript(switch-exhaustiveness-check)' },
  'app/evidence/says-any.ts': { rule: 'typescript(no-explicit-any)' },
  'app/evidence/insists.ts': { rule: 'typescript(no-non-null-assertion)' },
  'app/evidence/falls-through.ts': { rule: 'eslint(no-fallthrough)' },
  'app/evidence/swallows.ts': { rule: 'eslint(no-empty)' },
  'app/evidence/four-parameters.ts': { rule: 'eslint(max-params)' },
  'app/evidence/long-function.ts': { rule: 'eslint(max-lines-per-function)' },
  'app/evidence/long-file.ts': { rule: 'eslint(max-lines)' },
  'app/evidence/BadName.ts': { rule: 'unicorn(filename-case)' },
  'renderer/plan/imports-main.tsx': { rule: imports, says: 'Screens go through app/contract, never into main' },
  'renderer/plan/reads-a-file.ts': { rule: imports, says: 'Screens reach the world through app/contract only' },
  'renderer/plan/asks-the-database.ts': { rule: imports, says: 'Screens reach the world through app/contract only' },
  'main/store/imports-the-desk.ts': { rule: imports, says: 'The store serves the desk' },
  'main/store/imports-the-library.ts': { rule: imports, says: 'The store serves the desk' },
  'main/library/imports-publishing.ts': { rule: imports, says: 'The library serves the desk' },
  'main/library/asks-the-database.ts': { rule: imports, says: 'Not in the library' },
  'main/publish/imports-the-desk.ts': { rule: imports, says: 'Publishing serves the desk' },
  'main/publish/asks-the-database.ts': { rule: imports, says: 'not in publishing' },
  'main/publish/draws-a-pdf.ts': { rule: imports, says: 'pdfkit lives in main/publish/pdf' },
  'main/desk/imports-a-host.ts': { rule: imports, says: 'The desk does not know who stands in front of it' },
  'main/desk/asks-the-database.ts': { rule: imports, says: 'Not at the desk' },
  'main/desk/draws-a-pdf.ts': { rule: imports, says: 'Not at the desk' },
  'main/desk/opens-a-window.ts': { rule: imports, says: 'Not at the desk' },
  'main/hosts/browser/imports-the-store.ts': { rule: imports, says: 'Hosts talk to the desk only' },
  'main/hosts/browser/imports-publishing.ts': { rule: imports, says: 'Hosts talk to the desk only' },
  'main/hosts/browser/opens-a-window.ts': { rule: imports, says: 'Electron lives in main/hosts/electron' },
  'main/cli/imports-a-screen.ts': { rule: imports, says: 'The terminal talks to the desk' },
  'main/cli/imports-the-store.ts': { rule: imports, says: 'The terminal talks to the desk' },
  'main/cli/asks-the-database.ts': { rule: imports, says: 'The terminal talks to the desk' },
  'main/cli/draws-a-pdf.ts': { rule: imports, says: 'The terminal talks to the desk' },
  'main/cli/opens-a-window.ts': { rule: imports, says: 'The terminal talks to the desk' },
  'sample-jobs/nine-parameters.ts': { rule: 'eslint(max-params)' },
}

/** Planted files that faults point to and that are themselves in order. */
const clean = [
  'app/job/pitch.ts',
  'app/roof/clean.ts',
  'main/desk/desk.ts',
  'main/hosts/host.ts',
  'main/library/originals.ts',
  'main/publish/packet.ts',
  'main/store/rows.ts',
  'renderer/plan/screen.ts',
]

const reportSchema = z.object({
  diagnostics: z.array(z.object({ code: z.string(), filename: z.string(), help: z.string().default('') })),
})
const configSchema = z.object({ overrides: z.array(z.object({ files: z.array(z.string()) })) })

/**
 * The planted files stand in a folder of their own with a copy of the config, since its folders are counted from where it
 * lies; there they are at `app/...` and `main/...` like the real ones.
 */
let folder = ''
let report: z.output<typeof reportSchema>['diagnostics'] = []

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'battenbook-arrows-'))
  cpSync(PLANTED, folder, { recursive: true })
  cpSync('.oxlintrc.json', join(folder, '.oxlintrc.json'))
  symlinkSync(resolve('node_modules'), join(folder, 'node_modules'), 'dir')
  const oxlint = join(folder, 'node_modules', '.bin', 'oxlint')
  const run = spawnSync(oxlint, ['--type-aware', '--format', 'json'], { cwd: folder, encoding: 'utf8' })
  report = reportSchema.parse(JSON.parse(run.stdout)).diagnostics
})

afterAll(() => rmSync(folder, { recursive: true, force: true }))

describe('a fault planted in a copy of the house', () => {
  it.each(Object.entries(faults))(
    '%s is reported by its rule, and nothing else about it is',
    (file, { rule, says = '' }) => {
      const about = report.filter((one) => one.filename.replaceAll('\\', '/') === file)
      expect([...new Set(about.map((one) => one.code))]).toEqual([rule])
      for (const one of about) expect(one.help).toContain(says)
    },
  )

  it('is all that is reported: files in order are left alone', () => {
    expect(report.map((one) => one.filename).filter((file) => clean.includes(file))).toEqual([])
  })

  it('is one of these: no planted file is forgotten', () => {
    const planted = readdirSync(PLANTED, { recursive: true, encoding: 'utf8' })
      .map((file) => file.replaceAll('\\', '/'))
      .filter((file) => /\.tsx?$/.test(file))
    expect(planted.toSorted()).toEqual([...Object.keys(faults), ...clean].toSorted())
  })
})

describe('the rules by folder', () => {
  const { overrides } = configSchema.parse(JSON.parse(readFileSync('.oxlintrc.json', 'utf8')))

  it.each(overrides)('for $files are about at least one file that exists', ({ files }) => {
    const patterns = files.map(regExpOf)
    const real = projectFiles().filter((file) => !file.startsWith(PLANTED))
    expect(real.find((file) => patterns.some((pattern) => pattern.test(file)))).toBeDefined()
  })

  it('are about planted faults in every folder of the house', () => {
    const folders = [
      'app',
      'renderer',
      'main/store',
      'main/library',
      'main/publish',
      'main/desk',
      'main/hosts',
      'main/cli',
    ]
    for (const name of folders) expect(Object.keys(faults).some((file) => file.startsWith(`${name}/`))).toBe(true)
  })
})

/** The globs of the config have folders, `**` and `*` only. */
function regExpOf(glob: string): RegExp {
  const source = glob
    .replaceAll(/[.+?^${}()|[\]]/g, String.raw`\$&`)
    .replaceAll('**/', '\u0000')
    .replaceAll('**', '\u0001')
    .replaceAll('*', '[^/]*')
    .replaceAll('\u0000', '(?:.*/)?')
    .replaceAll('\u0001', '.*')
  return new RegExp(`^${source}$`)
}
