import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, readdirSync, rmSync, statSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { fileURLToPath } from 'node:url'

/** The program's own folder. */
export const programFolder = dirname(dirname(fileURLToPath(import.meta.url)))

/** The command as a person runs it. */
export const commandPath = join(programFolder, 'main', 'cli', 'battenbook.js')

/** Builds the main side, and the preload, when the build is missing or older than its sources. */
export async function ensureBuilt(): Promise<void> {
  await oneAtATime(() => {
    const built = ['cli.js', 'preload.cjs'].map((name) => join(programFolder, 'dist', 'main', name))
    const newest = newestSource(['app', 'main'])
    if (
      built.every((path) => existsSync(path)) &&
      statSync(join(programFolder, 'dist', 'main', 'cli.js')).mtimeMs > newest
    )
      return
    for (const config of ['vite.main.config.ts', 'vite.preload.config.ts']) build(config)
  })
}

/** Builds the pages when there are none or they are older than their sources. */
export async function ensurePagesBuilt(): Promise<void> {
  await oneAtATime(() => {
    const page = statSync(join(programFolder, 'dist', 'renderer', 'index.html'), { throwIfNoEntry: false })
    if (page === undefined || page.mtimeMs <= newestSource(['app', 'renderer'])) build('vite.renderer.config.ts')
  })
}

/** Test files run side by side; only one of them may build. A lock older than any build is nobody's. */
async function oneAtATime(work: () => void): Promise<void> {
  const lock = join(programFolder, 'dist', '.being-built')
  mkdirSync(dirname(lock), { recursive: true })
  for (;;) {
    try {
      mkdirSync(lock)
      break
    } catch {
      if (Date.now() - (statSync(lock, { throwIfNoEntry: false })?.mtimeMs ?? Date.now()) > 120_000)
        rmSync(lock, { recursive: true, force: true })
      await wait(100)
    }
  }
  try {
    work()
  } finally {
    rmSync(lock, { recursive: true, force: true })
  }
}

function build(config: string): void {
  const vite = join(programFolder, 'node_modules', 'vite', 'bin', 'vite.js')
  const made = spawnSync(process.execPath, [vite, 'build', '--config', config, '--logLevel', 'warn'], {
    cwd: programFolder,
    encoding: 'utf8',
  })
  if (made.status !== 0) throw new Error(`The build failed:\n${made.stdout}\n${made.stderr}`)
}

function newestSource(folders: readonly string[]): number {
  return Math.max(
    ...folders.flatMap((folder) =>
      readdirSync(join(programFolder, folder), { recursive: true, encoding: 'utf8' })
        .filter((name) => /\.(tsx?|css|html|svg)$/.test(name) && !/\.test\.tsx?$/.test(name))
        .map((name) => statSync(join(programFolder, folder, name)).mtimeMs),
    ),
  )
}
