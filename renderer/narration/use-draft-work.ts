import { useState } from 'react'
import type { SavedFinding } from '../findings/finding-draft.ts'
import type { FacetId, FindingId } from '../../app/job/ids.ts'
import { atFacet, openFacets } from '../../app/narration/at-facet.ts'
import type { Cue } from '../../app/narration/cue.ts'
import { type DraftedFinding, draftedFinding } from '../../app/narration/drafted-finding.ts'
import { type Command, useCommands } from '../state/commands.ts'
import { useEdit } from '../state/job-state.tsx'
import { useSelection } from '../state/selection.tsx'
import type { ReadNarration, StandingDraft } from './use-narration.ts'

/** What can be done with the present draft. */
export interface DraftWork {
  readonly cues: readonly Cue[]
  /** The draft that is worked on; null where there is none. */
  readonly present: StandingDraft | null
  /** Facets that its words leave open, the first of them on key 1; none where there is nothing to choose. */
  readonly open: readonly FacetId[]
  /** The one of them that a person chose. */
  readonly chosen: FacetId | null
  /** Settles the place on one of the open facets; choosing it again leaves the place open. */
  choose(facetId: FacetId): void
  /** What the draft would become as it stands. */
  readonly proposed: DraftedFinding | null
  /** True while its form is open. */
  readonly isEdited: boolean
  accept(): void
  edit(): void
  drop(): void
  reopen(): void
  /** Saves an edited finding for the present draft; null when it was refused. */
  save(finding: SavedFinding): Promise<FindingId | null>
  closeForm(): void
}

/** A facet chosen for a draft, which is known by its name. */
interface Choice {
  readonly draft: string
  readonly facetId: FacetId
}

/** Keys go no further than nine; the facets after that are chosen by the pointer or in the form. */
const MOST_KEYS = 9

/** Goes from draft to draft by key and decides about them. The present draft is the selected cue's, else the first open one. */
export function useDraftWork(read: ReadNarration): DraftWork {
  const edit = useEdit()
  const [isEdited, setEdited] = useState(false)
  const [choice, setChoice] = useState<Choice | null>(null)
  const { present, goTo } = usePresent(read)
  const step = (by: 1 | -1) => {
    const at = present === null ? -1 : read.drafts.indexOf(present)
    const next = read.drafts[at + by]
    if (next !== undefined) goTo(next)
  }
  const onward = () => {
    const at = present === null ? 0 : read.drafts.indexOf(present)
    const open = [...read.drafts.slice(at + 1), ...read.drafts.slice(0, at)].find(({ decision }) => decision === null)
    if (open !== undefined) goTo(open)
  }
  const open = present === null || present.decision !== null ? [] : openFacets(present.draft)
  const chosen = present !== null && choice?.draft === nameOf(present) ? choice.facetId : null
  const proposed = present === null ? null : draftedFinding(atFacet(present.draft, chosen), read.narration.id)
  const named = present === null ? null : { key: present.draft.key, startMs: present.draft.startMs }
  async function save(finding: SavedFinding) {
    if (named === null) return null
    const saved = await edit('drafts.accept', { draft: named, finding })
    if (saved !== null) onward()
    return saved?.id ?? null
  }
  const work: DraftWork = {
    cues: read.narration.cues,
    present,
    open,
    chosen,
    choose: (facetId) => setChoice(present === null || facetId === chosen ? null : { draft: nameOf(present), facetId }),
    proposed,
    isEdited,
    accept: () => void (proposed === null ? null : save(proposed)),
    edit: () => setEdited(true),
    drop: () =>
      void (named === null ? null : edit('drafts.drop', { drafts: [named] }).then((done) => done !== null && onward())),
    reopen: () => void (named === null ? null : edit('drafts.reopen', { draft: named })),
    save,
    closeForm: () => setEdited(false),
  }
  useCommands(commandsOf(work, step))
  return work
}

function commandsOf(work: DraftWork, step: (by: 1 | -1) => void): readonly Command[] {
  const isOpen = work.present !== null && work.present.decision === null
  return [
    { id: 'narration.next', label: 'To the next draft', keys: 'J', enabled: true, perform: () => step(1) },
    { id: 'narration.previous', label: 'To the draft before', keys: 'K', enabled: true, perform: () => step(-1) },
    {
      id: 'narration.accept',
      label: 'Accept the draft as a finding',
      keys: 'A',
      enabled: isOpen,
      perform: work.accept,
    },
    { id: 'narration.edit', label: 'Edit the draft, then accept it', keys: 'E', enabled: isOpen, perform: work.edit },
    { id: 'narration.drop', label: 'Drop the draft', keys: 'D', enabled: isOpen, perform: work.drop },
    {
      id: 'narration.reopen',
      label: 'Take a decided draft up again',
      keys: 'R',
      enabled: work.present !== null && !isOpen,
      perform: work.reopen,
    },
    ...work.open.slice(0, MOST_KEYS).map((facetId, at) => ({
      id: `narration.place-${at + 1}`,
      label: `Settle the place on the choice numbered ${at + 1}`,
      keys: `${at + 1}`,
      enabled: true,
      perform: () => work.choose(facetId),
    })),
  ]
}

/** The draft at hand: the one gone to by key while its cue stays selected, else the selected cue's, else the first open one. */
function usePresent({ narration, drafts }: ReadNarration) {
  const { selection, select } = useSelection()
  const [goneTo, setGoneTo] = useState<string | null>(null)
  const cue = selection.kind === 'cue' && selection.narrationId === narration.id ? selection.cue : null
  const ofCue = drafts.filter(({ draft }) => cue !== null && draft.cues.includes(cue))
  const present =
    ofCue.find((standing) => nameOf(standing) === goneTo) ??
    ofCue[0] ??
    (cue === null ? (drafts.find(({ decision }) => decision === null) ?? null) : null)
  return {
    present,
    goTo(standing: StandingDraft) {
      setGoneTo(nameOf(standing))
      select({ kind: 'cue', narrationId: narration.id, cue: standing.draft.cues[0] ?? 0 })
    },
  }
}

function nameOf({ draft }: StandingDraft): string {
  return `${draft.startMs} ${draft.key}`
}
