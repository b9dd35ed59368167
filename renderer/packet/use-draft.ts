import type { PDFDocumentProxy } from 'pdfjs-dist'
import { useEffect, useMemo, useRef, useState } from 'react'
import type { CallOutput } from '../../app/contract/contract.ts'
import { fileAddress } from '../../app/contract/files.ts'
import type { PacketOptions } from '../../app/packet/options.ts'
import { useDesk } from '../client/client-context.tsx'
import { coalesced } from '../state/coalesced.ts'
import { useJob } from '../state/job-state.tsx'
import { openPdf } from './pdf-reader.ts'

type DraftFacts = CallOutput<'packet.draft'>

/** The draft of the packet as it would be issued now. */
export interface Draft {
  /** Null until the first draft is there; the last good one stays while a new one is made. */
  readonly pdf: PDFDocumentProxy | null
  readonly facts: DraftFacts | null
  readonly isMaking: boolean
  /** Why there is no draft, and what to do. */
  readonly trouble: { readonly text: string; readonly help: string } | null
}

const none: Draft = { pdf: null, facts: null, isMaking: true, trouble: null }

/** Makes a draft whenever the job or the options change. */
export function useDraft(options: PacketOptions): Draft {
  const desk = useDesk()
  const snapshot = useJob()
  const jobId = snapshot.job.id
  const [draft, setDraft] = useState<Draft>(none)
  const wanted = useRef(options)
  const shown = useRef<PDFDocumentProxy | null>(null)
  const make = useMemo(
    () =>
      coalesced(async () => {
        setDraft((before) => ({ ...before, isMaking: true }))
        const reply = await desk.call('packet.draft', { jobId, options: wanted.current })
        if (!reply.ok) {
          const { message, help } = reply.error
          setDraft((before) => ({ ...before, isMaking: false, trouble: { text: message, help } }))
          return
        }
        try {
          const pdf = await openPdf(fileAddress({ kind: 'draft', id: reply.value.draftId }))
          void shown.current?.loadingTask.destroy()
          shown.current = pdf
          setDraft({ pdf, facts: reply.value, isMaking: false, trouble: null })
        } catch {
          const trouble = {
            text: 'The draft was made but could not be shown.',
            help: 'Change an option or reload the screen to try again.',
          }
          setDraft((before) => ({ ...before, isMaking: false, trouble }))
        }
      }),
    [desk, jobId],
  )
  useEffect(() => {
    wanted.current = options
    void make()
  }, [make, options, snapshot])
  useEffect(
    () => () => {
      void shown.current?.loadingTask.destroy()
    },
    [],
  )
  return draft
}
