import { buildScope } from '../../scope/build-scope.ts'
import { REPAIR_ASSUMPTION } from '../../scope/repair-lines.ts'
import { moneyRuleWords, priceScope } from '../../scope/price-scope.ts'
import { bidLabels, bids, type Bid } from '../../scope/scope-record.ts'
import { bidCaution } from '../../scope/scope-words.ts'
import { roundingRuleWords } from '../../scope/units.ts'
import type { Block, Section } from '../document.ts'
import { shortHash } from '../format/files.ts'
import { facetLink, findingLink } from '../links.ts'
import type { PacketContext } from '../packet-context.ts'
import { joined, ledBy, plain } from '../text.ts'
import { numberedRows, type NumberedRow } from './scope/numbered-rows.ts'
import { priceTable } from './scope/price-table.ts'
import { scopeTable } from './scope/scope-table.ts'
import { workingItems } from './scope/working-items.ts'
import { heading, paragraph, titledSection } from './section.ts'

/**
 * The contractor's bid, repair and replacement side by side, where the office offers it: lines with what they come from,
 * how each quantity follows, and, for recipients who get the cost, prices and totals.
 */
export function scopeAndCostSection(context: PacketContext): Section | null {
  const { caseFile, options } = context.input
  if (!caseFile.scope.choices.isOffered) return null
  const built = buildScope(caseFile, caseFile.scope.choices)
  const rows = numberedRows(built.rows)
  const title = options.cost ? 'Scope and cost' : 'Scope'
  if (rows.length === 0) {
    return titledSection('scope', title, [paragraph('No line of work follows from the plan and the findings yet.')])
  }
  return titledSection('scope', title, [
    paragraph(bidCaution, 'caution'),
    {
      kind: 'facts',
      columns: 1,
      rows: bids.map((bid) => ({ label: bidLabels[bid], value: facetWords(context, bid) })),
    },
    scopeTable(rows, context),
    paragraph(roundingRuleWords, 'small'),
    ...leftOutBlocks(rows),
    ...(options.cost ? costBlocks(context, { built, rows }) : []),
    heading('How each quantity follows'),
    ...(built.repair.some(({ group }) => group === 'pieces')
      ? [paragraph(`Assumed for all work on what was found: ${lowerFirst(REPAIR_ASSUMPTION)}`)]
      : []),
    { kind: 'list', items: workingItems(rows) },
    ...apartBlocks(built.apart),
  ])
}

function facetWords({ facets, input }: PacketContext, bid: Bid) {
  const chosen = input.caseFile.scope.choices.facets[bid]
  const own = chosen === null ? facets : facets.filter(({ id }) => chosen.includes(id))
  const lead = bid === 'repair' ? 'Work on what was found' : 'A new covering'
  if (own.length === 0) return plain(`${lead}. No facet is in this bid.`)
  if (chosen === null) return plain(`${lead}, all ${own.length} facets.`)
  return [...plain(`${lead}, facets `), ...joined(own.map(facetLink)), ...plain('.')]
}

function lowerFirst(sentence: string): string {
  return sentence.charAt(0).toLowerCase() + sentence.slice(1)
}

function leftOutBlocks(rows: readonly NumberedRow[]): readonly Block[] {
  const items = rows.flatMap(({ number, row, words }) =>
    bids.flatMap((bid) => {
      const why = row[bid]?.leftOutBecause ?? null
      return why === null ? [] : [ledBy(`${number}. ${words}:`, plain(`left out of the ${bid}. ${why}`))]
    }),
  )
  return items.length === 0 ? [] : [heading('Left out of a bid, and why'), { kind: 'list', items }]
}

function costBlocks(
  { input }: PacketContext,
  { built, rows }: { readonly built: ReturnType<typeof buildScope>; readonly rows: readonly NumberedRow[] },
): readonly Block[] {
  const { scope } = input.caseFile
  const priced = priceScope(built, scope)
  return [
    heading(`Cost, ${priced.currency}`),
    priceTable(rows, priced),
    paragraph(moneyRuleWords(priced), 'small'),
    scope.book === null
      ? paragraph('No price book was taken, so no line has a price.')
      : paragraph(
          [
            ...plain(
              `Unit prices are the contractor’s own, ${scope.book.rows.length} rows of ${scope.book.fileName}, SHA-256 `,
            ),
            { text: shortHash(scope.book.sha256), style: 'mono' },
            ...plain('; the file stays at the office.'),
          ],
          'small',
        ),
  ]
}

function apartBlocks(apart: ReturnType<typeof buildScope>['apart']): readonly Block[] {
  if (apart.length === 0) return []
  const reasons = [...new Set(apart.map(({ why }) => why))]
  return [
    heading('Findings without a line in the repair'),
    {
      kind: 'list',
      items: reasons.map((why) => [
        ...joined(apart.filter((one) => one.why === why).map(({ finding }) => findingLink(finding))),
        ...plain(`: ${why}.`),
      ]),
    },
  ]
}
