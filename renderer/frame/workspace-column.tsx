import { Link, useLocation } from 'wouter'
import type { JobSnapshot } from '../../app/contract/jobs.ts'
import type { PacketProblem } from '../../app/packet/problem.ts'
import { useCommands } from '../state/commands.ts'
import { useJob } from '../state/job-state.tsx'
import { useProblems } from '../state/problems.tsx'
import { Icon } from '../ui/icon.tsx'
import { IconButton } from '../ui/icon-button.tsx'
import { countWords } from '../ui/quantity-words.ts'
import { AddFiles } from './add-files.tsx'
import { jobAddress, jobsAddress, type Workspace, workspaceNames, workspaces } from './addresses.ts'
import { useDeskServices } from './desk-services.tsx'
import { workspaceKeys } from './frame-keys.ts'
import { placeOfProblem } from './places.ts'
import { SignedAs } from './signed-as.tsx'
import { TaskCards } from './task-cards.tsx'
import { ThemeButton } from './theme-button.tsx'
import styles from './workspace-column.module.css'

/** The left column: which job this is, its workspaces with counts, and the work in progress. */
export function WorkspaceColumn({ workspace }: { workspace: Workspace }) {
  const { job } = useJob()
  const { owner, property } = job.sheet
  return (
    <nav className={styles['column']} aria-label="Workspaces">
      <Link href={jobsAddress} className={styles['back']}>
        <Icon name="back" />
        Jobs
      </Link>
      <header className={styles['job']}>
        <h1 className={styles['number']}>{job.number}</h1>
        <p className={styles['owner']}>{owner.name === '' ? 'Owner not stated' : owner.name}</p>
        <p className={styles['address']}>{property.address === '' ? 'Address not stated' : property.address}</p>
      </header>
      <WorkspaceLinks workspace={workspace} />
      <div className={styles['foot']}>
        <TaskCards jobId={job.id} />
        <AddFiles />
        <ColumnFoot />
      </div>
    </nav>
  )
}

function WorkspaceLinks({ workspace }: { workspace: Workspace }) {
  const snapshot = useJob()
  const problems = useProblems()
  const [, navigate] = useLocation()
  const jobId = snapshot.job.id
  useCommands(
    workspaceKeys.map((one) => ({ ...one, enabled: true, perform: () => navigate(jobAddress(jobId, one.workspace)) })),
    'frame',
  )
  return (
    <ul className={styles['list']}>
      {workspaces.map((one) => (
        <li key={one}>
          <Link
            href={jobAddress(jobId, one)}
            className={styles['link']}
            aria-current={one === workspace ? 'page' : undefined}
          >
            <span className={styles['name']}>{workspaceNames[one]}</span>
            <MissingMark count={lacking(problems, one)} />
            <span className={styles['count']}>{countOf(snapshot, one)}</span>
          </Link>
        </li>
      ))}
    </ul>
  )
}

function MissingMark({ count }: { count: number }) {
  if (count === 0) return null
  const words = `${countWords(count, 'thing')} missing here`
  return (
    <span className={styles['missing']} title={words}>
      <span aria-hidden="true">▲</span>
      <span className={styles['readOut']}>{words}</span>
    </span>
  )
}

function ColumnFoot() {
  const { showKeys } = useDeskServices()
  return (
    <div className={styles['person']}>
      <SignedAs />
      <span className={styles['personButtons']}>
        <ThemeButton />
        <IconButton icon="list" label="Show the keys" keys="?" onPress={showKeys} />
      </span>
    </div>
  )
}

/** What is missing in a workspace, notices aside; the packet sums up all of it and so has no mark of its own. */
function lacking(problems: readonly PacketProblem[], workspace: Workspace): number {
  return problems.filter((one) => one.weight !== 'notice' && placeOfProblem(one.place).workspace === workspace).length
}

function countOf(snapshot: JobSnapshot, workspace: Workspace): string {
  switch (workspace) {
    case 'sheet':
      return ''
    case 'plan':
      return snapshot.facets.length === 0 ? '' : countWords(snapshot.facets.length, 'facet')
    case 'photos':
      return number(snapshot.photos.length)
    case 'video':
      return number(snapshot.videos.length)
    case 'narration':
      return number(snapshot.narrations.reduce((sum, { cues }) => sum + cues.length, 0))
    case 'findings':
      return number(snapshot.findings.length)
    case 'field-tests':
      return number(snapshot.readings.length + snapshot.survey.checks.length + snapshot.survey.squares.length)
    case 'weather':
      return number(snapshot.weather.stations.length)
    case 'assessment':
      return ''
    case 'scope':
      return snapshot.scope.choices.isOffered ? 'in packet' : ''
    case 'packet':
      return snapshot.packets.length === 0
        ? ''
        : `rev. ${Math.max(...snapshot.packets.map((packet) => packet.revision))}`
    case 'diary':
      return number(snapshot.diary.entries.length)
    case 'log':
      return number(snapshot.log.entries)
  }
}

function number(count: number): string {
  return count === 0 ? '' : count.toLocaleString('en-US')
}
