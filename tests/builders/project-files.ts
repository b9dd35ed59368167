import { readdirSync } from 'node:fs'

/** Folders that tools make: nothing in them is written by hand. */
const MADE = new Set(['node_modules', 'dist', 'demo', 'coverage', '.git'])

/** Every file of the project that is written by hand, from the repository's root, with forward slashes. */
export function projectFiles(folder = ''): readonly string[] {
  return readdirSync(folder === '' ? '.' : folder, { withFileTypes: true }).flatMap((entry) => {
    const path = folder === '' ? entry.name : `${folder}/${entry.name}`
    if (entry.isDirectory()) return MADE.has(entry.name) ? [] : projectFiles(path)
    return entry.isFile() ? [path] : []
  })
}
