import { conditions } from '../../../evidence/catalog/conditions.ts'
import { squareWorking, tallySquares } from '../../../fieldtest/square-tally.ts'
import type { Block } from '../../document.ts'
import { facetLink } from '../../links.ts'
import type { PacketContext } from '../../packet-context.ts'
import { counted, plain } from '../../text.ts'
import { column, heading, paragraph } from '../section.ts'

/** Test squares of 10 ft by 10 ft: mean and range by facet and condition, for the facets that have one. */
export function squareBlocks({ input, facetById }: PacketContext): readonly Block[] {
  const { squares } = input.caseFile.survey
  if (squares.length === 0) return []
  const facets = new Set(squares.map(({ facetId }) => facetId)).size
  return [
    heading('Test squares', true),
    paragraph(
      `${counted(squares.length, 'square')} of 10 ft by 10 ft on the slope, on ${counted(facets, 'facet')}. The figures hold for the facet they stand by and are not carried over to others.`,
    ),
    {
      kind: 'table',
      summary: 'Counts in test squares by facet and condition',
      columns: [column('Facet', 1), column('Condition', 3), column('Working, per 100 sq ft', 5)],
      rows: tallySquares(squares).map((tally) => ({
        cells: [
          facetLink(tally.facetId === null ? undefined : facetById.get(tally.facetId)),
          plain(conditions[tally.condition].label),
          plain(squareWorking(tally)),
        ],
      })),
    },
    ...squares.filter(({ note }) => note.trim() !== '').map(({ note }) => paragraph(note.trim(), 'small')),
  ]
}
