import { Command, CommanderError } from 'commander'
import { AppFailure } from '../../app/contract/app-error.ts'
import { programVersion } from '../program.ts'
import { listCommand } from './list-command.ts'
import { newCommand } from './new-command.ts'
import { packetCommand } from './packet-command.ts'
import { print, printError } from './print.ts'
import { serveCommand } from './serve-command.ts'
import { startCommand } from './start-command.ts'
import { takeInCommand } from './take-in-command.ts'
import { verifyCommand } from './verify-command.ts'

/** What the terminal gets back: 0 well, 1 a difference or failure with words, 2 the command was not understood. */
export const exitCodes = { well: 0, failed: 1, misunderstood: 2 } as const

/** Builds the command line. Every command answers with an exit code. */
function buildProgram(finish: (code: number) => void): Command {
  const program = new Command('battenbook')
    .description('From a folder of roof photos to a packet that can be checked line by line.')
    .version(programVersion)
    .option('--json', 'answer in JSON, for other programs')
    .exitOverride()
    .configureHelp({ showGlobalOptions: true })
  const json = () => program.opts<{ json?: boolean }>().json === true
  const run =
    <Args extends unknown[]>(command: (json: boolean, ...args: Args) => Promise<number>) =>
    async (...args: Args) =>
      finish(await command(json(), ...args))
  program.command('list <library>').description('list the jobs of a library').action(run(listCommand))
  program
    .command('new <library>')
    .description('begin a job; with --from, make it from a folder with job.json and photos/')
    .option('--from <jobfolder>', 'folder that describes the job')
    .option('--number <number>', 'job number (otherwise the next free one)')
    .action(run(newCommand))
  program
    .command('take-in <library> <job> <paths...>')
    .description('take photos and other files into a job; running it again adds only what is new')
    .action(run(takeInCommand))
  program
    .command('packet <library> <job>')
    .description("issue the next revision of a job's packet: PDF and evidence bundle")
    .requiredOption('--out <folder>', 'folder for copies of the packet and its bundle')
    .option('--paper <paper>', 'letter or a4', 'letter')
    .option('--photos-per-page <n>', '2, 4 or 6', '4')
    .option('--overrule <reason>', 'let problems that may be overruled stand, for this reason')
    .action(run(packetCommand))
  program.command('verify <path>').description('check an evidence bundle (zip) or a library').action(run(verifyCommand))
  program
    .command('serve <library>')
    .description('serve the workstation for a browser on this computer')
    .option('--port <port>', 'port to use (otherwise any free one)', '0')
    .action(run(serveCommand))
  program
    .command('start [library]')
    .description('open the workstation on a library (otherwise on the one in your documents folder)')
    .action(run(startCommand))
  return program
}

/** Runs the command line and answers its exit code. */
export async function runCommandLine(args: readonly string[]): Promise<number> {
  let code: number = exitCodes.well
  try {
    await buildProgram((given) => (code = given)).parseAsync(args, { from: 'user' })
    return code
  } catch (cause) {
    if (cause instanceof CommanderError) return cause.exitCode === 0 ? exitCodes.well : exitCodes.misunderstood
    if (!(cause instanceof AppFailure)) throw cause
    if (args.includes('--json')) print(JSON.stringify({ ok: false, error: cause.error }))
    else printError(cause.error)
    return exitCodes.failed
  }
}
