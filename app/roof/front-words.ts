import type { FacetId } from '../job/ids.ts'
import type { PlanPoint } from '../job/places.ts'
import { roofEdges } from './edges.ts'
import type { Facet } from './facet.ts'
import { distanceAlong, houseSide, type HouseSide, type Orientation } from './house-sides.ts'
import { signedAreaSqFt } from './polygon.ts'

/** A roof with what its places are named by. */
export interface House extends Orientation {
  readonly facets: readonly Facet[]
  /** The front door on the plan, where someone marked it. */
  readonly doorAt?: PlanPoint | null
}

/** Feet by which a slope may reach past the door and still count as left or right of it. */
const PAST_DOOR_FT = 1

/** A slope whose eave is no farther than this behind the door, or in front of it, is over the door. */
const OVER_DOOR_FT = 6

/** A slope this many times as large as any other beside it is the main one. */
const MAIN_SLOPE_TIMES = 1.5

/** A facet as it lies along its side of the house, feet. */
interface Span {
  readonly id: FacetId
  readonly from: number
  readonly to: number
  /** How far out it reaches. */
  readonly outer: number
  readonly inner: number
  readonly areaSqFt: number
}

/** Words that follow the side, from the wider to the narrower. */
interface NamedSpan {
  readonly id: FacetId
  readonly words: readonly string[]
}

interface Naming {
  readonly side: HouseSide
  /** Pairs of facets where one drains onto the other. */
  readonly drains: readonly (readonly FacetId[])[]
}

/**
 * A plain name for a facet, as a person who looks at the front from the street would say it: "front", "left", "back,
 * right part", "front left corner", "front, left of the door" (when the door is marked), "front, upper", "front, main
 * slope", "left, smaller slope at the back". Left and right stay those of that person on every side of the house. Where
 * the front is not known: "south slope, west part". No two facets of a house get the same name; the same plan always
 * gives the same names, but a facet that is added can change those of its side.
 */
export function facetWords(facet: Facet, house: House): string {
  const facets = house.facets.some(({ id }) => id === facet.id) ? house.facets : [...house.facets, facet]
  const side = houseSide(facet, house)
  const spans = facets.filter((other) => houseSide(other, house).place === side.place).map((f) => spanOf(f, side))
  const drains = roofEdges(facets, house.upAzimuthDeg).flatMap(({ kind, facetIds }) =>
    kind === 'pitch-break' ? [facetIds] : [],
  )
  const door = side.place === 0 && house.frontAzimuthDeg !== null ? (house.doorAt ?? null) : null
  const naming = { side, drains }
  const named = door === null ? namedAlong(spans, naming) : namedByDoor(spans, naming, door)
  const own = named.find(({ id }) => id === facet.id)
  return [side.words, ...(own?.words ?? [])].join(', ')
}

function spanOf(facet: Facet, { across, outward }: HouseSide): Span {
  const along = facet.outline.map((p) => distanceAlong(p, across))
  const out = facet.outline.map((p) => distanceAlong(p, outward))
  return {
    id: facet.id,
    from: settled(Math.min(...along)),
    to: settled(Math.max(...along)),
    outer: settled(Math.max(...out)),
    inner: settled(Math.min(...out)),
    areaSqFt: settled(Math.abs(signedAreaSqFt(facet.outline))),
  }
}

/** To whole numbers of 1/128, which add and halve without rounding: a plan turned on its sheet must not get other names. */
function settled(value: number): number {
  return Math.round(value * 128) / 128
}

/** Told apart by the door: what lies wholly to one side of it, and what it lies under or in front of. */
function namedByDoor(spans: readonly Span[], naming: Naming, door: PlanPoint): readonly NamedSpan[] {
  if (spans.length < 2) return namedAlong(spans, naming)
  const at = distanceAlong(door, naming.side.across)
  const out = distanceAlong(door, naming.side.outward)
  const main = mainSpan(spans)
  const wordOf = (span: Span): string => {
    if (span.to <= at + PAST_DOOR_FT) return 'left of the door'
    if (span.from >= at - PAST_DOOR_FT) return 'right of the door'
    if (span === main) return 'main slope'
    return out >= span.inner && out <= span.outer + OVER_DOOR_FT ? 'over the door' : 'in line with the door'
  }
  const words = [...new Set(spans.map(wordOf))]
  return words.flatMap((word) =>
    prefixed(
      word,
      namedAlong(
        spans.filter((span) => wordOf(span) === word),
        naming,
      ),
    ),
  )
}

/** Told apart from one end of the side to the other; where they lie behind each other, by `namedInColumn`. */
function namedAlong(spans: readonly Span[], naming: Naming): readonly NamedSpan[] {
  const columns = columnsOf(spans)
  if (columns.length < 2) return namedInColumn(spans, naming)
  return columns.flatMap((column, i) =>
    prefixed(endWord({ i, of: columns.length, ends: naming.side.ends }, 'part'), namedInColumn(column, naming)),
  )
}

function namedInColumn(spans: readonly Span[], naming: Naming): readonly NamedSpan[] {
  if (spans.length < 2) return spans.map(({ id }) => ({ id, words: [] }))
  if (isStack(spans, naming)) return namedInRows(spans, ['lower', 'upper', 'bottom'])
  const main = mainSpan(spans)
  if (main === null) return namedInRows(spans, ['outer', 'inner', 'outside'])
  const columns = columnsOf(spans.filter((span) => span !== main))
  const smaller = columns.flatMap((column, i) => {
    const place = columns.length === 1 ? '' : endWord({ i, of: columns.length, ends: naming.side.ends }, 'place')
    return prefixed(`smaller slope${place}`, namedInRows(column, ['outer', 'inner', 'outside']))
  })
  return [{ id: main.id, words: ['main slope'] }, ...smaller]
}

/** From the outermost in. */
function namedInRows(
  spans: readonly Span[],
  [outer, inner, outside]: readonly [string, string, string],
): readonly NamedSpan[] {
  const rows = spans.toSorted((a, b) => b.outer - a.outer || middleOf(a) - middleOf(b) || (a.id < b.id ? -1 : 1))
  const last = rows.length - 1
  return rows.map(({ id }, i) => {
    if (last === 0) return { id, words: [] }
    if (last > 2) return { id, words: [`${ordinal(i)} from the ${outside}`] }
    return { id, words: [i === 0 ? outer : i === last ? inner : 'middle'] }
  })
}

/** True when water runs from each of the facets onto another of them. */
function isStack(spans: readonly Span[], { drains }: Naming): boolean {
  const ids = spans.map(({ id }) => id)
  const links = drains.filter((pair) => pair.every((id) => ids.includes(id)))
  const reached = new Set(ids.slice(0, 1))
  for (let before = 0; before < reached.size;) {
    before = reached.size
    for (const pair of links) if (pair.some((id) => reached.has(id))) for (const id of pair) reached.add(id)
  }
  return reached.size === ids.length
}

/** The slope that is much larger than each of the others; null where there is none. */
function mainSpan(spans: readonly Span[]): Span | null {
  const [largest, next] = spans.toSorted((a, b) => b.areaSqFt - a.areaSqFt)
  if (largest === undefined || next === undefined) return null
  return largest.areaSqFt < next.areaSqFt * MAIN_SLOPE_TIMES ? null : largest
}

/** Groups of facets that lie behind each other: each shares at least half of its width, or of the other's, with one of its group. */
function columnsOf(spans: readonly Span[]): readonly (readonly Span[])[] {
  let columns: readonly (readonly Span[])[] = []
  for (const span of spans) {
    const joined = columns.filter((column) => column.some((other) => isBehind(span, other)))
    columns = [...columns.filter((column) => !joined.includes(column)), [...joined.flat(), span]]
  }
  const middle = (column: readonly Span[]) => column.reduce((sum, span) => sum + middleOf(span), 0) / column.length
  return columns.toSorted((a, b) => middle(a) - middle(b))
}

function isBehind(a: Span, b: Span): boolean {
  const shared = Math.min(a.to, b.to) - Math.max(a.from, b.from)
  return shared >= Math.min(a.to - a.from, b.to - b.from) / 2
}

function middleOf({ from, to }: Span): number {
  return (from + to) / 2
}

interface Place {
  readonly i: number
  readonly of: number
  readonly ends: readonly [string, string]
}

/** "left part", "middle", "second from the left"; or " at the left", " in the middle", " second from the left". */
function endWord({ i, of, ends }: Place, form: 'part' | 'place'): string {
  if (of > 3) return `${form === 'place' ? ', ' : ''}${ordinal(i)} from the ${ends[0]}`
  if (i > 0 && i < of - 1) return form === 'part' ? 'middle' : ' in the middle'
  const end = i === 0 ? ends[0] : ends[1]
  return form === 'part' ? `${end} part` : ` at the ${end}`
}

const ORDINALS = [
  'first',
  'second',
  'third',
  'fourth',
  'fifth',
  'sixth',
  'seventh',
  'eighth',
  'ninth',
  'tenth',
] as const

function ordinal(i: number): string {
  return ORDINALS[i] ?? `number ${i + 1}`
}

function prefixed(word: string, named: readonly NamedSpan[]): readonly NamedSpan[] {
  return named.map(({ id, words }) => ({ id, words: [word, ...words] }))
}
