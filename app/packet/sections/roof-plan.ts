import type { PlanDrawing } from '../../roof/plan-drawing.ts'
import { roomForDrawing } from '../../roof/plan-sheet/plan-sheet.ts'
import { planOnSheets } from '../../roof/plan-sheet/split-plan.ts'
import { zonePieces } from '../../roof/zones/edge-zones.ts'
import { editionWords, ZONE_CAUTION } from '../../roof/zones/zone-words.ts'
import type { Block, PlanBlock, Section } from '../document.ts'
import type { PacketContext } from '../packet-context.ts'
import { planRoom } from '../plan-room.ts'
import { counted } from '../text.ts'
import { heading, paragraph, titledSection } from './section.ts'

/**
 * The plan with its pins, without cameras: those stand in the small plans beside the photos. A roof too large for one
 * sheet comes as a key plan and sheets with match lines. Where zones can be drawn, the plan comes once more with them.
 */
export function roofPlanSection(context: PacketContext): Section {
  const { plan, facets, findings } = context
  if (facets.length === 0 && plan.pins.length === 0) {
    return titledSection('roof-plan', 'Roof plan', [paragraph('Nothing is drawn on the plan.')])
  }
  const unpinned = findings.filter(({ pin }) => pin === null).length
  return titledSection('roof-plan', 'Roof plan', [
    paragraph(
      `The number in a pin is the finding’s: pin 12 is F-12. Filled pins mark damage; open pins mark everything else.${
        unpinned === 0 ? '' : ` Without a pin: ${counted(unpinned, 'finding')}.`
      }`,
      'small',
    ),
    ...planBlocks({ ...plan, cameras: [] }, context),
    ...zonePlan(context),
  ])
}

function planBlocks(drawing: PlanDrawing, { facets, input }: PacketContext): readonly Block[] {
  const room = planRoom[input.options.paper]
  const divided = planOnSheets(drawing, { ...roomForDrawing(room, drawing), scales: room.scales })
  const what = `${counted(facets.length, 'facet')} and ${counted(drawing.pins.length, 'pin')}`
  const listed = 'The findings are listed by facet in the next section.'
  if (divided.kind === 'one') return [planBlock(divided.drawing, `Roof plan with ${what}. ${listed}`)]
  return [
    paragraph(
      `The roof is too large for one sheet at a legible scale. The key plan shows which part is on which of ${divided.sheets.length} sheets; they go on to each other at the match lines.`,
      'small',
    ),
    planBlock(divided.key, `Key plan: the roof and which part of it each of ${divided.sheets.length} sheets shows.`),
    ...divided.sheets.map((sheet, i) =>
      planBlock(sheet, `Sheet ${i + 1} of ${divided.sheets.length} of the roof plan with ${what} in all. ${listed}`),
    ),
  ]
}

function planBlock(drawing: PlanDrawing, alt: string): PlanBlock {
  return { kind: 'plan', drawing, alt, size: 'page' }
}

function zonePlan({ plan, zones }: PacketContext): readonly Block[] {
  if (zones.kind !== 'drawn') return []
  const drawing = { ...plan, cameras: [], dimensions: [], zones: zonePieces(zones) }
  return [
    { kind: 'page-break' },
    heading('Edge zones on the plan', true),
    paragraph(
      `${ZONE_CAUTION} Width ${Number(zones.width.widthFt.toFixed(2))} ft, ${editionWords(zones.edition)}; how it came about and the areas stand under Property and roof.`,
      'caution',
    ),
    planBlock(drawing, 'Roof plan with its edge zones: corners, edges, ridges and hips, and the field between them.'),
  ]
}
