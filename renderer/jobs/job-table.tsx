import { useMemo, useState } from 'react'
import type { JobSummary } from '../../app/contract/jobs.ts'
import { Badge } from '../ui/badge.tsx'
import { type Column, DataTable } from '../ui/data-table.tsx'
import { changedWords } from './changed-words.ts'
import styles from './jobs-screen.module.css'

interface JobTableProps {
  readonly jobs: readonly JobSummary[]
  readonly onOpen: (job: JobSummary) => void
}

/** Every job of the library; a click or Enter opens one. */
export function JobTable({ jobs, onOpen }: JobTableProps) {
  const [selected, setSelected] = useState<string | null>(null)
  const columns = useMemo(() => [numberColumn(onOpen), ...factColumns], [onOpen])
  return (
    <DataTable
      label="Jobs"
      columns={columns}
      rows={jobs}
      rowKey={(job) => job.id}
      rowHeightPx={44}
      selectedKey={selected}
      onSelect={(job) => setSelected(job.id)}
      onOpen={onOpen}
      initialSorting={{ column: 'changed', direction: 'down' }}
    />
  )
}

function numberColumn(onOpen: (job: JobSummary) => void): Column<JobSummary> {
  return {
    key: 'number',
    title: 'Job',
    width: 'minmax(110px, 0.8fr)',
    sortBy: (job) => job.number,
    cell: (job) => (
      <button type="button" className={styles['open']} onClick={() => onOpen(job)}>
        {job.number}
      </button>
    ),
  }
}

const factColumns: readonly Column<JobSummary>[] = [
  {
    key: 'owner',
    title: 'Owner',
    width: 'minmax(120px, 1.1fr)',
    sortBy: (job) => job.owner,
    cell: (job) => stated(job.owner),
  },
  {
    key: 'address',
    title: 'Address',
    width: 'minmax(150px, 1.6fr)',
    sortBy: (job) => job.address,
    cell: (job) => stated(job.address),
  },
  {
    key: 'claim',
    title: 'Claim number',
    width: 'minmax(110px, 1fr)',
    sortBy: (job) => job.claimNumber,
    cell: (job) => stated(job.claimNumber),
  },
  {
    key: 'loss',
    title: 'Date of loss',
    width: '104px',
    sortBy: (job) => job.lossDate,
    cell: (job) => stated(job.lossDate ?? ''),
  },
  {
    key: 'photos',
    title: 'Photos',
    width: '74px',
    align: 'end',
    sortBy: (job) => job.photos,
    cell: (job) => job.photos.toLocaleString('en-US'),
  },
  {
    key: 'findings',
    title: 'Findings',
    width: '82px',
    align: 'end',
    sortBy: (job) => job.findings,
    cell: (job) => job.findings,
  },
  {
    key: 'lacks',
    title: 'Lacks',
    width: '92px',
    align: 'end',
    sortBy: (job) => job.lacks,
    cell: (job) => <LacksBadge job={job} />,
  },
  {
    key: 'packets',
    title: 'Packet',
    width: '82px',
    align: 'end',
    sortBy: (job) => job.packets,
    cell: (job) => (job.packets === 0 ? stated('') : `rev. ${job.packets}`),
  },
  {
    key: 'changed',
    title: 'Last change',
    width: '138px',
    align: 'end',
    sortBy: (job) => job.changedAtMs,
    cell: (job) => <span className={styles['quiet']}>{changedWords(job.changedAtMs, Date.now())}</span>,
  },
]

function stated(text: string) {
  return text === '' ? <span className={styles['quiet']}>–</span> : text
}

function LacksBadge({ job }: { job: JobSummary }) {
  if (job.lacks === null) return <span className={styles['quiet']}>counting</span>
  return job.lacks === 0 ? <Badge tone="good">complete</Badge> : <Badge tone="caution">{job.lacks}</Badge>
}
