import { existsSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import packageJson from '../package.json' with { type: 'json' }

export const programVersion: string = packageJson.version

/** The program's own folder: the nearest one above this file that holds the sample jobs. */
export const programFolder = findProgramFolder(dirname(fileURLToPath(import.meta.url)))

export const sampleFolder = join(programFolder, 'sample-jobs', 'heron-spit')

/** The built pages of the workstation. */
export const pagesFolder = join(programFolder, 'dist', 'renderer')

function findProgramFolder(from: string): string {
  if (existsSync(join(from, 'sample-jobs'))) return from
  const above = dirname(from)
  return above === from ? from : findProgramFolder(above)
}
