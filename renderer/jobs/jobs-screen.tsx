import { useEffect, useState } from 'react'
import { useLocation } from 'wouter'
import type { JobId } from '../../app/job/ids.ts'
import { useDesk } from '../client/client-context.tsx'
import { jobAddress } from '../frame/addresses.ts'
import { useDeskServices } from '../frame/desk-services.tsx'
import { DropArea } from '../frame/drop-area.tsx'
import { placeOfHit } from '../frame/places.ts'
import { fetchJobAhead } from '../frame/screens.ts'
import { SignedAs } from '../frame/signed-as.tsx'
import { TaskCards } from '../frame/task-cards.tsx'
import { ThemeButton } from '../frame/theme-button.tsx'
import { useFound } from '../frame/use-found.ts'
import { useWhenIdle } from '../frame/use-when-idle.ts'
import { useLibrary } from '../state/library.tsx'
import { useTasks } from '../state/tasks.tsx'
import { Button } from '../ui/button.tsx'
import { Icon } from '../ui/icon.tsx'
import { IconButton } from '../ui/icon-button.tsx'
import { useMessages } from '../ui/message.tsx'
import { countWords } from '../ui/quantity-words.ts'
import { FoundList } from './found-list.tsx'
import { JobSearchField } from './job-search-field.tsx'
import { JobTable } from './job-table.tsx'
import styles from './jobs-screen.module.css'
import { NewJob } from './new-job.tsx'
import { NoJobs } from './no-jobs.tsx'
import { useJobList } from './use-job-list.ts'

/** The library: search over everything, the table of jobs, and the ways to start one. */
export function JobsScreen() {
  const { jobs, isKnown } = useJobList()
  const [text, setText] = useState('')
  const [isNew, setNew] = useState(false)
  const found = useFound(text, null)
  const starts = useStarts()
  useWhenIdle(isKnown ? fetchJobAhead : null)
  useEffect(() => {
    document.title = 'Battenbook'
  }, [])
  return (
    <main className={styles['screen']}>
      <Head />
      {isKnown && jobs.length === 0 ? (
        <NoJobs onNew={() => setNew(true)} onSample={() => void starts.sample()} />
      ) : (
        <>
          <div className={styles['tools']}>
            <JobSearchField text={text} onText={setText} />
            <span className={styles['count']}>{isKnown ? countWords(jobs.length, 'job') : ''}</span>
            <Button look="quiet" onPress={() => void starts.sample()}>
              Open a sample job
            </Button>
            <Button look="main" onPress={() => setNew(true)}>
              <Icon name="plus" />
              New job
            </Button>
          </div>
          <div className={styles['list']}>
            {text.trim() === '' ? (
              <JobTable jobs={jobs} onOpen={(job) => starts.open(job.id)} />
            ) : (
              <FoundList found={found} onChoose={(hit) => starts.openAt(hit.jobId, placeOfHit(hit))} />
            )}
          </div>
        </>
      )}
      <div className={styles['tasks']}>
        <TaskCards jobId={null} />
      </div>
      <NewJob isOpen={isNew} onClose={() => setNew(false)} onMade={starts.open} />
      <DropArea words="Drop to start a job with these photos" onFiles={(files) => void starts.fromFiles(files)} />
    </main>
  )
}

function Head() {
  const { info } = useLibrary()
  const { showKeys } = useDeskServices()
  return (
    <header className={styles['head']}>
      <h1 className={styles['title']}>Jobs</h1>
      <p className={styles['library']}>
        Battenbook{info === null ? '' : `, library in ${info.folder}, ${countWords(info.photos, 'photo')}`}
      </p>
      <SignedAs />
      <ThemeButton />
      <IconButton icon="list" label="Show the keys" keys="?" onPress={showKeys} />
    </header>
  )
}

/** The ways into a job. */
function useStarts() {
  const desk = useDesk()
  const { takeIn } = useTasks()
  const { say } = useMessages()
  const [, navigate] = useLocation()
  const open = (jobId: JobId) => navigate(jobAddress(jobId, 'sheet'))
  return {
    open,
    openAt(jobId: JobId, { workspace, target }: ReturnType<typeof placeOfHit>) {
      navigate(jobAddress(jobId, workspace, target))
    },
    async sample() {
      const reply = await desk.call('jobs.new-sample', {})
      if (reply.ok) open(reply.value.jobId)
      else say({ tone: 'error', text: reply.error.message, help: reply.error.help })
    },
    async fromFiles(files: readonly File[]) {
      if (files.length === 0) return
      const reply = await desk.call('jobs.new', {})
      if (!reply.ok) {
        say({ tone: 'error', text: reply.error.message, help: reply.error.help })
        return
      }
      open(reply.value.jobId)
      await takeIn(reply.value.jobId, files)
    },
  }
}
