import { useState } from 'react'
import type { DecimalMark } from '../../app/scope/price-book.ts'
import type { ReadBook } from '../../app/scope/read-price-book.ts'
import { useDesk } from '../client/client-context.tsx'
import { useEdit, useJob } from '../state/job-state.tsx'
import { base64Of } from './base64-of.ts'

/** How the decimal mark of a file is settled. */
type MarkChoice = DecimalMark | 'auto'

interface ChosenFile {
  readonly fileName: string
  readonly base64: string
}

/** A price book that is being looked at before it is taken. */
export function usePriceFile() {
  const desk = useDesk()
  const edit = useEdit()
  const { job } = useJob()
  const [file, setFile] = useState<ChosenFile | null>(null)
  const [mark, setMark] = useState<MarkChoice>('auto')
  const [read, setRead] = useState<ReadBook | null>(null)
  const [fault, setFault] = useState<string | null>(null)
  async function preview(chosen: ChosenFile, by: MarkChoice) {
    setFile(chosen)
    setMark(by)
    const reply = await desk.call('scope-files.read-prices', { jobId: job.id, ...chosen, ...markOf(by) })
    setRead(reply.ok ? reply.value : null)
    setFault(reply.ok ? null : `${reply.error.message} ${reply.error.help}`)
  }
  return {
    hasFile: file !== null,
    mark,
    read,
    fault,
    choose: async (chosen: File | undefined) => {
      if (chosen !== undefined) await preview({ fileName: chosen.name, base64: await base64Of(chosen) }, mark)
    },
    setMark: async (by: MarkChoice) => {
      if (file !== null) await preview(file, by)
    },
    /** Takes the good rows; answers how many, or null when the desk refused. */
    take: async () => {
      if (file === null) return null
      const taken = await edit('scope.take-prices', { ...file, ...markOf(mark), withoutBadRows: true })
      return taken === null ? null : taken.prices
    },
  }
}

function markOf(choice: MarkChoice): { readonly decimalMark: DecimalMark | null } {
  return { decimalMark: choice === 'auto' ? null : choice }
}
