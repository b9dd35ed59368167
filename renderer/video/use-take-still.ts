import { type RefObject, useState } from 'react'
import { photoLabel } from '../../app/evidence/photo.ts'
import { stillWords } from '../../app/evidence/still.ts'
import type { Video } from '../../app/evidence/video.ts'
import { useDesk } from '../client/client-context.tsx'
import { useJob } from '../state/job-state.tsx'
import { useMessages } from '../ui/message.tsx'
import { framePicture } from './frame-picture.ts'

/** Stores the frame on the screen as a picture of the job. */
export function useTakeStill(
  element: RefObject<HTMLVideoElement | null>,
  video: Video,
): { readonly isBusy: boolean; readonly take: (atMs: number) => Promise<void> } {
  const desk = useDesk()
  const { job } = useJob()
  const { say } = useMessages()
  const [isBusy, setBusy] = useState(false)
  async function store(atMs: number) {
    const shown = element.current
    const picture = shown === null ? null : await framePicture(shown, video.file)
    if (picture === null)
      return say({
        tone: 'error',
        text: 'No picture can be made of this frame.',
        help: 'Let it play for a moment first.',
      })
    const reply = await desk.call('videos.take-still', { jobId: job.id, id: video.id, offsetMs: atMs, picture })
    if (!reply.ok) return say({ tone: 'error', text: reply.error.message, help: reply.error.help })
    const words = stillWords({ videoNumber: video.number, offsetMs: atMs })
    return say({ tone: 'done', text: `${photoLabel(reply.value.number)} stored: ${words}.` })
  }
  return {
    isBusy,
    take: async (atMs) => {
      if (isBusy) return
      setBusy(true)
      await store(atMs).finally(() => setBusy(false))
    },
  }
}
