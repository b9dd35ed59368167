import type { ServerResponse } from 'node:http'
import type { Desk } from '../../desk/desk.ts'

/** A line now and then keeps connections that nothing happens on from being cut. */
const STILL_HERE_MS = 20_000

/** Sends the desk's events as server-sent events until the page goes away. */
export function sendEvents(desk: Desk, response: ServerResponse): void {
  response.writeHead(200, { 'content-type': 'text/event-stream', 'cache-control': 'no-store' })
  response.write(': listening\n\n')
  const stop = desk.listen((event) => response.write(`data: ${JSON.stringify(event)}\n\n`))
  const stillHere = setInterval(() => response.write(': still here\n\n'), STILL_HERE_MS)
  response.on('close', () => {
    clearInterval(stillHere)
    stop()
  })
}
