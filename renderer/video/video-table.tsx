import { useMemo } from 'react'
import type { JobSnapshot } from '../../app/contract/jobs.ts'
import { codecName, type Video } from '../../app/evidence/video.ts'
import { frameTimeWords, videoLabel } from '../../app/evidence/video-label.ts'
import { dayWords, jobClock, timeWords } from '../state/job-clock.ts'
import { useJob } from '../state/job-state.tsx'
import { type Column, DataTable } from '../ui/data-table.tsx'
import { bytesWords } from '../ui/quantity-words.ts'
import styles from './video.module.css'

/** The videos of the job with what is known of each; `shown` is the one in the player. */
export function VideoTable({ shown, onSelect }: { shown: Video; onSelect: (video: Video) => void }) {
  const job = useJob()
  const columns = useMemo(() => columnsFor(job), [job])
  return (
    <DataTable
      label="Videos"
      columns={columns}
      rows={job.videos}
      rowKey={({ id }) => id}
      selectedKey={shown.id}
      onSelect={onSelect}
    />
  )
}

function columnsFor(job: JobSnapshot): readonly Column<Video>[] {
  const clock = jobClock(job)
  const stills = (id: string) => job.photos.filter((photo) => photo.still?.videoId === id).length
  const shows = ({ tags, file }: Video) => (tags.caption === '' ? file.fileName : tags.caption)
  const begins = ({ time: { instantMs } }: Video) =>
    instantMs === null ? 'not known' : `${dayWords(instantMs, clock)} ${timeWords(instantMs, clock)}`
  return [
    { key: 'number', title: 'Video', width: '76px', cell: NumberCell, sortBy: ({ number }) => number },
    { key: 'what', title: 'What it shows', width: 'minmax(140px, 2fr)', cell: shows, sortBy: shows },
    {
      key: 'begins',
      title: 'Begins',
      width: 'minmax(150px, 1.2fr)',
      cell: begins,
      sortBy: ({ time }) => time.instantMs,
    },
    {
      key: 'length',
      title: 'Length',
      width: '96px',
      align: 'end',
      cell: ({ file }) => frameTimeWords(file.durationMs),
      sortBy: ({ file }) => file.durationMs,
    },
    { key: 'coding', title: 'Coding', width: '110px', cell: ({ file }) => codecName(file.codec) },
    {
      key: 'size',
      title: 'Size',
      width: '84px',
      align: 'end',
      cell: ({ file }) => bytesWords(file.bytes),
      sortBy: ({ file }) => file.bytes,
    },
    { key: 'stills', title: 'Stills', width: '64px', align: 'end', cell: ({ id }) => stills(id) || '' },
  ]
}

function NumberCell({ number, file }: Video) {
  return (
    <>
      {videoLabel(number)}
      {file.problems.length === 0 ? null : (
        <span className={styles['remark']} title={file.problems.map(({ text }) => text).join(' ')}>
          ▲<span className={styles['hidden']}>has remarks</span>
        </span>
      )}
    </>
  )
}
