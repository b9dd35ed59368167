import type { CallInput, CallOutput, ProcedureName } from '../../app/contract/contract.ts'
import { type DeskEvent, deskEventSchema } from '../../app/contract/events.ts'
import type { Reply } from '../../app/contract/procedure.ts'
import type { JobId } from '../../app/job/ids.ts'
import type { DeskClient } from './desk-client.ts'
import { readReply, unreachable } from './read-reply.ts'

/** A client that reaches the desk over this page's own address. */
export function httpClient(): DeskClient {
  return { call, listen: eventStream(), dropFiles, addPlanImage }
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

/** One stream for all listeners: a browser allows few connections to one host. */
function eventStream(): DeskClient['listen'] {
  const listeners = new Map<(event: DeskEvent) => void, () => void>()
  let source: EventSource | null = null
  let isBroken = false
  function onMessage(message: MessageEvent<string>) {
    const event = deskEventSchema.safeParse(JSON.parse(message.data))
    if (!event.success) return
    for (const on of listeners.keys()) on(event.data)
  }
  /** The stream comes back by itself, but what was told in between is gone. */
  function onOpen() {
    if (isBroken) for (const onMissed of listeners.values()) onMissed()
    isBroken = false
  }
  return (on, onMissed = () => undefined) => {
    listeners.set(on, onMissed)
    if (source === null) {
      source = new EventSource('/events')
      source.addEventListener('message', onMessage)
      source.addEventListener('open', onOpen)
      source.addEventListener('error', () => (isBroken = true))
    }
    return () => {
      listeners.delete(on)
      if (listeners.size > 0) return
      source?.close()
      source = null
    }
  }
}

async function dropFiles(
  jobId: JobId,
  files: readonly File[],
  onProgress: (sentBytes: number, totalBytes: number) => void,
): Promise<Reply<{ taskId: string }>> {
  const uploadId = await upload(files, onProgress)
  return uploadId === null ? unreachable() : call('intake.start', { jobId, from: { kind: 'upload', uploadId } })
}

async function addPlanImage(
  jobId: JobId,
  file: File,
  about: CallInput<'plan-images.add'>['about'],
): Promise<Reply<CallOutput<'plan-images.add'>>> {
  const uploadId = await upload([file], () => undefined)
  return uploadId === null
    ? unreachable()
    : call('plan-images.add', { jobId, about, from: { kind: 'upload', uploadId } })
}

/** Sends files to the desk; answers the name of the upload, or null when the desk can't be reached. */
async function upload(
  files: readonly File[],
  onProgress: (sentBytes: number, totalBytes: number) => void,
): Promise<string | null> {
  const uploadId = crypto.randomUUID()
  const totalBytes = files.reduce((sum, file) => sum + file.size, 0)
  let sentBytes = 0
  for (const [index, file] of files.entries()) {
    const address = `/upload/${uploadId}/${index}?name=${encodeURIComponent(file.name)}`
    const before = sentBytes
    const sent = await send(address, file, (bytes) => onProgress(before + bytes, totalBytes))
    if (!sent) return null
    sentBytes += file.size
    onProgress(sentBytes, totalBytes)
  }
  return uploadId
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
