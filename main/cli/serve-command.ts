import { refuse } from '../../app/contract/app-error.ts'
import { openDesk } from '../desk/open-desk.ts'
import { serveDesk } from '../hosts/browser/serve-desk.ts'
import { pagesFolder } from '../program.ts'
import { print } from './print.ts'

/** `battenbook serve LIBRARY [--port PORT]`: serves until it is told to stop. */
export async function serveCommand(json: boolean, library: string, flags: { port: string }): Promise<number> {
  const port = Number(flags.port)
  if (!Number.isInteger(port) || port < 0 || port > 65_535)
    refuse('invalid', `--port ${flags.port} is not a port number.`, { help: 'Use a number up to 65535.' })
  const desk = await openDesk(library, { drop: 'upload' })
  const served = await serveDesk(desk, { port, pagesFolder }).catch(async (cause: unknown) => {
    await desk.close()
    if (cause instanceof Error && 'code' in cause && cause.code === 'EADDRINUSE') {
      refuse('conflict', `Port ${port} is in use.`, { help: 'Choose another port, or leave --port out.' })
    }
    throw cause
  })
  if (json) print(JSON.stringify({ ok: true, address: served.address, entrance: served.entrance }))
  else
    print(
      `Battenbook serves ${library} at\n  ${served.entrance}\nOpen this address in a browser on this computer. Stop with Ctrl+C.`,
    )
  await untilToldToStop()
  await served.close()
  await desk.close()
  return 0
}

/** Waits for Ctrl+C or the system's wish to stop. */
export function untilToldToStop(): Promise<void> {
  return new Promise((resolve) => {
    process.once('SIGINT', () => resolve())
    process.once('SIGTERM', () => resolve())
  })
}
