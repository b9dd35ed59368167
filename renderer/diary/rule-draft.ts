import type { Rule } from '../../app/rules/rule.ts'

type Clock = Extract<Rule, { kind: 'clock' }>['data']

/** A rule as it is being typed, with the figures of both kinds side by side. */
export interface RuleDraft {
  readonly kind: Rule['kind']
  readonly title: string
  readonly jurisdiction: string
  readonly says: string
  readonly source: string
  readonly link: string
  readonly status: Rule['status']
  readonly asOf: string
  readonly caution: string
  /** Kept as they are: the form shows the first caution alone. */
  readonly moreCautions: readonly string[]
  readonly effectiveFrom: string | null
  readonly effectiveUntil: string | null
  readonly trigger: string
  readonly count: number | null
  readonly unit: Clock['unit']
  readonly morePercent: number | null
  readonly withinMonths: number | null
  readonly sections: string
  readonly exception: Extract<Rule, { kind: 'work-share' }>['data']['exception']
}

/** A rule taken up for a change, or an empty one. */
export function ruleDraft(rule: Rule | null): RuleDraft {
  const [caution = '', ...moreCautions] = rule?.cautions ?? []
  const clock = rule?.kind === 'clock' ? rule.data : null
  const share = rule?.kind === 'work-share' ? rule.data : null
  return {
    kind: rule?.kind ?? 'clock',
    title: rule?.title ?? '',
    jurisdiction: rule?.jurisdiction ?? '',
    says: rule?.says ?? '',
    source: rule?.source ?? '',
    link: rule?.link ?? '',
    status: rule?.status ?? 'entered by the office',
    asOf: rule?.asOf ?? '',
    caution,
    moreCautions,
    effectiveFrom: rule?.effectiveFrom ?? null,
    effectiveUntil: rule?.effectiveUntil ?? null,
    trigger: clock?.trigger ?? '',
    count: clock?.count ?? null,
    unit: clock?.unit ?? 'calendar-days',
    morePercent: share?.morePercent ?? null,
    withinMonths: share?.withinMonths ?? null,
    sections: share?.sections ?? '',
    exception: share?.exception ?? null,
  }
}

/** What a draft says, to be checked by the schema of a new rule. */
export function ruleOf(draft: RuleDraft): unknown {
  const { kind, title, jurisdiction, says, source, link, status, asOf, effectiveFrom, effectiveUntil } = draft
  const cautions = [draft.caution.trim(), ...draft.moreCautions].filter((words) => words !== '')
  const about = {
    title,
    jurisdiction: jurisdiction.trim(),
    says,
    source,
    link,
    status,
    asOf: asOf.trim(),
    effectiveFrom,
    effectiveUntil,
    cautions,
  }
  const { trigger, count, unit, morePercent, withinMonths, sections, exception } = draft
  return kind === 'clock'
    ? { ...about, kind, data: { trigger, count, unit } }
    : { ...about, kind, data: { morePercent, withinMonths, sections, exception } }
}
