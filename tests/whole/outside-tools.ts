import { spawnSync } from 'node:child_process'

/** What a run of another program came to. */
interface ToolRun {
  readonly code: number | null
  readonly text: string
}

/** Runs a program that is not ours, in a folder; both of what it says as one text. */
export function runTool(name: string, args: readonly string[], folder: string): ToolRun {
  const { status, stdout, stderr } = spawnSync(name, args, {
    cwd: folder,
    encoding: 'utf8',
    maxBuffer: 64 * 1024 * 1024,
    env: { ...process.env, LC_ALL: 'C.UTF-8' },
  })
  return { code: status, text: `${stdout}${stderr}` }
}

/** True when this machine has the program; where it has not, what needs it is skipped by name. */
export function hasTool(name: string): boolean {
  return spawnSync(name, ['--version'], { stdio: 'ignore' }).error === undefined
}
