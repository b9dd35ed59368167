import type { CallInput, CallOutput, ProcedureName } from '../../app/contract/contract.ts'
import { type DeskEvent, deskEventSchema } from '../../app/contract/events.ts'
import type { Reply } from '../../app/contract/procedure.ts'
import type { JobId } from '../../app/job/ids.ts'
import type { DeskClient } from './desk-client.ts'
import { readReply, unreachable } from './read-reply.ts'

/** A client that reaches the desk over this page's own address. */
export function httpClient(): DeskClient {
  return { call, listen, dropFiles }
}

async function call<Name extends ProcedureName>(name: Name, input: CallInput<Name>): Promise<Reply<CallOutput<Name>>> {
  try {
    const response = await fetch(`/call/${name}`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(input),
    })
    const raw: unknown = await response.json()
    return readReply(name, raw)
  } catch {
    return unreachable()
  }
}

function listen(on: (event: DeskEvent) => void): () => void {
  const source = new EventSource('/events')
  source.addEventListener('message', (message: MessageEvent<string>) => {
    const event = deskEventSchema.safeParse(JSON.parse(message.data))
    if (event.success) on(event.data)
  })
  return () => source.close()
}

async function dropFiles(
  jobId: JobId,
  files: readonly File[],
  onProgress: (sentBytes: number, totalBytes: number) => void,
): Promise<Reply<{ taskId: string }>> {
  const uploadId = crypto.randomUUID()
  const totalBytes = files.reduce((sum, file) => sum + file.size, 0)
  let sentBytes = 0
  for (const [index, file] of files.entries()) {
    const sent = await send(`/upload/${uploadId}/${index}?name=${encodeURIComponent(file.name)}`, file, (bytes) =>
      onProgress(sentBytes + bytes, totalBytes),
    )
    if (!sent) return unreachable()
    sentBytes += file.size
    onProgress(sentBytes, totalBytes)
  }
  return call('intake.start', { jobId, from: { kind: 'upload', uploadId } })
}

/** `fetch` can't tell how much of a body is sent; the older request can. */
function send(address: string, file: File, onSent: (bytes: number) => void): Promise<boolean> {
  return new Promise((resolve) => {
    const request = new XMLHttpRequest()
    request.open('PUT', address)
    request.upload.addEventListener('progress', (event) => onSent(event.loaded))
    request.addEventListener('load', () => resolve(request.status >= 200 && request.status < 300))
    request.addEventListener('error', () => resolve(false))
    request.addEventListener('abort', () => resolve(false))
    request.send(file)
  })
}
