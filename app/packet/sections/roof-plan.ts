import type { Section } from '../document.ts'
import type { PacketContext } from '../packet-context.ts'
import { counted } from '../text.ts'
import { paragraph, titledSection } from './section.ts'

/** The plan with its pins, without cameras: those stand in the small plans beside the photos. */
export function roofPlanSection({ plan, facets, findings }: PacketContext): Section {
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
    {
      kind: 'plan',
      drawing: { ...plan, cameras: [] },
      alt: `Roof plan with ${counted(facets.length, 'facet')} and ${counted(plan.pins.length, 'pin')}. The findings are listed by facet in the next section.`,
      size: 'page',
    },
  ])
}
