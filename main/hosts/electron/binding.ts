import { join } from 'node:path'

/** Where the SQLite driver built for Electron's runtime stands, beside Node's own build. */
export function electronBinding(programFolder: string): string {
  return join(programFolder, 'dist', 'electron-native', 'better_sqlite3.node')
}
