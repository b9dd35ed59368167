import { spawn } from 'node:child_process'
import { createInterface } from 'node:readline'
import { z } from 'zod'
import { commandPath } from '../built-program.ts'

/** A library that is served to browsers on this machine. */
export interface ServedLibrary {
  readonly folder: string
  /** The address that lets a browser in. */
  readonly entrance: string
  readonly address: string
  /** Tells the program to stop and answers its exit code. */
  readonly stop: () => Promise<number | null>
}

const told = z.object({ address: z.string(), entrance: z.string() })

/** Starts `battenbook serve FOLDER --json` and waits for what it prints. */
export async function serveLibrary(folder: string): Promise<ServedLibrary> {
  const child = spawn(process.execPath, [commandPath, 'serve', folder, '--json'], {
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  const ended = new Promise<number | null>((resolve) => child.once('exit', (code) => resolve(code)))
  const firstLine = new Promise<string>((resolve, reject) => {
    createInterface(child.stdout).once('line', resolve)
    void ended.then((code) => reject(new Error(`It ended with ${code} before it served.`)))
  })
  const line = await firstLine
  const serving = told.safeParse(JSON.parse(line))
  if (!serving.success) throw new Error(`It does not serve: ${line}`)
  const { address, entrance } = serving.data
  return {
    folder,
    address,
    entrance,
    stop() {
      child.kill('SIGTERM')
      return ended
    },
  }
}
