#!/usr/bin/env node
// The command itself: plain JavaScript, so that it runs before anything is built, and builds what is missing.
import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'

const program = dirname(dirname(dirname(fileURLToPath(import.meta.url))))
const built = join(program, 'dist', 'main', 'cli.js')
if (!existsSync(built)) {
  process.stderr.write('Building Battenbook first; this takes a few seconds.\n')
  const build = spawnSync('npm', ['run', '--silent', 'build'], {
    cwd: program,
    stdio: ['ignore', 'ignore', 'inherit'],
    shell: process.platform === 'win32',
  })
  if (build.status !== 0) process.exit(1)
}
await import(pathToFileURL(built).href)
