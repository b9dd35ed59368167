// Puts an Electron build of the SQLite driver beside Node's own. Plain JavaScript: it runs before anything is built.
import { spawnSync } from 'node:child_process'
import { copyFileSync, cpSync, existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

const program = dirname(dirname(dirname(dirname(fileURLToPath(import.meta.url)))))
const target = join(program, 'dist', 'electron-native', 'better_sqlite3.node')

if (!existsSync(target)) {
  const require = createRequire(import.meta.url)
  const { version } = JSON.parse(readFileSync(require.resolve('electron/package.json'), 'utf8'))
  const driver = dirname(require.resolve('better-sqlite3/package.json'))
  const copy = join(program, 'dist', 'electron-native', 'driver')
  rmSync(copy, { recursive: true, force: true })
  mkdirSync(dirname(copy), { recursive: true })
  // Only what the fetch needs: the build folder holds Node's binary and must not be taken for Electron's.
  cpSync(driver, copy, { recursive: true, filter: (path) => !path.startsWith(join(driver, 'build')) })
  const fetcher = createRequire(join(driver, 'package.json')).resolve('prebuild-install/bin.js')
  const fetched = spawnSync(process.execPath, [fetcher, '--runtime', 'electron', '--target', version], {
    cwd: copy,
    stdio: 'inherit',
  })
  const binary = join(copy, 'build', 'Release', 'better_sqlite3.node')
  if (fetched.status !== 0 || !existsSync(binary)) {
    process.stderr.write(
      "The database driver for the window's runtime could not be fetched; the workstation opens in the browser instead.\n",
    )
    process.exit(1)
  }
  copyFileSync(binary, target)
  rmSync(copy, { recursive: true, force: true })
}
