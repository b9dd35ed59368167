import type { ComponentKey, ConditionKey } from '../../evidence/catalog/keys.ts'
import type { Sign } from '../words/condition-words.ts'
import type { Found } from '../words/phrases.ts'
import { conditionOf, hasCollar } from './condition-of.ts'
import type { Marks } from './marks.ts'
import type { Before } from './observe.ts'
import { componentOf, edgeOf, isEdge, isUnit, type PartMark, unitOf } from './said-part.ts'
import type { Weighed } from './suppressed.ts'

/** A sentence as it is looked at for what is seen on what. */
export interface Sighting {
  readonly marks: Marks
  readonly weighed: Weighed
  readonly before: Before
  readonly parts: readonly PartMark[]
  readonly edge: 'ridge' | 'hip' | null
}

/** A part and what it is called that is seen on it. */
export interface Chosen {
  readonly component: ComponentKey
  readonly part: PartMark | null
  readonly condition: ConditionKey
}

/** What a sign is called on each of the parts; parts on which it means nothing fall away. */
export function withPart(sign: Found<Sign>, list: readonly PartMark[], sighting: Sighting): readonly Chosen[] {
  return list.flatMap((part) => {
    if (sign.value === 'repair' && isMaterial(part, sighting)) return []
    const { component, isMortar, at } = withCollar(part, sign, sighting)
    const condition = conditionOf(sign.value, component, isMortar)
    return condition === null ? [] : [{ component, part: at ?? part, condition }]
  })
}

/** What something was mended with: "glued back with some adhesive", "a bead of foam". */
function isMaterial({ said, at }: PartMark, { marks }: Sighting): boolean {
  if (said !== 'adhesive-pad' && said !== 'mortar-bed') return false
  if (/^(repair|patch|job|fix|work|smear)$/.test(marks.words[at + 1]?.stem ?? '')) return true
  return marks.words.slice(Math.max(0, at - 4), at).some(({ text }) => /^(with|of|some|using|bead|dab|new)$/.test(text))
}

/** Mortar at a pipe or wall is that pipe's collar; mortar under caps is their bed. */
function withCollar(
  part: PartMark,
  sign: Found<Sign>,
  sighting: Sighting,
): { component: ComponentKey; isMortar: boolean; at?: PartMark | undefined } {
  const { marks, parts, before, edge } = sighting
  const said = componentOf(part.said, before.group, edge)
  // A nose that lifts is its tile's.
  const component = said === 'nose' && (sign.value === 'lift' || sign.value === 'loose') ? unitOf(before.group) : said
  const isMortarNear = marks.parts.some(({ said }) => said === 'mortar-bed')
  if (component !== 'mortar-bed') return { component, isMortar: isMortarNear && hasCollar(component) }
  const isCapNear =
    parts.some(({ said, at }) => edgeOf(said) !== null && marks.clauses[at] === marks.clauses[part.at]) ||
    parts.some(({ said }) => said === 'cap')
  const collared = parts.find(({ said }) => hasCollar(componentOf(said, before.group, null)))
  const caps = cappedOver(part, sighting)
  if (
    caps !== undefined &&
    conditionOf(sign.value, componentOf(caps.said, before.group, edge), true) === 'cap-mortar-cracked'
  )
    return { component: componentOf(caps.said, before.group, edge), isMortar: true, at: caps }
  const carried =
    before.part !== null && hasCollar(before.part) && !isCapNear && edge === null ? before.part : undefined
  const joined = isCapNear
    ? undefined
    : collared === undefined
      ? carried
      : componentOf(collared.said, before.group, null)
  return joined === undefined || conditionOf(sign.value, joined, true) === null
    ? { component, isMortar: false }
    : { component: joined, isMortar: true, at: collared }
}

/** "Five hip tiles, mortar cracked": caps that were counted and say nothing else are what the mortar is cracked at. */
function cappedOver(mortar: PartMark, { marks, parts, weighed }: Sighting): PartMark | undefined {
  return parts.find(({ said, at, length, stands }) => {
    const clause = marks.clauses[at] ?? 0
    const isCounted = marks.counts.some((count) => count.at + count.length === at)
    const isAlone = !weighed.signs.some((sign) => marks.clauses[sign.at] === clause)
    return (
      isCounted &&
      isAlone &&
      stands === 'head' &&
      edgeOf(said) !== null &&
      !isEdge(said) &&
      at + length <= mortar.at &&
      clause + 1 === (marks.clauses[mortar.at] ?? 0)
    )
  })
}

/** "Several tiles have broken side locks": the tiles are the subject, and the locks are theirs. */
export function withLock(lock: PartMark, { marks, parts, before }: Sighting): PartMark | undefined {
  if (lock.said !== 'sidelap') return undefined
  return parts.find(
    ({ said, at, length, stands, isPlural }) =>
      at < lock.at &&
      stands !== 'near' &&
      isUnit(componentOf(said, before.group, null)) &&
      (isPlural || marks.counts.some((count) => count.at + count.length === at)) &&
      marks.words.slice(at + length, lock.at).some(({ stem }) => /^(hav|with|got|get|show|miss)$/.test(stem)),
  )
}
