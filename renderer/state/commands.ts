import { useEffect, useRef, useSyncExternalStore } from 'react'
import { keysFit } from './keys.ts'

/** Something a person can do from the keyboard, as a value. */
export interface Command {
  /** `scope.what`, such as `photos.next`: the part before the first dot is its scope. */
  readonly id: string
  /** What it does, in words, for the list of keys. */
  readonly label: string
  /** `Ctrl+Shift+Z`, `?`, `ArrowRight`; alternatives are parted by ` or `. `Ctrl` is the command key on a Mac. */
  readonly keys: string
  readonly enabled: boolean
  readonly perform: () => void
}

/** Where commands belong: a dialog, a workspace, or the frame around it, whose keys give way to the workspace's. */
type Where = 'dialog' | 'desk' | 'frame'

interface Registration {
  commands: readonly Command[]
  readonly where: Where
}

const registrations: Registration[] = []
const watchers = new Set<() => void>()
let known: readonly Command[] = []

/**
 * Makes commands work from the keyboard while the calling component is shown. They rest while a person types in a
 * field. `where` is `dialog` for commands of a dialog itself; those of desk and frame rest while one is open.
 */
export function useCommands(commands: readonly Command[], where: Where = 'desk'): void {
  const registration = useRef<Registration>({ commands: [], where })
  useEffect(() => {
    registration.current.commands = commands
    announce()
  })
  useEffect(() => {
    const own = registration.current
    registrations.push(own)
    if (registrations.length === 1) window.addEventListener('keydown', onKeyDown)
    announce()
    return () => {
      registrations.splice(registrations.indexOf(own), 1)
      if (registrations.length === 0) window.removeEventListener('keydown', onKeyDown)
      announce()
    }
  }, [])
}

/** Every command that works now, for the list of keys. */
export function useKnownCommands(): readonly Command[] {
  return useSyncExternalStore(watch, () => known)
}

function watch(onChange: () => void): () => void {
  watchers.add(onChange)
  return () => watchers.delete(onChange)
}

function announce(): void {
  const next = registrations.flatMap((registration) => registration.commands)
  const same = next.length === known.length && next.every((command, at) => looksLike(command, known[at]))
  if (same) return
  known = next
  for (const onChange of watchers) onChange()
}

function looksLike(a: Command, b: Command | undefined): boolean {
  return a.id === b?.id && a.label === b.label && a.keys === b.keys && a.enabled === b.enabled
}

function onKeyDown(event: KeyboardEvent): void {
  if (event.defaultPrevented || event.isComposing || takesTyping(event.target)) return
  const places: readonly Where[] = isInDialog(event.target) ? ['dialog'] : ['desk', 'frame']
  const command = places
    .flatMap((place) => registrations.filter((registration) => registration.where === place).toReversed())
    .flatMap((registration) => registration.commands)
    .find((candidate) => candidate.enabled && keysFit(candidate.keys, event))
  if (command === undefined) return
  event.preventDefault()
  command.perform()
}

function takesTyping(target: EventTarget | null): boolean {
  if (!(target instanceof HTMLElement)) return false
  if (target.isContentEditable || target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement)
    return true
  if (!(target instanceof HTMLInputElement)) return false
  return !['button', 'checkbox', 'radio', 'range', 'file', 'submit'].includes(target.type)
}

function isInDialog(target: EventTarget | null): boolean {
  return (
    target instanceof Element &&
    target.closest('[role="dialog"], [role="alertdialog"], [role="listbox"], [role="menu"]') !== null
  )
}
