import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

/** A folder of built pages as small as can be. */
export function smallPages(folder: string): string {
  mkdirSync(join(folder, 'assets'), { recursive: true })
  writeFileSync(join(folder, 'index.html'), '<!doctype html><title>Battenbook</title>')
  writeFileSync(join(folder, 'assets', 'app-0123.js'), 'export {}')
  return folder
}
