import { roofEdges } from '../../roof/edges.ts'
import type { EdgeKind } from '../../roof/plan-drawing.ts'
import { edgeQuantities } from '../../roof/quantities.ts'
import type { Block } from '../document.ts'
import { feetInches } from '../format/lengths.ts'
import type { PacketContext } from '../packet-context.ts'
import { plain } from '../text.ts'
import { column, heading, paragraph } from './section.ts'

/** What each kind of edge is called in a table. */
export const edgeLabels = {
  ridge: 'Ridge',
  hip: 'Hip',
  valley: 'Valley',
  eave: 'Eave',
  rake: 'Rake',
  'pitch-break': 'Break between two pitches',
  step: 'Step in height',
  'top-edge': 'Top edge with no slope behind it',
} as const satisfies Record<EdgeKind, string>

/** Edges by kind with their number and lengths. */
export function edgeBlocks({ facets, input }: PacketContext): readonly Block[] {
  const kinds = edgeQuantities(roofEdges(facets, input.caseFile.job.frame.upAzimuthDeg))
  if (kinds.length === 0) return []
  return [
    {
      kind: 'group',
      blocks: [
        heading('Edges'),
        {
          kind: 'table',
          summary: 'Edges by kind, with their number and lengths',
          columns: [
            column('Edge', 4),
            column('Number', 1, 'end'),
            column('Plan length', 2, 'end'),
            column('True length', 2, 'end'),
          ],
          rows: kinds.map(({ kind, count, statedByHand, planLengthFt, trueLengthFt }) => ({
            cells: [
              plain(`${edgeLabels[kind]}${statedByHand === 0 ? '' : ` (${statedByHand} stated by hand)`}`),
              plain(String(count)),
              plain(feetInches(planLengthFt)),
              plain(feetInches(trueLengthFt)),
            ],
          })),
        },
        paragraph(
          'True length = square root of (plan length squared + rise squared); lengths are summed, then rounded to the inch.',
          'small',
        ),
      ],
    },
  ]
}
