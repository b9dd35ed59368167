import { useCallback, useEffect, useRef, useState } from 'react'
import { flushSync } from 'react-dom'
import type { Facet } from '../../../app/roof/facet.ts'
import type { HouseOutline } from '../../../app/roof/house-outline.ts'
import { useMessages } from '../../ui/message.tsx'
import { countWords } from '../../ui/quantity-words.ts'
import { useEdit, useJob } from '../../state/job-state.tsx'
import type { RingPlace } from './outline-draft.ts'
import { previewRoof } from './roof-preview.ts'

/** One outline under edit: as it is shown, and the ways to change it. */
export interface OutlineShape {
  /** With what a hand is dragging at present. */
  readonly outline: HouseOutline
  readonly picked: RingPlace | null
  readonly refusal: string | null
  pick(place: RingPlace | null): void
  /** Shows a change that a hand has not let go of. */
  show(next: HouseOutline): void
  /** Saves what is shown. */
  drop(): void
  /** Changes and saves at once; the change is laid over those still on their way. */
  change(make: (outline: HouseOutline) => HouseOutline): void
}

/** Edits an outline: what is dragged is only shown, what is let go of is saved as one step, with its facets. */
export function useOutlineShape(saved: HouseOutline): OutlineShape {
  const { facets, outlines, job, photos, findings } = useJob()
  const edit = useEdit()
  const { say } = useMessages()
  const [draft, setDraft] = useState<HouseOutline | null>(null)
  const [picked, setPicked] = useState<RingPlace | null>(null)
  const [refusal, setRefusal] = useState<string | null>(null)
  // A drop may come before the last move is drawn, a change before the one before it came back.
  const held = useRef<HouseOutline | null>(null)
  const latest = useRef(saved)
  const underWay = useRef(0)
  useEffect(() => {
    if (underWay.current === 0) latest.current = saved
  }, [saved])

  const showNextFrame = useOncePerFrame(() => {
    if (held.current !== null) setDraft(held.current)
  })

  async function save(next: HouseOutline) {
    held.current = null
    const roof = previewRoof(next, { facets, outlines, frame: job.frame })
    setRefusal(roof.ok ? null : `The outline keeps its last shape. ${roof.sentence}`)
    if (!roof.ok) return setDraft(null)
    latest.current = next
    setDraft(next)
    underWay.current += 1
    const { id, ...outline } = next
    const isSaved = (await edit('outlines.save', { id, outline })) !== null
    underWay.current -= 1
    if (!isSaved) latest.current = saved
    else if (roof.goes.length > 0)
      say({
        tone: 'note',
        text: [goneWords(roof.goes), untiedWords(roof.goes, { photos, findings })].join(''),
        help: `Undo brings ${roof.goes.length === 1 ? 'it' : 'them'} back.`,
      })
    if (underWay.current === 0) setDraft(held.current)
  }
  return {
    outline: draft ?? saved,
    picked,
    refusal,
    pick: setPicked,
    show(next) {
      held.current = next
      showNextFrame()
    },
    drop() {
      if (held.current !== null) void save(held.current)
    },
    change: (make) => void save(make(latest.current)),
  }
}

/** A hand gives several places for one frame; only the last is worth a roof. */
function useOncePerFrame(run: () => void): () => void {
  const asked = useRef<number | null>(null)
  const latest = useRef(run)
  useEffect(() => {
    latest.current = run
  })
  useEffect(
    () => () => {
      if (asked.current !== null) cancelAnimationFrame(asked.current)
    },
    [],
  )
  return useCallback(() => {
    asked.current ??= requestAnimationFrame(() => {
      asked.current = null
      flushSync(() => latest.current())
    })
  }, [])
}

function goneWords(facets: readonly Facet[]): string {
  return `${lettersOf(facets)} went: ${facets.length === 1 ? 'its edge bears' : 'their edges bear'} no slope any more.`
}

/** What stood on facets that went, and now names none. Empty when nothing did. */
function untiedWords(
  facets: readonly Facet[],
  on: {
    readonly photos: readonly { readonly tags: { readonly facetId: string | null } }[]
    readonly findings: readonly { readonly facetId: string | null }[]
  },
): string {
  const isGone = (facetId: string | null) => facets.some(({ id }) => id === facetId)
  const photos = on.photos.filter(({ tags }) => isGone(tags.facetId)).length
  const findings = on.findings.filter(({ facetId }) => isGone(facetId)).length
  if (photos + findings === 0) return ''
  const words = [countWords(photos, 'photo'), countWords(findings, 'finding')]
  const told = words.filter((_, i) => [photos, findings][i] !== 0).join(' and ')
  return ` ${told} on ${facets.length === 1 ? 'it' : 'them'} name${photos + findings === 1 ? 's' : ''} no facet now; an edge that becomes an eave again brings all of it back.`
}

/** "Facet C", "Facets C and D", "Facets C, D and E". */
export function lettersOf(facets: readonly Facet[]): string {
  const letters = facets.map(({ letter }) => letter)
  const last = letters.at(-1) ?? ''
  return letters.length === 1 ? `Facet ${last}` : `Facets ${letters.slice(0, -1).join(', ')} and ${last}`
}
