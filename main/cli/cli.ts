import { Command, CommanderError } from 'commander'
import { appError, AppFailure, type AppError } from '../../app/contract/app-error.ts'
import { fileFailure } from '../library/file-failure.ts'
import { programVersion } from '../program.ts'
import { demoCommand } from './demo-command.ts'
import { listCommand } from './list-command.ts'
import { newCommand, type NewFlags } from './new-command.ts'
import { packetCommand, type PacketFlags } from './packet-command.ts'
import { print, printError } from './print.ts'
import { serveCommand, type ServeFlags } from './serve-command.ts'
import { startCommand } from './start-command.ts'
import { takeInCommand } from './take-in-command.ts'
import { verifyCommand } from './verify-command.ts'

/** What the terminal gets back: 0 well, 1 a difference or failure with words, 2 the command was not understood. */
const exitCodes = { well: 0, failed: 1, misunderstood: 2 } as const

/** Builds the command line. Every command answers with an exit code, which goes to `finish`. */
function buildProgram({ json, finish }: { json: boolean; finish: (code: number) => void }): Command {
  const program = new Command('battenbook')
    .description('From a folder of roof photos to a packet that can be checked line by line.')
    .version(programVersion)
    .option('--json', 'answer in JSON, for other programs')
    .exitOverride()
    .configureHelp({ showGlobalOptions: true })
    .configureOutput({ writeErr: (text) => (json ? undefined : process.stderr.write(text)) })
  const run = async (answer: Promise<number>) => finish(await answer)
  program
    .command('list <library>')
    .description('list the jobs of a library')
    .action((library: string) => run(listCommand(json, library)))
  program
    .command('new <library>')
    .description('begin a job; with --from, make it from a folder with job.json and photos/')
    .option('--from <jobfolder>', 'folder that describes the job')
    .option('--number <number>', 'job number (otherwise the next free one)')
    .action((library: string, flags: NewFlags) => run(newCommand(json, library, flags)))
  program
    .command('take-in <library> <job> <paths...>')
    .description('take photos and other files into a job; running it again adds only what is new')
    .action((library: string, job: string, paths: string[]) => run(takeInCommand(json, { library, job, paths })))
  program
    .command('packet <library> <job>')
    .description("issue the next revision of a job's packet: PDF and evidence bundle")
    .requiredOption('--out <folder>', 'folder for copies of the packet and its bundle')
    .option('--paper <paper>', 'letter or a4', 'letter')
    .option('--photos-per-page <n>', '2, 4 or 6', '4')
    .option('--cost', 'with prices and totals of the scope, for a recipient who gets them')
    .option('--overrule <reason>', 'let problems that may be overruled stand, for this reason')
    .action((library: string, job: string, flags: PacketFlags) => run(packetCommand(json, { library, job, flags })))
  program
    .command('verify <path>')
    .description('check an evidence bundle (zip) or a library')
    .action((path: string) => run(verifyCommand(json, path)))
  program
    .command('serve <library>')
    .description('serve the workstation for a browser on this computer')
    .option('--port <port>', 'port to use (otherwise any free one)', '0')
    .action((library: string, flags: ServeFlags) => run(serveCommand(json, library, flags)))
  program
    .command('start [library]')
    .description('open the workstation on a library (otherwise on the one in your documents folder)')
    .action((library: string | undefined) => run(startCommand(json, library)))
  program
    .command('demo')
    .description('make the sample job in a library of its own and issue its packet')
    .action(() => run(demoCommand(json)))
  return program
}

/** Runs the command line and answers its exit code. Whatever goes wrong is told in words, or in JSON where that is asked for. */
export async function runCommandLine(args: readonly string[]): Promise<number> {
  const json = args.includes('--json')
  let code: number = exitCodes.well
  try {
    await buildProgram({ json, finish: (given) => (code = given) }).parseAsync(args, { from: 'user' })
    return code
  } catch (cause) {
    if (cause instanceof CommanderError) {
      if (cause.exitCode === 0) return exitCodes.well
      // Otherwise the words are on the terminal already.
      if (json) printFailure(json, misunderstanding(cause))
      return exitCodes.misunderstood
    }
    printFailure(json, inWords(cause))
    return exitCodes.failed
  }
}

function printFailure(json: boolean, error: AppError): void {
  if (json) print(JSON.stringify({ ok: false, error }))
  else printError(error)
}

function misunderstanding({ code, message }: CommanderError): AppError {
  const said = code === 'commander.help' ? 'No command was given.' : message.replace(/^error: /, '').split('\n')[0]
  return appError('invalid', said ?? message, { help: 'See: battenbook --help' })
}

function inWords(cause: unknown): AppError {
  if (cause instanceof AppFailure) return cause.error
  const why = cause instanceof Error ? cause.message : String(cause)
  return fileFailure(cause, 'the library') ?? appError('internal', `Something went wrong inside the program: ${why}`)
}
