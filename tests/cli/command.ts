import { spawn } from 'node:child_process'
import { commandPath } from '../built-program.ts'

/** What a run of the command came to. */
export interface Run {
  readonly code: number | null
  readonly stdout: string
  readonly stderr: string
}

/** Runs `battenbook` in a process of its own and waits for its end. */
export function battenbook(...args: string[]): Promise<Run> {
  const child = spawn(process.execPath, [commandPath, ...args], { stdio: ['ignore', 'pipe', 'pipe'] })
  let stdout = ''
  let stderr = ''
  child.stdout.on('data', (part: Buffer) => (stdout += part.toString('utf8')))
  child.stderr.on('data', (part: Buffer) => (stderr += part.toString('utf8')))
  return new Promise((resolve, reject) => {
    child.once('error', reject)
    child.once('close', (code) => resolve({ code, stdout, stderr }))
  })
}
