import type { Call, CallInput, CallOutput } from '../../app/contract/contract.ts'
import type { DeskEvent } from '../../app/contract/events.ts'
import type { Reply } from '../../app/contract/procedure.ts'
import type { JobId } from '../../app/job/ids.ts'

/** The desk as a screen sees it, whichever host stands between. */
export interface DeskClient {
  readonly call: Call
  /**
   * Hears every event of the desk until the returned function is called. `onMissed` is told when events may have been
   * lost on the way, so that what is held can be brought up to date.
   */
  listen(on: (event: DeskEvent) => void, onMissed?: () => void): () => void
  /** Takes dropped or chosen files into a job; `onProgress` counts bytes on their way where they have to be sent. */
  dropFiles(
    jobId: JobId,
    files: readonly File[],
    onProgress: (sentBytes: number, totalBytes: number) => void,
  ): Promise<Reply<{ taskId: string }>>
  /** Takes one picture into a job to be laid under the plan. */
  addPlanImage(
    jobId: JobId,
    file: File,
    about: CallInput<'plan-images.add'>['about'],
  ): Promise<Reply<CallOutput<'plan-images.add'>>>
}
