import { useState } from 'react'
import type { NarrationId } from '../../app/job/ids.ts'
import { draftOfSaved } from '../findings/finding-draft.ts'
import { FindingDialog } from '../findings/finding-dialog.tsx'
import { useSelection } from '../state/selection.tsx'
import { EmptyState } from '../ui/empty-state.tsx'
import { AddFilesButton } from '../frame/add-files.tsx'
import { AlignBar } from './align-bar.tsx'
import { CueTable } from './cue-table.tsx'
import { DraftCard } from './draft-card.tsx'
import { ImportBar, useWaitingFiles } from './import-bar.tsx'
import styles from './narration.module.css'
import { NarrationBar } from './narration-bar.tsx'
import { useDraftWork } from './use-draft-work.ts'
import { type ReadNarration, useNarrations } from './use-narration.ts'

/** The narration: its cues on the left, the findings that they seem to report beside them, and what to do with each. */
export function NarrationWorkspace() {
  const all = useNarrations()
  const waiting = useWaitingFiles()
  const { selection } = useSelection()
  const [chosen, setChosen] = useState<NarrationId | null>(null)
  const wanted = selection.kind === 'cue' ? selection.narrationId : chosen
  const read = all.find(({ narration }) => narration.id === wanted) ?? all[0]
  return (
    <div className={styles['workspace']}>
      <ImportBar waiting={waiting} />
      {read === undefined ? (
        <EmptyState
          title="No narration is in this job yet"
          sentence={
            waiting.length > 0
              ? 'Import the subtitle file above. Its words become drafts that you accept, edit or drop.'
              : 'Drop the subtitle file of the recording here, SRT or WebVTT. Its words become drafts of findings.'
          }
        >
          <AddFilesButton look={waiting.length > 0 ? 'plain' : 'main'} />
        </EmptyState>
      ) : (
        <OneNarration key={read.narration.id} read={read} all={all} onChoose={setChosen} />
      )}
    </div>
  )
}

interface OneNarrationProps {
  readonly read: ReadNarration
  readonly all: readonly ReadNarration[]
  readonly onChoose: (id: NarrationId) => void
}

function OneNarration({ read, all, onChoose }: OneNarrationProps) {
  const { select } = useSelection()
  const work = useDraftWork(read)
  const { present } = work
  const { narration } = read
  return (
    <>
      <NarrationBar read={read} all={all} onChoose={onChoose} />
      <AlignBar read={read} />
      <div className={styles['table']}>
        <CueTable read={read} onCue={(cue) => select({ kind: 'cue', narrationId: narration.id, cue })} />
      </div>
      {present === null ? (
        <p className={styles['noDraft']}>
          {read.drafts.length === 0
            ? 'No words of this narration were read as a finding.'
            : 'Nothing was read from this cue. J goes to the next draft.'}
        </p>
      ) : (
        <DraftCard standing={present} work={work} />
      )}
      {work.proposed !== null && work.isEdited ? (
        <FindingDialog start={draftOfSaved(work.proposed)} onSaved={work.save} onClose={work.closeForm} />
      ) : null}
    </>
  )
}
