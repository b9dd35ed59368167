import { randomUUID } from 'node:crypto'
import { userInfo } from 'node:os'
import { withFileWords } from '../library/file-failure.ts'
import { keepLibrary } from '../library/keeper.ts'
import { openLibrary } from '../library/open-library.ts'
import { sweepLibrary } from '../library/sweep.ts'
import { programVersion, sampleFolder } from '../program.ts'
import { createDesk, type Desk } from './desk.ts'
import { openLogFile } from './log-file.ts'

/**
 * Opens the library in a folder, puts it in order and sets a desk up over it; what every host and the terminal begin with.
 *
 * @throws AppFailure `newer-library`, `damaged-library`, `no-permission`, `disk-full` or `locked`
 */
export async function openDesk(
  folder: string,
  host: { drop: 'paths' | 'upload'; nativeBinding?: string },
): Promise<Desk> {
  const now = () => Date.now()
  const { nativeBinding } = host
  const library = openLibrary(folder, { nowMs: now(), ...(nativeBinding === undefined ? {} : { nativeBinding }) })
  const log = openLogFile(library.layout.logs, now)
  let giveBack = () => {}
  try {
    await withFileWords(folder, async () => {
      giveBack = keepLibrary(library.layout)
      for (const name of sweepLibrary(library)) log.report(`moved ${name} to unfiled/: no job knows it`)
    })
  } catch (cause) {
    giveBack()
    library.close()
    await log.close()
    throw cause
  }
  const desk = createDesk({
    library,
    now,
    newId: randomUUID,
    defaultOperator: accountName(),
    report: log.report,
    programVersion,
    sampleFolder,
    drop: host.drop,
  })
  return {
    ...desk,
    close: async () => {
      await desk.close()
      giveBack()
      await log.close()
    },
  }
}

/** The name of the account on this computer, until a person gives theirs. */
function accountName(): string {
  try {
    return userInfo().username
  } catch {
    return 'office'
  }
}
