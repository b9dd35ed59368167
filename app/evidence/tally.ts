import type { ComponentKey, ConditionKey } from './catalog/keys.ts'
import type { Finding } from './finding.ts'

/** Findings of one component and condition: what was counted exactly added up, everything else kept apart. */
export interface TallyRow {
  readonly component: ComponentKey
  readonly condition: ConditionKey
  /** Sum over the findings counted exactly, and those findings; null when none was. */
  readonly counted: { readonly count: number; readonly findings: readonly Finding[] } | null
  /** Findings whose extent is "at least", "about", "several", a length, an area and so on; never added. */
  readonly apart: readonly Finding[]
}

/** Tallies findings by component and condition, in the order in which they first appear. */
export function tally(findings: readonly Finding[]): readonly TallyRow[] {
  const groups = new Map<string, [Finding, ...Finding[]]>()
  for (const finding of findings) {
    const key = `${finding.component} ${finding.condition}`
    const group = groups.get(key)
    if (group === undefined) groups.set(key, [finding])
    else group.push(finding)
  }
  return [...groups.values()].map(tallyRow)
}

function tallyRow(group: readonly [Finding, ...Finding[]]): TallyRow {
  const [{ component, condition }] = group
  const counted: Finding[] = []
  const apart: Finding[] = []
  let count = 0
  for (const finding of group) {
    if (finding.extent.kind === 'exactly') {
      counted.push(finding)
      count += finding.extent.count
    } else {
      apart.push(finding)
    }
  }
  return { component, condition, counted: counted.length === 0 ? null : { count, findings: counted }, apart }
}
