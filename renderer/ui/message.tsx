import { createContext, type ReactNode, useCallback, useContext, useEffect, useMemo, useRef, useState } from 'react'
import { IconButton } from './icon-button.tsx'
import styles from './message.module.css'
import { classNames } from './class-names.ts'

export interface Message {
  readonly tone: 'error' | 'done' | 'note'
  /** What happened. */
  readonly text: string
  /** What the person can do. */
  readonly help?: string
}

interface Messages {
  /** Shows a message in the corner. Errors stay until they are put away. */
  say(message: Message): void
}

const MessageContext = createContext<Messages | null>(null)
const QUIET_AFTER_MS = 7000
const AT_MOST = 4
const marks = { error: '▲', done: '✓', note: 'i' } as const satisfies Record<Message['tone'], string>

interface Shown extends Message {
  readonly id: number
}

/** Holds the messages of the whole program. */
export function MessageProvider({ children }: { children: ReactNode }) {
  const [shown, setShown] = useState<readonly Shown[]>([])
  const next = useRef(1)
  const say = useCallback((message: Message) => {
    const id = next.current
    next.current += 1
    setShown((before) => [...before.filter((one) => one.text !== message.text), { ...message, id }].slice(-AT_MOST))
  }, [])
  const putAway = useCallback((id: number) => setShown((before) => before.filter((one) => one.id !== id)), [])
  const messages = useMemo(() => ({ say }), [say])
  return (
    <MessageContext value={messages}>
      {children}
      <div className={styles['corner']} role="region" aria-label="Messages" aria-live="polite">
        {shown.map((message) => (
          <MessageLine key={message.id} message={message} onPutAway={() => putAway(message.id)} />
        ))}
      </div>
    </MessageContext>
  )
}

/** The way to tell the person something in passing. */
export function useMessages(): Messages {
  const messages = useContext(MessageContext)
  if (messages === null) throw new Error('useMessages is used outside a MessageProvider.')
  return messages
}

function MessageLine({ message, onPutAway }: { message: Shown; onPutAway: () => void }) {
  const putAway = useRef(onPutAway)
  useEffect(() => {
    putAway.current = onPutAway
  })
  useEffect(() => {
    if (message.tone === 'error') return undefined
    const timer = setTimeout(() => putAway.current(), QUIET_AFTER_MS)
    return () => clearTimeout(timer)
  }, [message.tone])
  return (
    <div
      className={classNames(styles['message'], styles[message.tone])}
      role={message.tone === 'error' ? 'alert' : 'status'}
    >
      <span className={styles['mark']} aria-hidden="true">
        {marks[message.tone]}
      </span>
      <span className={styles['words']}>
        <span className={styles['text']}>{message.text}</span>
        {message.help === undefined ? null : <span className={styles['help']}>{message.help}</span>}
      </span>
      <IconButton icon="close" label="Put this message away" onPress={onPutAway} />
    </div>
  )
}
