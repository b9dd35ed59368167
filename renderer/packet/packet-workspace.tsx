import { useMemo, useState } from 'react'
import { handovers } from '../../app/diary/handovers.ts'
import { hidesSomething } from '../../app/evidence/markup.ts'
import { type PacketOptions, packetOptionsSchema } from '../../app/packet/options.ts'
import { videoLabel } from '../../app/evidence/video-label.ts'
import { isInBundle, SMALL_VIDEO_BYTES } from '../../app/packet/videos-in-bundle.ts'
import { useDesk } from '../client/client-context.tsx'
import { useJob } from '../state/job-state.tsx'
import { useProblems } from '../state/problems.tsx'
import { useTasks } from '../state/tasks.tsx'
import { Button } from '../ui/button.tsx'
import { useMessages } from '../ui/message.tsx'
import { Panel } from '../ui/panel.tsx'
import { bytesWords, countWords } from '../ui/quantity-words.ts'
import { SegmentedChoice } from '../ui/segmented-choice.tsx'
import { IssueDialog } from './issue-dialog.tsx'
import { IssuedList } from './issued-list.tsx'
import styles from './packet.module.css'
import { Preview } from './preview.tsx'
import { ProblemList } from './problem-list.tsx'
import { overrulesOf, type Reasons } from './reasons.ts'
import { useDraft } from './use-draft.ts'

/** The packet: what to mend, how it is set out, its pages, and the revisions issued. */
export function PacketWorkspace() {
  const [options, setOptions] = useState<PacketOptions>(() => packetOptionsSchema.parse({}))
  const [reasons, setReasons] = useState<Reasons>(new Map())
  const problems = useProblems()
  const draft = useDraft(options)
  return (
    <div className={styles['packet']}>
      <div className={styles['side']}>
        <div className={styles['scroll']}>
          <Panel title="Before issuing">
            <ProblemList problems={problems} reasons={reasons} onReasons={setReasons} />
          </Panel>
          <Panel title="Set out">
            <Options options={options} onOptions={setOptions} />
            <ScopeChoice options={options} onOptions={setOptions} />
            <VideoChoice options={options} onOptions={setOptions} />
          </Panel>
          <Panel title="Issued">
            <IssuedList />
          </Panel>
        </div>
        <IssueBar options={options} reasons={reasons} onReasons={setReasons} />
      </div>
      <Preview draft={draft} />
    </div>
  )
}

function Options({ options, onOptions }: { options: PacketOptions; onOptions: (options: PacketOptions) => void }) {
  const { markups, diary } = useJob()
  return (
    <div className={styles['options']}>
      <SegmentedChoice
        label="Paper"
        options={[
          { key: 'letter', label: 'US Letter' },
          { key: 'a4', label: 'A4' },
        ]}
        value={options.paper}
        onChange={(paper) => onOptions({ ...options, paper })}
      />
      <SegmentedChoice
        label="Photos a page"
        options={[
          { key: '2', label: '2' },
          { key: '4', label: '4' },
          { key: '6', label: '6' },
        ]}
        value={`${options.photosPerPage}`}
        onChange={(chosen) => onOptions({ ...options, photosPerPage: perPage[chosen] })}
      />
      {markups.some(hidesSomething) ? (
        <SegmentedChoice
          label="Originals of photos with obscured areas"
          options={[
            { key: 'keep-back', label: 'Keep at the office' },
            { key: 'include', label: 'Put in the bundle' },
          ]}
          value={options.obscuredOriginals}
          onChange={(obscuredOriginals) => onOptions({ ...options, obscuredOriginals })}
        />
      ) : null}
      {handovers(diary.entries).length === 0 ? null : (
        <SegmentedChoice
          label="Documents received and handed over"
          options={[
            { key: 'leave-out', label: 'Leave out' },
            { key: 'include', label: 'List in custody' },
          ]}
          value={options.handovers}
          onChange={(chosen) => onOptions({ ...options, handovers: chosen })}
        />
      )}
    </div>
  )
}

/** Whether this recipient gets prices; asked only where a scope is offered. */
function ScopeChoice({ options, onOptions }: { options: PacketOptions; onOptions: (options: PacketOptions) => void }) {
  const { scope } = useJob()
  if (!scope.choices.isOffered) return null
  return (
    <div className={styles['options']}>
      <SegmentedChoice
        label="Scope for this recipient"
        options={[
          { key: 'lines', label: 'Lines of work only' },
          { key: 'cost', label: 'With prices and totals' },
        ]}
        value={options.cost ? 'cost' : 'lines'}
        onChange={(chosen) => onOptions({ ...options, cost: chosen === 'cost' })}
      />
    </div>
  )
}

/** Which videos go into the bundle; asked only where there are any. */
function VideoChoice({ options, onOptions }: { options: PacketOptions; onOptions: (options: PacketOptions) => void }) {
  const { videos } = useJob()
  const out = videos.filter(({ file }) => !isInBundle(file, options.videosInBundle))
  if (videos.length === 0) return null
  return (
    <div className={styles['options']}>
      <SegmentedChoice
        label="Videos in the evidence bundle"
        options={[
          { key: 'small', label: `Up to ${SMALL_VIDEO_BYTES / 1_000_000} MB each` },
          { key: 'all', label: 'All' },
          { key: 'none', label: 'None' },
        ]}
        value={options.videosInBundle}
        onChange={(videosInBundle) => onOptions({ ...options, videosInBundle })}
      />
      <p>
        {out.length === 0
          ? 'Every video goes into the bundle.'
          : `Left out: ${out.map(({ number, file }) => `${videoLabel(number)} (${bytesWords(file.bytes)})`).join(', ')}. The packet says so and gives the SHA-256.`}
      </p>
    </div>
  )
}

const perPage = { '2': 2, '4': 4, '6': 6 } as const

interface IssueBarProps {
  readonly options: PacketOptions
  readonly reasons: Reasons
  readonly onReasons: (reasons: Reasons) => void
}

function IssueBar({ options, reasons, onReasons }: IssueBarProps) {
  const { packets } = useJob()
  const problems = useProblems()
  const [isAsking, setAsking] = useState(false)
  const issuing = useIssuing()
  const blocking = problems.filter((problem) => problem.weight === 'blocking').length
  const revision = Math.max(0, ...packets.map((packet) => packet.revision)) + 1
  return (
    <footer className={styles['issueBar']}>
      <Button look="main" isDisabled={blocking > 0 || issuing.isRunning} onPress={() => setAsking(true)}>
        Issue revision {revision}
      </Button>
      <span className={styles['quiet']}>
        {issuing.isRunning
          ? 'Issuing; progress stands at the left.'
          : blocking > 0
            ? `${countWords(blocking, 'thing')} must be mended first.`
            : ''}
      </span>
      <IssueDialog
        isOpen={isAsking}
        onClose={() => setAsking(false)}
        revision={revision}
        problems={problems}
        reasons={reasons}
        onReasons={onReasons}
        onIssue={() => {
          setAsking(false)
          void issuing.start(options, overrulesOf(problems, reasons))
        }}
      />
    </footer>
  )
}

function useIssuing() {
  const desk = useDesk()
  const { job } = useJob()
  const { tasks } = useTasks()
  const { say } = useMessages()
  const isRunning = useMemo(
    () => tasks.some((task) => task.kind === 'issue' && task.jobId === job.id && task.state === 'running'),
    [tasks, job.id],
  )
  return {
    isRunning,
    async start(options: PacketOptions, overrules: ReturnType<typeof overrulesOf>) {
      const reply = await desk.call('packet.issue', { jobId: job.id, options, overrules })
      if (!reply.ok) say({ tone: 'error', text: reply.error.message, help: reply.error.help })
    },
  }
}
