import { createStream } from 'rotating-file-stream'

/** The program's own log: for whoever looks after it, never shown on screens. */
export interface LogFile {
  readonly report: (line: string) => void
  readonly close: () => Promise<void>
}

/** Opens the rotating log file in the library's `logs` folder: ten files of at most a megabyte. */
export function openLogFile(folder: string, now: () => number): LogFile {
  const stream = createStream('battenbook.log', { path: folder, size: '1M', maxFiles: 10 })
  // A full disk must not bring the program down through its own log.
  stream.on('error', () => undefined)
  return {
    report: (line) => {
      stream.write(`${new Date(now()).toISOString()} ${line}\n`)
    },
    close: () => new Promise((resolve) => stream.end(() => resolve())),
  }
}
