import { rm } from 'node:fs/promises'
import { join, relative } from 'node:path'
import { refuse } from '../../app/contract/app-error.ts'
import { isKept } from '../library/keeper.ts'
import { programFolder, sampleFolder } from '../program.ts'
import { hasDisplay } from './has-display.ts'
import { newCommand } from './new-command.ts'
import { packetCommand } from './packet-command.ts'
import { print } from './print.ts'
import { startCommand } from './start-command.ts'
import { withDesk } from './with-desk.ts'

/** The sample job issues with a few things left to mend, on purpose; this is the reason the log gets. */
const WHY = 'Sample job: left to be seen.'

/**
 * `battenbook demo`: a fresh library in a folder of its own, the sample job taken in, its packet issued, the paths
 * printed. With a display the workstation opens on it; without one the command that serves it is printed.
 */
export async function demoCommand(json: boolean): Promise<number> {
  const folder = join(programFolder, 'demo')
  const library = join(folder, 'library')
  const out = join(folder, 'packet')
  if (isKept(library)) {
    refuse('locked', 'The demo library is open in another Battenbook.', {
      help: 'Close that window or stop its command, then run the demo again.',
    })
  }
  await rm(folder, { recursive: true, force: true })
  const made = await newCommand(json, library, { from: sampleFolder })
  if (made !== 0) return made
  const { jobs } = await withDesk(library, { make: false }, ({ ask }) => ask('jobs.list', {}))
  const job = jobs[0]?.number ?? refuse('not-found', 'The sample job was not made.')
  await packetCommand(json, { library, job, flags: { out, paper: 'letter', photosPerPage: '4', overrule: WHY } })
  if (hasDisplay()) return startCommand(json, library)
  if (!json) print(`To open the workstation on it:\n  npm run battenbook -- serve ${relative(process.cwd(), library)}`)
  return 0
}
