import { appError, AppFailure, refuse } from '../../app/contract/app-error.ts'
import { openDesk } from '../desk/open-desk.ts'
import { serveDesk } from '../hosts/browser/serve-desk.ts'
import { pagesFolder } from '../program.ts'
import { print } from './print.ts'

export interface ServeFlags {
  readonly port: string
}

/** `battenbook serve LIBRARY [--port PORT]`: serves until it is told to stop. */
export async function serveCommand(json: boolean, library: string, flags: ServeFlags): Promise<number> {
  const port = Number(flags.port)
  if (!/^\d+$/.test(flags.port) || port > 65_535)
    refuse('invalid', `--port ${flags.port} is not a port number.`, { help: 'Use a number up to 65535.' })
  return serveUntilStopped(library, {
    port,
    onServing: ({ address, entrance }) =>
      print(
        json
          ? JSON.stringify({ ok: true, address, entrance })
          : `Battenbook serves ${library} at\n  ${entrance}\nOpen this address in a browser on this computer. Stop with Ctrl+C.`,
      ),
  })
}

/** Serves a library from a loopback address until the program is told to stop; then everything is closed. */
export async function serveUntilStopped(
  library: string,
  { port, onServing }: { port: number; onServing: (at: { address: string; entrance: string }) => void | Promise<void> },
): Promise<number> {
  // Listened for before anything is told: whoever reads the address may say stop at once.
  const stopped = untilToldToStop()
  const desk = await openDesk(library, { drop: 'upload' })
  try {
    const served = await serveDesk(desk, { port, pagesFolder }).catch((cause: unknown) => {
      throw inWords(cause, port)
    })
    await onServing(served)
    await stopped
    await served.close()
    return 0
  } finally {
    await desk.close()
  }
}

function inWords(cause: unknown, port: number): unknown {
  if (!(cause instanceof Error) || !('code' in cause)) return cause
  const other = { help: 'Choose another port, or leave --port out.' }
  switch (cause.code) {
    case 'EADDRINUSE':
      return new AppFailure(appError('conflict', `Port ${port} is in use.`, other))
    case 'EACCES':
      return new AppFailure(appError('no-permission', `Port ${port} is kept for the system.`, other))
    case 'ENOENT':
      return new AppFailure(
        appError('missing-folder', 'The pages of the workstation are not built.', {
          help: 'Build them with: npm run build',
        }),
      )
    default:
      return cause
  }
}

/** Waits for Ctrl+C, a closed terminal, or the system's wish to stop. */
function untilToldToStop(): Promise<void> {
  return new Promise((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, () => resolve())
  })
}
