import { useEffect, useRef, useState } from 'react'
import type { PhotoTagsPatch } from '../../app/contract/edits.ts'
import { type Command, useCommands } from '../state/commands.ts'
import { choicesWithWords, type TagKeyChoice, type TagStep, tagSteps, typedTagKey } from './tag-keys.ts'

/** The step that waits for letters, and those typed so far. */
export interface OpenStep {
  readonly step: TagStep
  readonly typed: string
  /** Words of the choice being typed after "/"; null while its letters are typed. */
  readonly words: string | null
  /** True when the last letter led nowhere. */
  readonly missed: boolean
}

export interface TagSteps {
  readonly open: OpenStep | null
  enter(step: TagStep): void
  leave(): void
}

interface TagStepsInput {
  readonly isEnabled: boolean
  readonly choicesOf: (step: TagStep) => readonly TagKeyChoice[]
  readonly onChosen: (patch: PhotoTagsPatch) => void
}

/** Makes F, C, D and R enter a step, in which the next letters choose. While a step is open it takes every letter. */
export function useTagSteps(input: TagStepsInput): TagSteps {
  const [open, setOpen] = useState<OpenStep | null>(null)
  const { isEnabled } = input
  const enter = (step: TagStep) => setOpen({ step, typed: '', words: null, missed: false })
  useCommands(
    tagSteps.map(({ step, key, label }): Command => ({
      id: `photo-tags.${step}`,
      label: `${label}: then its letters`,
      keys: key,
      enabled: isEnabled && open === null,
      perform: () => enter(step),
    })),
  )
  useStepKeys(open, setOpen, input)
  useEffect(() => {
    if (!isEnabled) setOpen(null)
  }, [isEnabled])
  return { open, enter, leave: () => setOpen(null) }
}

function useStepKeys(open: OpenStep | null, setOpen: (open: OpenStep | null) => void, input: TagStepsInput): void {
  const latest = useRef({ open, input })
  useEffect(() => {
    latest.current = { open, input }
  })
  const isOpen = open !== null
  useEffect(() => {
    if (!isOpen) return undefined
    const onKeyDown = (event: KeyboardEvent) => {
      const now = latest.current
      if (now.open === null || event.ctrlKey || event.metaKey || event.altKey || isTyping(event.target)) return
      if (event.key === 'Tab' || event.key === 'Shift' || pressesButton(event, now.open.words ?? now.open.typed)) return
      event.preventDefault()
      event.stopPropagation()
      if (event.key === 'Escape') return setOpen(null)
      if (now.open.words !== null || event.key === '/') {
        const { open: next, chosen } = afterWordKey(now.open, event.key, now.input.choicesOf(now.open.step))
        setOpen(next)
        return chosen === null ? undefined : now.input.onChosen(chosen.patch)
      }
      const outcome = typedTagKey(now.open.typed, event.key, now.input.choicesOf(now.open.step))
      switch (outcome.kind) {
        case 'chosen':
          setOpen(null)
          return now.input.onChosen(outcome.choice.patch)
        case 'more':
          return setOpen({ ...now.open, typed: outcome.typed, missed: false })
        case 'nothing':
          return setOpen({ ...now.open, missed: true })
      }
    }
    // Before anything else hears the letter: in a step, F or R are letters of a choice, not commands.
    window.addEventListener('keydown', onKeyDown, { capture: true })
    return () => window.removeEventListener('keydown', onKeyDown, { capture: true })
  }, [isOpen, setOpen])
}

/** Follows a key while words are typed: Enter takes the first choice that has them all. */
function afterWordKey(
  open: OpenStep,
  key: string,
  choices: readonly TagKeyChoice[],
): { readonly open: OpenStep | null; readonly chosen: TagKeyChoice | null } {
  const words = open.words ?? ''
  if (open.words === null) return { open: { ...open, typed: '', words: '', missed: false }, chosen: null }
  if (key === 'Enter') {
    const chosen = choicesWithWords(choices, words)[0] ?? null
    return { open: chosen === null ? { ...open, missed: true } : null, chosen }
  }
  const next = key === 'Backspace' ? words.slice(0, -1) : [...key].length === 1 ? words + key : words
  return { open: { ...open, words: next, missed: choicesWithWords(choices, next).length === 0 }, chosen: null }
}

/** Enter and Space press the button that has the focus, unless letters wait for Enter. */
function pressesButton(event: KeyboardEvent, typed: string): boolean {
  const onButton = event.target instanceof Element && event.target.closest('button') !== null
  return onButton && typed === '' && (event.key === 'Enter' || event.key === ' ')
}

function isTyping(target: EventTarget | null): boolean {
  return target instanceof Element && target.closest('input:not([type="checkbox"]), textarea, [role="dialog"]') !== null
}
