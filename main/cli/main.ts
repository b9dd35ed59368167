import { runCommandLine } from './cli.ts'

// A reader that stops early, such as `head`, is no failure.
process.stdout.on('error', (cause: NodeJS.ErrnoException) => {
  if (cause.code !== 'EPIPE') throw cause
})

process.exitCode = await runCommandLine(process.argv.slice(2))
