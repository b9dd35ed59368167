import { useRef, useState } from 'react'
import type { PlanPoint } from '../../app/job/places.ts'
import type { Facet } from '../../app/roof/facet.ts'
import { checkOutline, outlineFaultSentence } from '../../app/roof/outline.ts'
import { sidesOf } from '../../app/roof/polygon.ts'
import type { HandleMove } from './drag-handle.tsx'
import { insertSharedCorner, moveFacetOutline, moveSharedCorner, type Reshaped, withoutCorner } from './outline-edit.ts'
import type { PlanTool } from './plan-tool.ts'
import { LENGTH_STEP_FT, roofTargets } from './roof-targets.ts'
import { middleOf, samePlace, tidyPoint } from './sheet-geometry.ts'
import { ShapeHandles, ShapeOverlay } from './shape-handles.tsx'
import { snapPoint, type SnapTargets } from './snapping.ts'

/** The corners of one facet under edit. */
export interface Shaping {
  readonly tool: PlanTool
  readonly picked: number | null
  readonly refusal: string | null
  readonly detached: boolean
  setDetached(detached: boolean): void
  removePicked(): void
}

interface ShapeInput {
  readonly facets: readonly Facet[]
  readonly facet: Facet
  /** Saves the changed facets; the new shape stays in sight until this is done. */
  readonly onSave: (changed: readonly Reshaped[]) => Promise<void>
}

/** Edits a facet's corners by handles: moves them with the neighbours' corners, adds, removes, and moves the whole facet. */
export function useShapeTool({ facets, facet, onSave }: ShapeInput): Shaping {
  const [draft, setDraft] = useState<readonly Reshaped[] | null>(null)
  const [picked, setPicked] = useState<number | null>(null)
  const [detached, setDetached] = useState(false)
  const [refusal, setRefusal] = useState<string | null>(null)
  // A drop may come before the last move is drawn: it takes the shape from here.
  const held = useRef<readonly Reshaped[] | null>(null)

  function show(next: readonly Reshaped[]) {
    held.current = next
    setDraft(next)
  }
  async function save(changed: readonly Reshaped[]) {
    held.current = null
    const refused = faultOf(changed)
    setRefusal(refused)
    if (refused !== null) return setDraft(null)
    setDraft(changed)
    await onSave(changed)
    setDraft(null)
  }
  const outline = draft?.[0]?.outline ?? facet.outline
  const actions: ShapeActions = {
    moveCorner: (index, move) =>
      show(moveSharedCorner(facets, { facet, index, detached }, cornerPlace({ facets, facet, index }, move))),
    insertAt: (index, move) =>
      show(insertSharedCorner(facets, { facet, index, detached }, insertPlace(facets, facet, move))),
    moveAll: (from, move) => show([{ facet, outline: movedFacet({ facets, facet, from }, move) }]),
    drop: () => {
      if (held.current !== null) void save(held.current)
    },
    pick: setPicked,
    insertMiddle: (index) => {
      const side = sidesOf(facet.outline)[index]
      if (side === undefined) return
      setPicked(index + 1)
      void save(insertSharedCorner(facets, { facet, index, detached }, tidyPoint(middleOf(side.from, side.to))))
    },
    remove: (index) => {
      setPicked(null)
      void save([{ facet, outline: withoutCorner(facet.outline, index) }])
    },
  }
  return {
    picked,
    refusal,
    detached,
    setDetached,
    removePicked: () => {
      if (picked !== null) actions.remove(picked)
    },
    tool: {
      cursor: 'default',
      cross: null,
      overlay: (view) => <ShapeOverlay facet={facet} draft={draft} view={view} />,
      handles: (view) => <ShapeHandles facet={facet} outline={outline} picked={picked} actions={actions} view={view} />,
    },
  }
}

/** What the handles of a facet under edit can ask for. */
export interface ShapeActions {
  moveCorner(index: number, move: HandleMove): void
  insertAt(sideIndex: number, move: HandleMove): void
  /** Moves the facet so that its grip goes from one place to another. */
  moveAll(from: PlanPoint, move: HandleMove): void
  drop(): void
  pick(index: number): void
  insertMiddle(sideIndex: number): void
  remove(index: number): void
}

function faultOf(changed: readonly Reshaped[]): string | null {
  for (const { facet, outline } of changed) {
    const [fault] = checkOutline(outline)
    if (fault !== undefined) return `Facet ${facet.letter} keeps its last shape. ${outlineFaultSentence(fault)}`
  }
  return null
}

interface CornerOf {
  readonly facets: readonly Facet[]
  readonly facet: Facet
  readonly index: number
}

/** A moved corner holds on to the roof around it, and keeps the sides on either hand straight where it can. */
function cornerPlace({ facets, facet, index }: CornerOf, { at, reachFt, free }: HandleMove): PlanPoint {
  const count = facet.outline.length
  const own = facet.outline[index]
  if (free || own === undefined) return tidyPoint(at)
  const targets = targetsWithout(facets, own)
  const settings = { reachFt, stepFt: LENGTH_STEP_FT }
  const before = facet.outline[(index + count - 1) % count] ?? null
  const after = facet.outline[(index + 1) % count] ?? null
  const fromBefore = snapPoint(at, before, { targets, settings })
  return fromBefore.to === 'free' ? snapPoint(at, after, { targets, settings }).at : fromBefore.at
}

function targetsWithout(facets: readonly Facet[], corner: PlanPoint): SnapTargets {
  const { corners, sides } = roofTargets(facets)
  const others = corners.filter((other) => !samePlace(other, corner))
  const fixed = sides.filter((side) => !samePlace(side.from, corner) && !samePlace(side.to, corner))
  return { corners: others, sides: fixed, levels: others }
}

function insertPlace(facets: readonly Facet[], facet: Facet, { at, reachFt, free }: HandleMove): PlanPoint {
  if (free) return tidyPoint(at)
  const others = roofTargets(facets.filter((other) => other.id !== facet.id))
  return snapPoint(at, null, { targets: others, settings: { reachFt, stepFt: LENGTH_STEP_FT } }).at
}

interface FacetFrom {
  readonly facets: readonly Facet[]
  readonly facet: Facet
  readonly from: PlanPoint
}

function movedFacet({ facets, facet, from }: FacetFrom, { at, reachFt, free }: HandleMove): PlanPoint[] {
  const corners = facets.filter((other) => other.id !== facet.id).flatMap((other) => other.outline)
  const by = { xFt: at.xFt - from.xFt, yFt: at.yFt - from.yFt }
  return moveFacetOutline(facet.outline, by, { corners: free ? [] : corners, reachFt })
}
