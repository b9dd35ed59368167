import { spawn, spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { createRequire } from 'node:module'
import { homedir } from 'node:os'
import { join } from 'node:path'
import open, { apps } from 'open'
import { electronBinding } from '../hosts/electron/binding.ts'
import { programFolder } from '../program.ts'
import { hasDisplay } from './has-display.ts'
import { print } from './print.ts'
import { serveUntilStopped } from './serve-command.ts'

/**
 * `battenbook start [LIBRARY]`: a window of its own where the Electron runtime is installed; otherwise the same
 * workstation in the browser; without a display, its address.
 */
export async function startCommand(_json: boolean, library: string | undefined): Promise<number> {
  const folder = library ?? defaultLibrary()
  const display = hasDisplay()
  const runtime = display ? electronRuntime() : null
  if (runtime !== null && prepareDriver()) return runWindow(runtime, folder)
  if (display)
    print(
      'The window runtime is not installed here, so the workstation opens in the browser. See "What the window needs" in the README.',
    )
  return serveUntilStopped(folder, {
    port: 0,
    onServing: async ({ entrance }) => {
      print(`Battenbook serves ${folder} at\n  ${entrance}\nStop with Ctrl+C.`)
      if (display) await openInBrowser(entrance)
    },
  })
}

/** The library in the user's documents folder. */
function defaultLibrary(): string {
  const documents = join(homedir(), 'Documents')
  return join(existsSync(documents) ? documents : homedir(), 'Battenbook')
}

/** Path of the Electron runtime; null where the package is there but its runtime could not be fetched. */
function electronRuntime(): string | null {
  try {
    const path: unknown = createRequire(import.meta.url)('electron')
    return typeof path === 'string' && existsSync(path) ? path : null
  } catch {
    return null
  }
}

/** Makes sure that the database driver has a build for the window's runtime beside Node's own. */
function prepareDriver(): boolean {
  if (existsSync(electronBinding(programFolder))) return true
  const script = join(programFolder, 'main', 'hosts', 'electron', 'prepare-driver.js')
  return spawnSync(process.execPath, [script], { stdio: 'inherit' }).status === 0
}

function runWindow(runtime: string, library: string): Promise<number> {
  const window = spawn(runtime, [programFolder, library], { stdio: 'inherit' })
  return new Promise((resolve) => {
    window.once('error', () => resolve(1))
    window.once('exit', (code) => resolve(code ?? 1))
  })
}

/** A window without tabs where the browser offers one, else a tab. */
async function openInBrowser(address: string): Promise<void> {
  const asWindow = await open(address, { app: { name: apps.chrome, arguments: [`--app=${address}`] } }).catch(
    () => null,
  )
  if (asWindow === null) await open(address).catch(() => undefined)
}
