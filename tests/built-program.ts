import { spawnSync } from 'node:child_process'
import { existsSync, readdirSync, statSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

/** The program's own folder. */
export const programFolder = dirname(dirname(fileURLToPath(import.meta.url)))

/** The command as a person runs it. */
export const commandPath = join(programFolder, 'main', 'cli', 'battenbook.js')

/** Builds the main side, and the preload, when the build is missing or older than its sources. */
export function ensureBuilt(): void {
  const built = join(programFolder, 'dist', 'main', 'cli.js')
  const preload = join(programFolder, 'dist', 'main', 'preload.cjs')
  if (existsSync(built) && existsSync(preload) && statSync(built).mtimeMs > newestSource()) return
  for (const config of ['vite.main.config.ts', 'vite.preload.config.ts']) build(config)
}

/** Builds the pages when there are none. */
export function ensurePagesBuilt(): void {
  if (!existsSync(join(programFolder, 'dist', 'renderer', 'index.html'))) build('vite.renderer.config.ts')
}

function build(config: string): void {
  const vite = join(programFolder, 'node_modules', 'vite', 'bin', 'vite.js')
  const made = spawnSync(process.execPath, [vite, 'build', '--config', config, '--logLevel', 'warn'], {
    cwd: programFolder,
    encoding: 'utf8',
  })
  if (made.status !== 0) throw new Error(`The build failed:\n${made.stdout}\n${made.stderr}`)
}

function newestSource(): number {
  return Math.max(
    ...['app', 'main'].flatMap((folder) =>
      readdirSync(join(programFolder, folder), { recursive: true, encoding: 'utf8' })
        .filter((name) => name.endsWith('.ts') && !name.endsWith('.test.ts'))
        .map((name) => statSync(join(programFolder, folder, name)).mtimeMs),
    ),
  )
}
