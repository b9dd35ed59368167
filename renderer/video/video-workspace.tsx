import type { Video } from '../../app/evidence/video.ts'
import { cuesOfVideo } from '../../app/narration/aligned.ts'
import { AddFilesButton } from '../frame/add-files.tsx'
import { useJob } from '../state/job-state.tsx'
import { useSelection } from '../state/selection.tsx'
import { EmptyState } from '../ui/empty-state.tsx'
import styles from './video.module.css'
import { VideoPlayer } from './video-player.tsx'
import { VideoTable } from './video-table.tsx'

/** The videos of a job: a list, and the selected one to play, step through and take stills from. */
export function VideoWorkspace() {
  const job = useJob()
  const { selection, select } = useSelection()
  const { videos } = job
  const stillOf = useStillOf()
  const shown = videos.find((one) => selection.kind === 'video' && one.id === selection.id) ?? stillOf ?? videos[0]
  if (shown === undefined) {
    return (
      <EmptyState
        title="No video is in this job yet"
        sentence="Drop the phone’s or camera’s videos here. They are kept whole; single frames can be stored as photos."
      >
        <AddFilesButton look="main" />
      </EmptyState>
    )
  }
  return (
    <div className={styles['workspace']}>
      <div className={styles['list']}>
        <VideoTable shown={shown} onSelect={(video) => select({ kind: 'video', id: video.id })} />
      </div>
      <VideoPlayer key={shown.id} video={shown} cues={cuesOfVideo(shown, job.narrations, job)} />
    </div>
  )
}

/** The video that the selected still comes from. */
function useStillOf(): Video | undefined {
  const { photos, videos } = useJob()
  const { selection } = useSelection()
  if (selection.kind !== 'photos') return undefined
  const still = photos.find((photo) => photo.id === selection.lead)?.still
  return still == null ? undefined : videos.find((video) => video.id === still.videoId)
}
